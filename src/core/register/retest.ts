import { within } from "../checks";
import { pressureDrift } from "./pressure-drift";
import { type RegisteredAudit, sameBlock } from "./registered-audit";

/** When blocks are tested again. */
export interface RetestRule {
  /** Months after the last test, a whole number from 1 to 120 */
  months: number;
  /** The pressure may drift by so much [%], from 1 to 100 */
  drift: number;
}

/** Whether a block is due for another test. */
export interface Retest {
  /** False where a later audit of the block is there. */
  latest: boolean;
  /** Days that it is overdue: 0 on the day itself, negative before it. */
  overdue: number;
  /** Drift of the pressure [%] where it is over what is allowed, else null. */
  drifted: number | null;
}

/**
 * Whether the block of an audit is due for another test: some months after the last one, or at once where the last two
 * pressures differ by more than is allowed.
 *
 * @param audits The register; no block twice on one day
 * @param audit One of them
 * @param rule When blocks are tested again
 * @param dueDay The day that lies the rule's months after the audit's
 * @param asOf The day from which is counted
 * @returns What is due
 * @throws InputError if the rule is out of its range
 * @source own reasoning; 12 months: from memory
 */
export function retest(
  audits: readonly RegisteredAudit[],
  audit: RegisteredAudit,
  rule: RetestRule,
  dueDay: number,
  asOf: number,
): Retest {
  within("re-test after", rule.months, 1, 120, "months");
  within("pressure may drift by", rule.drift, 1, 100, "%");
  const drift = pressureDrift(audits, audit);
  return {
    latest: !audits.some((other) => sameBlock(other, audit) && other.day > audit.day),
    overdue: asOf - dueDay,
    drifted: drift !== null && Math.abs(drift) > rule.drift ? drift : null,
  };
}

/**
 * What is due, in words.
 *
 * @param found Whether the block is due
 * @returns "tested again", "not due", "due today", "overdue by 40 days", or that the pressure drifted
 * @example retestWords({ latest: true, overdue: 40, drifted: -12.4 }) // "overdue by 40 days; pressure drifted by -12 %"
 */
export function retestWords({ latest, overdue, drifted }: Retest): string {
  if (!latest) return "tested again";
  const date =
    overdue > 0 ? `overdue by ${overdue} ${overdue === 1 ? "day" : "days"}` : overdue === 0 ? "due today" : "";
  const pressure = drifted === null ? "" : `pressure drifted by ${Math.round(drifted)} %`;
  if (date !== "" && pressure !== "") return `${date}; ${pressure}`;
  if (pressure !== "") return `due: ${pressure}`;
  return date === "" ? "not due" : date;
}
