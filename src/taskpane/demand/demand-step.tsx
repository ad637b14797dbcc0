import { Button } from "@fluentui/react-components";
import { useId, useRef } from "react";
import { placeAtSelection } from "../map/picture/place-picture";
import { pngOf } from "../map/picture/png";
import { NurseryPlan } from "../new-audit/nursery-plan";
import { Failure } from "../parts/task/failure";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import type { StepProps } from "../step";
import { useWatched } from "../workbook/use-watched";
import { GroupForm } from "./group-form";
import { LiveFunction } from "./live-function";
import { missing, used } from "./missing";
import { DEMAND } from "./read-demand";
import { YearChart, yearWords } from "./year-chart";
import { YearTable } from "./year-table";

const PICTURE = "Canfall demand";

/** What the pots of each group need, month by month. */
export function DemandStep({ host, answer, keep }: StepProps) {
  const id = useId();
  const { found: groups, failure } = useWatched(host, DEMAND);
  const picture = useRef<HTMLDivElement>(null);
  const task = useTask();
  const shown = groups?.filter(used) ?? [];
  const lacking = missing(shown);
  const place = () =>
    task.attempt("Placing the picture", async () => {
      const png = await pngOf(picture.current!.querySelector("svg")!);
      return placeAtSelection(host, keep, { png, name: PICTURE, alternative: yearWords(shown) });
    });

  return (
    <section aria-labelledby={`${id}-demand`}>
      <h2 id={`${id}-demand`}>Demand</h2>
      <Failure words={failure} />
      {groups === null && !failure && <NurseryPlan host={host} keep={keep} />}
      {groups && (
        <>
          <p className="note">
            What the pots need, from weighed pots or from the weather, less useful rain. ET0 from the weather does not
            hold under cover: weigh pots there, or type an ET0 measured there.
          </p>
          {shown.length === 0 ? (
            <p role="status">No pot group is named yet: begin with its name below, or on the sheet Demand.</p>
          ) : (
            <>
              <div ref={picture} className="picture">
                <YearChart groups={shown} title="What the pots need" />
              </div>
              <div className="actions">
                <Button onClick={place}>Place the picture at the selected cell</Button>
              </div>
              <TaskLine task={task} />
              <YearTable groups={shown} />
              <div role="status">
                {lacking.length > 0 && (
                  <>
                    <h3>Still missing</h3>
                    <ul>
                      {lacking.map((line) => (
                        <li key={line}>{line}</li>
                      ))}
                    </ul>
                  </>
                )}
              </div>
            </>
          )}
          <GroupForm host={host} keep={keep} groups={groups} />
          <LiveFunction host={host} keep={keep} groups={groups} selected={answer?.selected ?? null} />
        </>
      )}
    </section>
  );
}
