import { type RegisteredAudit, sameBlock } from "./registered-audit";

/**
 * The audit of the same block that came last before another one.
 *
 * @param audits The register; no block twice on one day
 * @param later The audit whose predecessor is wanted
 * @returns It, or null where the register has none
 * @source own reasoning
 */
export function earlierAudit(audits: readonly RegisteredAudit[], later: RegisteredAudit): RegisteredAudit | null {
  return audits
    .filter((audit) => sameBlock(audit, later) && audit.day < later.day)
    .reduce<RegisteredAudit | null>((last, audit) => (last && last.day > audit.day ? last : audit), null);
}
