import { clock } from "../../core/program/clock";
import type { Schedule } from "../../core/program/program";

/** The start times, one block a line. */
export function StartTable({ schedule }: { schedule: Schedule }) {
  const names = [...new Set(schedule.map(({ block }) => block))];
  return (
    <table>
      <caption>Start times, in the order of the first pulse</caption>
      <thead>
        <tr>
          <th scope="col">Block</th>
          <th scope="col" className="right">
            Pulses, from and to
          </th>
        </tr>
      </thead>
      <tbody>
        {names.map((name) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className="right">
              {schedule
                .filter(({ block }) => block === name)
                .map(({ pulse, start, minutes }) => (
                  <span key={pulse} style={{ display: "block" }}>
                    {`${clock(start)}–${clock(start + minutes)} (${Number(minutes.toFixed(2))} min)`}
                  </span>
                ))}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
