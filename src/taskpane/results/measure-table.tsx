import type { Limit } from "../../core/figures/limits";
import { MEASURES } from "../../core/figures/measures";
import type { SummaryRow } from "../../core/summary/summary";
import { type Audit, MOST_RESAMPLED } from "../answer/audit";
import type { Catches } from "../answer/catches";
import { figure } from "../parts/figure";
import { Verdict } from "../parts/verdict";
import { FigureValue, limitWords, unitOf } from "./figure-words";

/** Whose limits they are; the reader may open it. */
function LimitSources({ limits }: { limits: readonly Limit[] }) {
  return (
    <details>
      <summary>Where the limits come from</summary>
      <ul>
        {limits.map(({ measure, text, source, year }) => (
          <li key={measure}>
            {measure} {limitWords(text)}: {[source, year].filter(Boolean).join(", ")}
          </li>
        ))}
      </ul>
    </details>
  );
}

function Row({ row }: { row: SummaryRow }) {
  const unit = unitOf(row);
  return (
    <tr>
      <th scope="row">{row.measure}</th>
      <td className="right">
        <FigureValue row={row} />
        {row.low !== "" && row.high !== "" && (
          <span className="detail">
            {row.estimate === undefined
              ? `90 % interval ${figure(row.low)} to ${figure(row.high)} ${unit}`
              : `whole bed, by fit: ${figure(row.estimate)} (${figure(row.low)} to ${figure(row.high)}) ${unit}`}
          </span>
        )}
        {row.limit && (
          <span className="detail">
            limit {limitWords(row.limit)} {unit}
          </span>
        )}
        {row.verdict && <Verdict words={row.verdict} />}
      </td>
    </tr>
  );
}

const COUNT = { unit: MEASURES.CANS.unit, low: "", high: "", limit: "", verdict: "" } as const;
const COUNTS = new Set<string>([MEASURES.CANS.name, MEASURES.DRY.name]);

function Table({ caption, rows }: { caption: string; rows: SummaryRow[] }) {
  return (
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Measure</th>
          <th scope="col" className="right">
            Value and unit
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.measure} row={row} />
        ))}
      </tbody>
    </table>
  );
}

/** Cans counted, dry and skipped. */
export function CountTable({ catches: { values, dry, marked, blank } }: { catches: Catches }) {
  const counts: SummaryRow[] = [
    { ...COUNT, measure: MEASURES.CANS.name, value: values.length },
    { ...COUNT, measure: MEASURES.DRY.name, value: dry },
    { ...COUNT, measure: `Skipped (${marked} marked x, ${blank} blank)`, value: marked + blank },
  ];
  return <Table caption="What the range holds" rows={counts} />;
}

const WEIGHTED = {
  "by area":
    "By area: each can is weighted by the ground that it is for, to half-way lines and the bed's edges, as on the sheets.",
  "equal weight":
    "Each can has equal weight. With places of the cans and sides of the bed on the sheets Cans and Block, each is weighted by its area.",
};

/** Each index with its unit, interval, limit and verdict. */
export function MeasureTable({ audit }: { audit: Audit }) {
  return (
    <>
      <p>{WEIGHTED[audit.weighting]}</p>
      <Table
        caption="Each with its 90 % interval, limit and verdict where they exist"
        rows={audit.rows.filter(({ measure }) => !COUNTS.has(measure))}
      />
      {audit.otherRows.length > 0 && (
        <details>
          <summary>With equal weight for each can</summary>
          <Table caption="Figures that would differ by more than 2 %" rows={audit.otherRows} />
        </details>
      )}
      <LimitSources limits={audit.limits} />
      {audit.lack && <p className="problem">{audit.lack}</p>}
      <p className="note">
        {audit.rows.some(({ estimate }) => estimate !== undefined) &&
          "By fit: from the cans and the places of the heads, 90 % interval in brackets; the verdict compares that with the limit. "}
        The interval of other figures resamples the cans. It means to hold the true value of the bed nine times in ten.
        In simulated beds of overlapping heads with 40 or 60 cans, edge cans included, the one of DU did so only 36 to
        62 times in a hundred by area, 22 to 61 times with equal weight: take it as too narrow. BED.INTERVAL also uses
        the heads, and its interval did so 88 to 93 times.
        {audit.catches.values.length > MOST_RESAMPLED && ` Left out above ${MOST_RESAMPLED} cans.`}
      </p>
    </>
  );
}
