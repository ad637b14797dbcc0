import type { StepProps } from "../step";
import { FunctionList } from "./function-list";
import { RepairFunctions } from "./repair-functions";
import { SelfTest } from "./self-test";
import { useSeparators } from "./use-separators";

/** The functions, and what to do when they don't answer. */
export function HelpStep({ host, keep, functions }: StepProps) {
  const separators = useSeparators(host);
  return (
    <>
      <FunctionList {...{ functions, separators }} />
      <RepairFunctions host={host} keep={keep} />
      <SelfTest host={host} />
    </>
  );
}
