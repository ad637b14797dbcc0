import { RUN_TIME } from "../../core/figures/run-time";
import { MONTHS } from "../../workbook/nursery/months";
import { figure } from "../parts/figure";
import { titleOf } from "./missing";
import type { Group } from "./read-demand";

/** The net depth of each group, month by month. */
export function YearTable({ groups }: { groups: readonly Group[] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by keyboard
    <section className="wide" aria-label={`${RUN_TIME.NET_DEPTH.short} by month`} tabIndex={0}>
      <table className="figures">
        <caption>
          {RUN_TIME.NET_DEPTH.short} to water [{RUN_TIME.NET_DEPTH.unit}]; – where something is missing
        </caption>
        <thead>
          <tr>
            <th scope="col">Month</th>
            {groups.map((group) => (
              <th key={group.number} scope="col" className="right">
                {titleOf(group)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {MONTHS.map((month, index) => (
            <tr key={month}>
              <th scope="row">{month}</th>
              {groups.map(({ number, depths }) => {
                const depth = depths[index];
                return (
                  <td key={number} className="right">
                    {typeof depth === "number" ? figure(depth) : "–"}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
