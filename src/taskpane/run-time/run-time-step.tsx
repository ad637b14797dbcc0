import { ShownReadings } from "../readings/shown-readings";
import type { StepProps } from "../step";
import { PlannedRun } from "./planned-run";

/** How long the block must run. */
export function RunTimeStep({ host, answer, keep }: StepProps) {
  return (
    <>
      <section aria-labelledby="canfall-time">
        <h2 id="canfall-time">Run time</h2>
        <ShownReadings answer={answer} host={host} />
        <p className="note">
          By the test settings of the step Readings. A dry spot that is mended, such as a blocked nozzle, needs no
          longer run: look at the driest can first.
        </p>
      </section>
      <PlannedRun host={host} keep={keep} />
    </>
  );
}
