import { Button } from "@fluentui/react-components";
import { shortWithUnit } from "../../../core/figures/figure";
import { LAYOUT } from "../../../core/figures/layout";
import { DRY_SPOTS } from "../../../core/layout/judgement";
import type { LayoutBasis } from "../../../core/layout/multiplier";
import type { Candidate } from "../../../core/layout/search/search";
import { figure } from "../../parts/figure";
import { layoutName } from "../layout-name";
import type { Found } from "../worker/messages";
import { CostChart } from "./cost-chart";
import { limitWords, searchWords } from "./words";

const BEST = 10;

interface Props {
  found: Found;
  basis: LayoutBasis;
  open: (candidate: Candidate) => void;
  write: (candidate: Candidate) => void;
}

const words = (value: number | typeof DRY_SPOTS) => (value === DRY_SPOTS ? value : figure(value));

/** The best layouts by yearly cost, and the chart of all. */
export function SearchResults({ found, basis, open, write }: Props) {
  const { within, outside } = found.ranking;
  const shown = within.length > 0 ? within.slice(0, BEST) : outside.slice(0, BEST);
  return (
    <>
      <p role="status">{searchWords(found)}</p>
      {within.length === 0 && (
        <p className="problem">
          No layout keeps every limit. Below are the cheapest all the same, with what they break: loosen that limit, or
          try other heads or spacings.
        </p>
      )}
      <CostChart within={within} outside={outside} basis={basis} open={open} />
      <div className="wide">
        <table className="figures">
          <caption>Cheapest first; cost a year of water and capital</caption>
          <thead>
            <tr>
              {[
                "Layout",
                "Cost a year",
                "Water [kL]",
                "Capital",
                LAYOUT.SC_CELL.short,
                LAYOUT.SC_QUARTER.short,
                LAYOUT.SC_PATCH.short,
                shortWithUnit(LAYOUT.MAR),
                shortWithUnit(LAYOUT.FLOW),
              ].map((heading) => (
                <th key={heading} scope="col" className={heading === "Layout" ? "" : "right"}>
                  {heading}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((candidate, index) => {
              const { judgement } = candidate;
              const name = `${candidate.head}, ${layoutName(candidate.plan)}`;
              const cells = [
                words(candidate.yearlyCost),
                words(candidate.water),
                figure(candidate.capital),
                words(judgement.driestCoefficient),
                words(judgement.quarterCoefficient),
                within.length > 0 ? words(found.patches[index]!) : "–",
                figure(judgement.meanRate),
                String(Math.round(judgement.flow)),
              ];
              return (
                <tr key={name}>
                  <th scope="row">
                    {name}
                    {candidate.breaks.length > 0 && (
                      <span className="detail">outside: {limitWords(candidate.breaks)}</span>
                    )}
                    <span className="actions">
                      <Button size="small" onClick={() => open(candidate)} aria-label={`Open ${name}`}>
                        Open
                      </Button>
                      <Button size="small" onClick={() => write(candidate)} aria-label={`Write ${name} as after`}>
                        Write as after
                      </Button>
                    </span>
                  </th>
                  {cells.map((cell, place) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: the columns stay in order
                    <td key={place} className="right">
                      {cell}
                    </td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </>
  );
}
