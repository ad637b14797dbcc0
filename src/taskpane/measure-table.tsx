import type { SummaryRow } from "../core/summary/summary";
import { type Audit, MOST_RESAMPLED } from "./audit";
import { figure, shown } from "./figure";

const SYMBOLS: [string, string][] = [
  ["within", "✓"],
  ["outside", "✗"],
  ["too close", "≈"],
  ["too few", "?"],
];

function Verdict({ words }: { words: string }) {
  const symbol = SYMBOLS.find(([start]) => words.startsWith(start))?.[1] ?? "";
  return (
    <span className="verdict">
      <span aria-hidden="true">{symbol} </span>
      {words}
    </span>
  );
}

function Row({ row }: { row: SummaryRow }) {
  const words = typeof row.value === "string";
  const unit = row.unit === "cans" && row.value === 1 ? "can" : row.unit || "ratio";
  return (
    <tr>
      <th scope="row">{row.measure}</th>
      <td className="right">
        <span className={words ? "" : "figure"}>
          {shown(row.value, row.unit)}
          {!words && ` ${unit}`}
        </span>
        {row.low !== "" && row.high !== "" && (
          <span className="detail">
            90 % interval {figure(row.low)} to {figure(row.high)} {unit}
          </span>
        )}
        {row.limit && (
          <span className="detail">
            limit {row.limit.replace(">=", "≥").replace("<=", "≤")} {unit}
          </span>
        )}
        {row.verdict && <Verdict words={row.verdict} />}
      </td>
    </tr>
  );
}

const COUNT = { unit: "cans", low: "", high: "", limit: "", verdict: "" } as const;
const COUNTS = new Set(["Cans counted", "Dry cans"]);

/** Cans counted, dry and skipped, then each index with its unit, interval, limit and verdict. */
export function MeasureTable({ audit }: { audit: Audit }) {
  const { values, dry, marked, blank } = audit.catches;
  const counts: SummaryRow[] = [
    { ...COUNT, measure: "Cans counted", value: values.length },
    { ...COUNT, measure: "Dry cans", value: dry },
    { ...COUNT, measure: `Skipped (${marked} marked x, ${blank} blank)`, value: marked + blank },
  ];
  return (
    <>
      <table>
        <caption>Each with its 90 % interval, limit and verdict where they exist</caption>
        <thead>
          <tr>
            <th scope="col">Measure</th>
            <th scope="col" className="right">
              Value and unit
            </th>
          </tr>
        </thead>
        <tbody>
          {[...counts, ...audit.rows.filter(({ measure }) => !COUNTS.has(measure))].map((row) => (
            <Row key={row.measure} row={row} />
          ))}
        </tbody>
      </table>
      {audit.lack && <p className="problem">{audit.lack}</p>}
      <p className="note">
        The interval should hold the true value of the bed nine times in ten. In simulated beds it did so about eight
        times in ten with 16 cans, and 83 to 94 times in a hundred with 24 or more.
        {values.length > MOST_RESAMPLED && ` Left out above ${MOST_RESAMPLED} cans.`}
      </p>
    </>
  );
}
