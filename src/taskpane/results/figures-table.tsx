import type { SummaryRow } from "../../core/summary/summary";
import { symbolOf } from "../parts/verdict";
import { FigureValue, limitWords } from "./figure-words";

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
        {five.map((row) => (
          <tr key={row.measure}>
            <th scope="row">{row.measure}</th>
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
