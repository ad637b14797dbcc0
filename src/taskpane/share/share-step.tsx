import { NoAudit } from "../new-audit/no-audit";
import type { StepProps } from "../step";
import { useNamed } from "../workbook/use-named";
import { CheckCopies } from "./check-copies";
import { MakeCopy } from "./make-copy";

const SHEETS = ["Cans_Readings", "Nursery_Name"];

/** A copy that anybody can check, and the check of one. */
export function ShareStep({ host, keep, handed }: StepProps) {
  const { found } = useNamed(host, SHEETS);
  const planOnly = found?.Nursery_Name && !found.Cans_Readings;
  return (
    <>
      {planOnly ? (
        <section aria-labelledby="canfall-share">
          <h2 id="canfall-share">Share</h2>
          <p role="status">
            A share copy is of a block audit, and this workbook is a nursery plan: it has no audit. Open the audit of
            the block and make its copy there.
          </p>
          <NoAudit host={host} keep={keep} />
        </section>
      ) : (
        <MakeCopy host={host} />
      )}
      <CheckCopies host={host} keep={keep} handed={handed} />
    </>
  );
}
