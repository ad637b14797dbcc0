import type { TermName } from "../../core/figures/glossary";
import type { SummaryRow } from "../../core/summary/summary";
import { Term } from "../parts/term";
import { symbolOf } from "../parts/verdict";
import { FigureValue, limitWords } from "./figure-words";

const FIVE: readonly (readonly [RegExp, TermName])[] = [
  [/^Mean application rate/, "application rate"],
  [/^CU/, "CU"],
  [/^DU/, "DU"],
  [/^SC \(driest/, "SC"],
  [/^SC \(low/, "SC"],
];

/** The five figures of a test, each with its limit and how it compares. */
export function FiguresTable({ rows }: { rows: readonly SummaryRow[] }) {
  const five = FIVE.flatMap(([pattern, term]) => {
    const row = rows.find(({ measure }) => pattern.test(measure));
    return row ? [{ row, term }] : [];
  });
  if (five.length === 0) return null;
  return (
    <table className="five">
      <caption>Against your limits: ✓ within, ✗ outside, ≈ too close to call</caption>
      <thead>
        <tr>
          <th scope="col">Figure</th>
          <th scope="col" className="right">
            Value
          </th>
          <th scope="col" className="right">
            Limit
          </th>
          <th scope="col">
            <span className="unseen">Verdict</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {five.map(({ row, term }) => (
          <tr key={row.measure}>
            <th scope="row">
              <Term of={term} shown={row.measure} />
            </th>
            <td className="right">
              <FigureValue row={row} without="" />
            </td>
            <td className="right">{limitWords(row.limit)}</td>
            <td>
              {row.verdict && (
                <span title={row.verdict}>
                  <span aria-hidden="true">{symbolOf(row.verdict)}</span>
                  <span className="unseen">{row.verdict}</span>
                </span>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
