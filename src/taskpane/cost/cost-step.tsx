import { Button } from "@fluentui/react-components";
import { useId, useRef } from "react";
import { WATER } from "../../core/figures/water";
import { ENOUGH_NOW } from "../../workbook/audit/water-cost/formulas";
import { placeAtSelection } from "../map/picture/place-picture";
import { pngOf } from "../map/picture/png";
import { NoAudit } from "../new-audit/no-audit";
import { NamedChoice } from "../parts/fields/named-choice";
import { NamedField } from "../parts/fields/named-field";
import { figure } from "../parts/figure";
import { PictureActions } from "../parts/files/picture-actions";
import { Failure } from "../parts/task/failure";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import type { StepProps } from "../step";
import { numberIn, textIn } from "../workbook/named";
import { useNamed } from "../workbook/use-named";
import { COST_FIELDS } from "./cost-fields";
import { CostTable } from "./cost-table";
import { Pays } from "./pays";
import { COST_NAMES } from "./read-costs";
import { barWords, YearBars } from "./year-bars";

const NAMES = [...COST_NAMES, "Block_Name", "Step_Ends", ...COST_FIELDS.map(({ name }) => name)];
const PICTURE = "Canfall costs";

/** What a year's watering costs now and after a change, and whether the change pays. */
export function CostStep({ host, keep }: StepProps) {
  const id = useId();
  const { found, failure } = useNamed(host, NAMES);
  const picture = useRef<HTMLDivElement>(null);
  const task = useTask();
  if (failure) return <Failure words={failure} />;
  if (!found) return null;
  const first = found.Cost_Total_Now_Likely;
  const choice = found.Waters_To_Driest;
  const [water, after] = [numberIn(found.Result_Water_kL), numberIn(found.Needed_After_kL)];

  const svg = () => picture.current!.querySelector("svg")!;
  const place = () =>
    task.attempt("Placing the picture", async () =>
      placeAtSelection(host, keep, { png: await pngOf(svg()), name: PICTURE, alternative: barWords(found) }),
    );
  const show = () =>
    task.attempt("Going there", async () => {
      await host.select(found.Step_Ends!.area, true);
      return "";
    });

  if (!first) {
    return (
      <section aria-labelledby={`${id}-cost`}>
        <h2 id={`${id}-cost`}>Cost</h2>
        <p>
          The open workbook has no sheet Cost: it holds no audit, or the audit is older than that sheet. Open a new
          audit in the step Set up.
        </p>
        <NoAudit host={host} keep={keep} />
      </section>
    );
  }
  return (
    <>
      <section aria-labelledby={`${id}-cost`}>
        <h2 id={`${id}-cost`}>Cost</h2>
        <Pays found={found} />
        {water !== undefined && (
          <p>
            {WATER.NOW.name}: {figure(water)} {WATER.NOW.unit}
            {after !== undefined && `, ${figure(after)} after`} ({textIn(found.Water_Label)}).
          </p>
        )}
        <div ref={picture} className="picture">
          <YearBars found={found} title={textIn(found.Block_Name) || "This block"} />
        </div>
        <CostTable found={found} />
        <p className="note">What is missing: {textIn(found.Cost_Missing)}</p>
        <div className="actions">
          <Button onClick={place}>Place the picture at the selected cell</Button>
          <PictureActions {...{ host, task }} png={() => pngOf(svg())} file="costs of a year.png" />
          <Button onClick={show}>Go to price steps and hours of power</Button>
        </div>
        <TaskLine task={task} />
      </section>
      <section aria-labelledby={`${id}-typed`}>
        <h2 id={`${id}-typed`}>What it is calculated from</h2>
        <p className="note">Any currency, the same throughout. Low and high prices are typed on the sheets.</p>
        <div className="fields">
          {choice && <NamedChoice host={host} keep={keep} label={ENOUGH_NOW} found={choice} of={["yes", "no"]} />}
          {COST_FIELDS.map(({ name, label, read }) => {
            const cell = found[name];
            return cell && <NamedField key={name} host={host} keep={keep} label={label} found={cell} read={read} />;
          })}
        </div>
      </section>
    </>
  );
}
