import type { StepProps } from "../step";
import { Cautions } from "./cautions";
import { FirstFacts } from "./first-facts";
import { OlderWorkbook } from "./older-workbook";
import { WorkbookActions, type WorkbookKind } from "./workbook-actions";

const AUDIT: WorkbookKind = {
  noun: "audit",
  blank: "block-audit",
  saved: "Block audit.xlsx",
  example: "example-audit",
  savedExample: "Example audit.xlsx",
  invented: "Example Nursery, block 7, an invented block",
  first: "Site_Name",
};

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
        <WorkbookActions host={host} keep={keep} kind={AUDIT} />
      </section>
      <FirstFacts host={host} keep={keep} />
      <Cautions />
    </>
  );
}
