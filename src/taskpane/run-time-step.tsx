import { ShownReadings } from "./shown-readings";
import type { StepProps } from "./step";

/** How long the block must run. */
export function RunTimeStep({ host, answer }: StepProps) {
  return (
    <section aria-labelledby="canfall-time">
      <h2 id="canfall-time">Run time</h2>
      <ShownReadings answer={answer} host={host} />
    </section>
  );
}
