import { CAUTION, TEST_CAUTIONS } from "../../workbook/cautions";
import { Cautions } from "../parts/cautions";
import type { StepProps } from "../step";
import { BLOCK_AUDIT } from "./block-audit";
import { FirstFacts } from "./first-facts";
import { OlderWorkbook } from "./older-workbook";
import { WorkbookActions } from "./workbook-actions";

/** Sets up the audit workbook of a block. */
export function NewAudit({ host, keep }: StepProps) {
  return (
    <>
      <section aria-labelledby="canfall-new">
        <h2 id="canfall-new">New audit</h2>
        <p>
          One workbook holds the audit of one block: its facts, the catch cans, and from them the results, the run time,
          the water and a report.
        </p>
        <OlderWorkbook host={host} />
        <WorkbookActions host={host} keep={keep} kind={BLOCK_AUDIT} />
      </section>
      <FirstFacts host={host} keep={keep} />
      <Cautions title="Before you test" of={[...TEST_CAUTIONS, CAUTION.DECISION]} />
    </>
  );
}
