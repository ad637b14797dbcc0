import { Button } from "@fluentui/react-components";
import type { Host } from "../../hosts/host";
import { figure } from "../parts/figure";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import { cellText, type NamedCells, numberIn, textIn } from "../workbook/named";

const GROUPS = [1, 2, 3, 4] as const;
const FIGURES = ["Depth_mm", "Share", "Run_min", "Times", "Drained"] as const;

/** Every name that is shown of the groups. */
export const GROUP_NAMES: readonly string[] = [
  "Groups_Names",
  "Groups_In_Use",
  "Groups_Problem",
  "Groups_Neediest",
  ...GROUPS.flatMap((group) => FIGURES.map((ending) => `Group_${group}_${ending}`)),
];

const percent = (share: number | undefined) => (share === undefined ? "–" : `${figure(100 * share)} %`);

/** As typed on Pots, else its number. */
function nameOf({ Groups_Names }: NamedCells, group: number): string {
  return cellText(Groups_Names?.cells[group - 1]?.[0] ?? "") || `Group ${group}`;
}

function Line({ found, group }: { found: NamedCells; group: number }) {
  const [depth, share, run, times, drained] = FIGURES.map((ending) => numberIn(found[`Group_${group}_${ending}`]));
  if (depth === undefined) return null;
  const shown = (value: number | undefined) => (value === undefined ? "–" : figure(value));
  return (
    <tr>
      <th scope="row">
        {nameOf(found, group)}
        <span className="detail">{percent(share)} of the area</span>
      </th>
      <td className="right">{shown(depth)}</td>
      <td className="right">{shown(run)}</td>
      <td className="right">{shown(times)}</td>
      <td className="right">{percent(drained)}</td>
    </tr>
  );
}

/** What each pot size gets at the run time of the neediest; they are typed on the sheet Pots. */
export function PotGroups({ host, found }: { host: Host; found: NamedCells }) {
  const task = useTask();
  const typed = found.Groups_Names;
  if (!typed) return null;
  const show = () =>
    task.attempt("Going there", async () => {
      await host.select(typed.area, true);
      return "";
    });
  const several = (numberIn(found.Groups_In_Use) ?? 0) > 0;
  return (
    <section aria-labelledby="canfall-groups">
      <h3 id="canfall-groups">Pots of several sizes</h3>
      {!several && <p className="note">One size. For several, type one line a group on the sheet Pots.</p>}
      {several && <p>{textIn(found.Groups_Problem) || `The run time is that of ${textIn(found.Groups_Neediest)}.`}</p>}
      {several && (
        <table>
          <caption>At this run time, mean over the bed; group by group as on the sheet Pots</caption>
          <thead>
            <tr>
              <th scope="col">Group</th>
              <th scope="col" className="right">
                Needs mm
              </th>
              <th scope="col" className="right">
                Alone min
              </th>
              <th scope="col" className="right">
                Gets / needs
              </th>
              <th scope="col" className="right">
                Drains
              </th>
            </tr>
          </thead>
          <tbody>
            {GROUPS.map((group) => (
              <Line key={group} found={found} group={group} />
            ))}
          </tbody>
        </table>
      )}
      <Button onClick={show}>Go to pot groups</Button>
      <TaskLine task={task} />
    </section>
  );
}
