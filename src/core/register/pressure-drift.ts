import { type RegisteredAudit, sameBlock } from "./registered-audit";

/** So that a drift of exactly the limit is not over it. */
const ROUNDED_AT = 1e9;

/**
 * How far the pressure of a block drifted between the last two audits that measured it.
 *
 *     d = 100 (p / q - 1)        p: last mean pressure up to the audit's day; q: the one before it
 *
 * @param audits The register; no block twice on one day
 * @param audit The audit up to whose day is looked
 * @returns d [%], to the ninth decimal; null where pressure was not measured twice
 * @source own reasoning
 */
export function pressureDrift(audits: readonly RegisteredAudit[], audit: RegisteredAudit): number | null {
  const measured = audits
    .filter((one) => sameBlock(one, audit) && one.day <= audit.day && one.pressure !== null)
    .sort((one, other) => other.day - one.day);
  const [last, before] = measured;
  if (!last || !before) return null;
  return Math.round(100 * (last.pressure! / before.pressure! - 1) * ROUNDED_AT) / ROUNDED_AT;
}
