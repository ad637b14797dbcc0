import type { Injector } from "@univerjs/core";
import { type ISetFormulaCalculationStartMutation, TriggerCalculationController } from "@univerjs/preset-sheets-core";
import type { Member } from "../fix";

export type Changes = ISetFormulaCalculationStartMutation;

/** What the grid keeps of changes that formulas have not followed yet. */
export interface Trigger {
  _waitingCommandQueue: { id: string }[];
  _setTimeoutKey: ReturnType<typeof setTimeout>;
  _executionInProgressParams: unknown;
  _generateDirty(waiting: { id: string }[]): Changes;
  _mergeDirty(some: Changes, more: Changes): Changes;
  _resetExecutingDirtyData(): void;
}

export const triggerOf = (injector: Injector) => injector.get(TriggerCalculationController) as unknown as Trigger;

const NEEDED: (keyof Trigger)[] = [
  "_waitingCommandQueue",
  "_setTimeoutKey",
  "_executionInProgressParams",
  "_generateDirty",
  "_mergeDirty",
  "_resetExecutingDirtyData",
];

export const triggerMembers = (injector: Injector): Member[] =>
  NEEDED.map((name) => ["TriggerCalculationController", triggerOf(injector), name]);
