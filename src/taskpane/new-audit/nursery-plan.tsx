import type { StepProps } from "../step";
import { WorkbookActions, type WorkbookKind } from "./workbook-actions";

const PLAN: WorkbookKind = {
  noun: "nursery plan",
  blank: "nursery-plan",
  saved: "Nursery plan.xlsx",
  example: "example-nursery",
  savedExample: "Example nursery.xlsx",
  invented: "Example Nursery, an invented nursery",
  first: "Nursery_Name",
};

/** Offers the nursery plan where the open workbook has none. */
export function NurseryPlan({ host, keep }: Pick<StepProps, "host" | "keep">) {
  return (
    <>
      <p>
        The nursery plan is a second workbook, for the blocks that share a pump: what their pots need month by month,
        the audits of every block, and a night of start times that fits.
      </p>
      <WorkbookActions host={host} keep={keep} kind={PLAN} />
    </>
  );
}
