import { FunctionList } from "./function-list";
import { SelfTest } from "./self-test";
import type { StepProps } from "./step";

/** The functions, and what to do when they don't answer. */
export function HelpStep({ host, functions }: StepProps) {
  return (
    <>
      <FunctionList functions={functions} />
      <SelfTest host={host} />
    </>
  );
}
