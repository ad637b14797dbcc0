import { aboveZero, positive, within } from "../checks";
import { InputError } from "../errors";

/** Whether the unevenness is counted to leach already, or leaching comes on top of it. */
export type LeachingRule = "larger" | "both";

const HIGHEST_LEACHING = 0.9;

/**
 * Multiplier of the net depth for unevenness and leaching.
 *
 *     larger: max(M, 1 / (1 - LF));  both: M / (1 - LF)        M: multiplier, such as SC; LF: leaching fraction
 *
 * By "larger" the driest pot need not drain where M is the larger; by "both" it drains LF too.
 *
 * @param multiplier What the unevenness asks for, such as a scheduling coefficient, more than 0
 * @param leaching Leaching fraction wanted, from 0 to 0.9
 * @param rule "larger" or "both"
 * @returns Multiplier, more than 0; that of the unevenness where no leaching is wanted and it is at least 1
 * @throws InputError if a value is out of its range
 * @source own reasoning, from the definition of the leaching fraction (UF/IFAS EP529)
 * @example leachingMultiplier(1.4, 0.1, "both") // 1.556
 */
export function leachingMultiplier(multiplier: number, leaching: number, rule: LeachingRule): number {
  const uneven = aboveZero("multiplier", multiplier, "");
  const through = 1 / (1 - within("leaching", leaching, 0, HIGHEST_LEACHING));
  if (rule === "larger") return Math.max(uneven, through);
  if (rule === "both") return uneven * through;
  throw new InputError("rule", 'be "larger" or "both"', rule);
}

/**
 * Depth to apply for unevenness and leaching.
 *
 *     dg = d K        d: net depth; K: the multiplier of both
 *
 * @param depth Net depth wanted in each pot [mm], more than 0
 * @param multiplier What the unevenness asks for, such as a scheduling coefficient, more than 0
 * @param leaching Leaching fraction wanted, from 0 to 0.9
 * @param rule "larger" or "both"
 * @returns Mean depth over the block [mm], more than 0
 * @throws InputError if a value is out of its range
 * @source own reasoning
 * @example grossDepth(9.4, 1.4, 0.1, "both") // 14.6
 */
export function grossDepth(depth: number, multiplier: number, leaching: number, rule: LeachingRule): number {
  return positive("depth", depth, "mm") * leachingMultiplier(multiplier, leaching, rule);
}
