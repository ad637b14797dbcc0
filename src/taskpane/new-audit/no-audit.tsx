import type { StepProps } from "../step";
import { useNamed } from "../workbook/use-named";
import { BLOCK_AUDIT } from "./block-audit";
import { WorkbookActions } from "./workbook-actions";

const CELLS = ["Cans_Readings", "Nursery_Name"];

/** Offers an audit where the open workbook is a nursery plan without one; nothing in any other workbook. */
export function NoAudit({ host, keep }: Pick<StepProps, "host" | "keep">) {
  const { found } = useNamed(host, CELLS);
  if (!found?.Nursery_Name || found.Cans_Readings) return null;
  return (
    <section aria-label="No audit yet">
      <p>
        This workbook is a nursery plan and holds no audit. An audit is a workbook for each block: open one, or add its
        sheets here; audits that are saved go into the plan in the step Register.
      </p>
      <WorkbookActions host={host} keep={keep} kind={BLOCK_AUDIT} />
    </section>
  );
}
