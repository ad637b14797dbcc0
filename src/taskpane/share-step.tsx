import type { StepProps } from "./step";

/** A copy that anybody can check, and the check of one. */
export function ShareStep(_: StepProps) {
  return (
    <section aria-labelledby="canfall-share">
      <h2 id="canfall-share">Share</h2>
    </section>
  );
}
