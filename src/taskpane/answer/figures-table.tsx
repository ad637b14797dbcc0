import type { SummaryRow } from "../../core/summary/summary";
import { withItsUnit } from "../parts/figure";
import { symbolOf } from "../parts/verdict";

const FIVE = [/^Mean application rate/, /^CU/, /^DU/, /^SC \(driest/, /^SC \(low/];

/** The five figures of a test, each with its limit and how it compares. */
export function FiguresTable({ rows }: { rows: readonly SummaryRow[] }) {
  const five = FIVE.flatMap((pattern) => rows.find(({ measure }) => pattern.test(measure)) ?? []);
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
        {five.map(({ measure, value, unit, limit, verdict }) => (
          <tr key={measure}>
            <th scope="row">{measure}</th>
            <td className="right">
              <span className={typeof value === "string" ? "" : "figure"}>
                {withItsUnit(value, unit)}
                {typeof value === "number" && unit ? ` ${unit}` : ""}
              </span>
            </td>
            <td className="right">{limit.replace(">=", "≥").replace("<=", "≤")}</td>
            <td>
              {verdict && (
                <span title={verdict}>
                  <span aria-hidden="true">{symbolOf(verdict)}</span>
                  <span className="unseen">{verdict}</span>
                </span>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
