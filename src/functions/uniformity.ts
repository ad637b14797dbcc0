import { upTo, within } from "../core/checks";
import { christiansen } from "../core/uniformity/christiansen";
import { distributionUniformity } from "../core/uniformity/distribution";
import { interval as bootstrapInterval } from "../core/uniformity/interval";
import { patchSchedulingCoefficient } from "../core/uniformity/patch";
import {
  quarterSchedulingCoefficient,
  schedulingCoefficient,
  shareSchedulingCoefficient,
} from "../core/uniformity/scheduling-coefficient";
import {
  weightedChristiansen,
  weightedDistribution,
  weightedQuarterSchedulingCoefficient,
  weightedSchedulingCoefficient,
  weightedShareSchedulingCoefficient,
} from "../core/uniformity/weighted";
import { answer } from "./answer";
import { index as indexOf, level as levelOf } from "./arguments";
import { areasOf, overCans } from "./by-area";
import { full, over, plain, readings as read } from "./cells";

/**
 * Christiansen's coefficient of uniformity [%]: 100 when every can caught the same.
 * @customfunction CU.CHRISTIANSEN
 * @helpurl https://localhost:3000/help.html#cu-christiansen
 * @param readings Catches of at least 2 cans [mL or mm], each 0 or more; blank or x: not read
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight
 * @returns CU [%]
 */
export function cuChristiansen(readings: unknown[][], areas?: unknown[][]): number {
  return answer(() => overCans(read("readings", readings), areas, christiansen, weightedChristiansen));
}

/**
 * Low-quarter distribution uniformity [%]: mean of the driest quarter of the cans, or of the area, over the mean of all.
 * @customfunction DU.QUARTER
 * @helpurl https://localhost:3000/help.html#du-quarter
 * @param readings Catches of at least 4 cans [mL or mm], each 0 or more; blank or x: not read
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight and a quarter of whole cans
 * @returns DU [%]
 */
export function duQuarter(readings: unknown[][], areas?: unknown[][]): number {
  return answer(() => overCans(read("readings", readings), areas, distributionUniformity, weightedDistribution));
}

/**
 * Scheduling coefficient [ratio]: mean catch over the catch of the driest single can.
 * @customfunction SC.CAN
 * @helpurl https://localhost:3000/help.html#sc-can
 * @param readings Catches of at least 2 cans [mL or mm], each more than 0; blank or x: not read
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight
 * @returns SC
 */
export function scCan(readings: unknown[][], areas?: unknown[][]): number {
  return answer(() =>
    overCans(read("readings", readings), areas, schedulingCoefficient, weightedSchedulingCoefficient),
  );
}

/**
 * Scheduling coefficient of the low quarter [ratio]: mean catch over the mean of the driest quarter.
 * @customfunction SC.QUARTER
 * @helpurl https://localhost:3000/help.html#sc-quarter
 * @param readings Catches of at least 4 cans [mL or mm], each 0 or more; blank or x: not read
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight and a quarter of whole cans
 * @returns SC
 */
export function scQuarter(readings: unknown[][], areas?: unknown[][]): number {
  return answer(() =>
    overCans(read("readings", readings), areas, quarterSchedulingCoefficient, weightedQuarterSchedulingCoefficient),
  );
}

/**
 * Scheduling coefficient of a share [ratio]: mean catch over the catch that this share of the cans, or of the area, reaches.
 * @customfunction SC.SHARE
 * @helpurl https://localhost:3000/help.html#sc-share
 * @param readings Catches of at least 2 cans [mL or mm], each 0 or more; blank or x: not read
 * @param share Share of the cans, or of the area, that must get the depth [0 to 1], from 0.5 to 1
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight
 * @returns SC
 */
export function scShare(readings: unknown[][], share: unknown, areas?: unknown[][]): number {
  return answer(() => {
    const catches = read("readings", readings);
    const reached = within("share", plain(share), 0.5, 1);
    return overCans(
      catches,
      areas,
      (values) => shareSchedulingCoefficient(values, reached),
      (values, given) => weightedShareSchedulingCoefficient(values, given, reached),
    );
  });
}

/**
 * Scheduling coefficient of the driest patch [ratio]: mean catch over the mean of the driest patch of neighbouring cans.
 * @customfunction SC.PATCH
 * @helpurl https://localhost:3000/help.html#sc-patch
 * @param grid Catches laid out as in the bed [mL or mm], at least 4 cells, none blank, each 0 or more
 * @param share Share of the bed that the patch covers [0 to 1], above 0 and up to 0.5
 * @returns SC
 */
export function scPatch(grid: unknown[][], share: unknown): number {
  return answer(() => {
    const catches = read("grid", grid);
    const bed = full(catches);
    const covered = upTo("share", plain(share), 0.5);
    return over(catches, () => patchSchedulingCoefficient(bed, covered));
  });
}

/**
 * Low and high ends of the bootstrap interval of an index [its own unit], in two cells side by side.
 * @customfunction INTERVAL
 * @helpurl https://localhost:3000/help.html#interval
 * @param readings Catches of at least 16 cans [mL or mm], each 0 or more; blank or x: not read
 * @param index Which index: "MEAN", "CU.CHRISTIANSEN", "DU.QUARTER" or "SC.QUARTER"
 * @param [level] Confidence level [0 to 1], from 0.5 to 0.99; left out: 0.9
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight
 * @returns Low and high end
 */
export function interval(readings: unknown[][], index: unknown, level?: unknown, areas?: unknown[][]): number[][] {
  return answer(() => {
    const catches = read("readings", readings);
    const name = indexOf(index);
    const confidence = levelOf(level);
    const given = areasOf(catches, areas);
    return [over(catches, (values) => bootstrapInterval(values, name, confidence, given))];
  });
}
