import type { Host } from "../../hosts/host";
import { firstAudit } from "../register/add-audits";
import { ownAudit } from "../register/own-audit";
import type { StepProps } from "../step";
import { useNamed } from "../workbook/use-named";
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
const AUDIT_CELLS = ["Cans_Readings"];

/** The audit of the open workbook, as the first line of the plan's register. */
async function withAudit(host: Host) {
  const audit = await ownAudit(host);
  const said =
    "problem" in audit ? `Its register is empty: ${audit.problem}` : "This audit is the first line of its register";
  return { fill: () => firstAudit(host, audit), said };
}

/** Offers the nursery plan where the open workbook has none; an audit comes into its register. */
export function NurseryPlan({ host, keep }: Pick<StepProps, "host" | "keep">) {
  const isAudit = useNamed(host, AUDIT_CELLS).found?.Cans_Readings !== undefined;
  return (
    <>
      <p>
        The nursery plan is for the blocks that share a pump: what their pots need month by month, the audits of every
        block, and an irrigation schedule.
      </p>
      {isAudit && (
        <p>
          Added to this workbook, it begins with this audit in its register. As a new workbook it begins empty: save
          this audit, and add its file in the step Register there.
        </p>
      )}
      <WorkbookActions host={host} keep={keep} kind={isAudit ? { ...PLAN, prepare: withAudit } : PLAN} />
    </>
  );
}
