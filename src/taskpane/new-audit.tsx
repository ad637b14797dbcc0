import { Cautions } from "./cautions";
import type { StepProps } from "./step";

/** Sets up the audit workbook of a block. */
export function NewAudit(_: StepProps) {
  return (
    <>
      <section aria-labelledby="canfall-new">
        <h2 id="canfall-new">New audit</h2>
      </section>
      <Cautions />
    </>
  );
}
