import { aboveZero, positive } from "../checks";
import { InputError } from "../errors";
import { drainedShare } from "../uniformity/drained-share";

/** Pots of one size in a block. */
export interface PotGroup {
  /** Net depth that each of them should get [mm]. */
  depth: number;
  /** Area of the bed that they take, in any one unit. */
  area: number;
  /** Share of the water there that reaches the pots, above 0 and up to 1; left out: 1. */
  reached?: number;
}

/** What the pots of one size get. */
export interface GroupWater {
  /** Of the area of all groups. */
  share: number;
  /** Mean depth applied over the depth that they should get. */
  multiplier: number;
  /** Share of the water that reaches them and drains. */
  drained: number;
}

/** The water of a block of several pot sizes. */
export interface GroupsWater {
  /** Net depth of the neediest group [mm], which sets the run time. */
  depth: number;
  groups: readonly GroupWater[];
  /** Share of the water on the bed that reaches pots. */
  reached: number;
  /** Share of the water that reaches pots and drains, over all groups. */
  drained: number;
}

/**
 * Depth of the neediest group of pots, and what each group gets and drains at its run time.
 *
 *     D = max(D_g)        K_g = K D / D_g        d_g = share drained at K_g        d = sum(w_g r_g d_g) / sum(w_g r_g)
 *     D_g: net depth; w_g: share of the area; r_g: share of the water that reaches the pots; K: run-time multiplier
 *
 * Each group is taken to be spread over the whole bed, so that the cans speak for all of them alike.
 *
 * @param groups The groups; at least 1; depths [mm] and areas more than 0
 * @param readings Catch in each can, any one unit, each 0 or more; at least 2, not all 0
 * @param multiplier K, such as SC or a leaching multiplier, more than 0
 * @param areas Area of each can, any one unit, more than 0; left out: equal weight
 * @returns Depth, what each group gets, and both shares of the whole; of one group those of a block of one size
 * @throws InputError if there is no group, a value is out of its range, or as drainedShare
 * @source own reasoning: one run waters all groups, each keeps at most its own depth
 * @example potGroups([{ depth: 10, area: 3 }, { depth: 5, area: 1 }], [4, 8, 12], 2).drained // 0.5625
 */
export function potGroups(
  groups: readonly PotGroup[],
  readings: ArrayLike<number>,
  multiplier: number,
  areas?: ArrayLike<number>,
): GroupsWater {
  if (groups.length === 0) throw new InputError("groups", "have at least 1 group", 0);
  const depth = Math.max(...groups.map((group) => positive("depth", group.depth, "mm")));
  const whole = groups.reduce((sum, group) => sum + positive("area", group.area, ""), 0);
  const k = aboveZero("multiplier", multiplier, "");
  const waters = groups.map((group) => {
    const own = (k * depth) / group.depth;
    return { share: group.area / whole, multiplier: own, drained: drainedShare(readings, own, areas) };
  });
  const reached = groups.map((group, g) => waters[g]!.share * aboveZero("reached", group.reached ?? 1, ""));
  const all = reached.reduce((sum, one) => sum + one, 0);
  const drained = waters.reduce((sum, group, g) => sum + reached[g]! * group.drained, 0) / all;
  return { depth, groups: waters, reached: all, drained };
}
