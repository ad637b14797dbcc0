import { CheckCopies } from "./check-copies";
import { MakeCopy } from "./make-copy";
import type { StepProps } from "./step";

/** A copy that anybody can check, and the check of one. */
export function ShareStep({ host }: StepProps) {
  return (
    <>
      <MakeCopy host={host} />
      <CheckCopies host={host} />
    </>
  );
}
