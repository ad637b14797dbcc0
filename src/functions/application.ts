import { caughtRate, headRate } from "../core/application/rate";
import { runTime } from "../core/application/run-time";
import { positive } from "../core/checks";
import { mean } from "../core/readings";
import { multiplier } from "../core/uniformity/multiplier";
import { weightedMean } from "../core/uniformity/weighted";
import { answer } from "./answer";
import { basis as basisOf, mouth as depthBy } from "./arguments";
import { areasOf, overCans } from "./by-area";
import { over, plain, readings as read, spread } from "./cells";

/**
 * Depth of water that each can caught [mm], in the shape of the range.
 * @customfunction DEPTH.CAUGHT
 * @helpurl https://localhost:3000/help.html#depth-caught
 * @param readings Catches [mL or mm], each 0 or more; blank or x: not read
 * @param mouth Inside diameter of the can's mouth [mm] for readings in mL, more than 0; "mm" for readings in mm
 * @returns Depths [mm]
 */
export function depthCaught(readings: unknown[][], mouth: unknown): unknown[][] {
  return answer(() => {
    const catches = read("readings", readings);
    return spread(catches, depthBy(mouth));
  });
}

/**
 * Application rate at each can [mm/h], in the shape of the range.
 * @customfunction RATE.CAUGHT
 * @helpurl https://localhost:3000/help.html#rate-caught
 * @param readings Catches [mL or mm], each 0 or more; blank or x: not read
 * @param minutes Length of the test [min], more than 0
 * @param mouth Inside diameter of the can's mouth [mm] for readings in mL, more than 0; "mm" for readings in mm
 * @returns Rates [mm/h]
 */
export function rateCaught(readings: unknown[][], minutes: unknown, mouth: unknown): unknown[][] {
  return answer(() => {
    const catches = read("readings", readings);
    const length = positive("minutes", plain(minutes), "min");
    const depth = depthBy(mouth);
    return spread(catches, (reading) => caughtRate(depth(reading), length));
  });
}

/**
 * Mean application rate of the bed [mm/h].
 * @customfunction MAR
 * @helpurl https://localhost:3000/help.html#mar
 * @param readings Catches of at least 1 can [mL or mm], each 0 or more; blank or x: not read
 * @param minutes Length of the test [min], more than 0
 * @param mouth Inside diameter of the can's mouth [mm] for readings in mL, more than 0; "mm" for readings in mm
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight
 * @returns MAR [mm/h]
 */
export function mar(readings: unknown[][], minutes: unknown, mouth: unknown, areas?: unknown[][]): number {
  return answer(() => {
    const catches = read("readings", readings);
    const length = positive("minutes", plain(minutes), "min");
    const depth = depthBy(mouth);
    return caughtRate(depth(overCans(catches, areas, (values) => mean(values, 1), weightedMean)), length);
  });
}

/**
 * Application rate from the flow of a head and the spacing of the heads [mm/h].
 * @customfunction RATE.HEAD
 * @helpurl https://localhost:3000/help.html#rate-head
 * @param flow Flow of one head [L/h], more than 0
 * @param spacing Distance between heads along the row [m], more than 0
 * @param row_spacing Distance between rows of heads [m], more than 0
 * @returns Rate [mm/h]
 */
export function rateHead(flow: unknown, spacing: unknown, row_spacing: unknown): number {
  return answer(() =>
    headRate(
      positive("flow", plain(flow), "L/h"),
      positive("spacing", plain(spacing), "m"),
      positive("row_spacing", plain(row_spacing), "m"),
    ),
  );
}

/**
 * Run time that brings the net depth to the driest can, or to the part of the bed that the basis names [min].
 * @customfunction RUNTIME
 * @helpurl https://localhost:3000/help.html#runtime
 * @param readings Catches of at least 2 cans [mL or mm], each 0 or more; blank or x: not read
 * @param minutes Length of the test [min], more than 0
 * @param mouth Inside diameter of the can's mouth [mm] for readings in mL, more than 0; "mm" for readings in mm
 * @param depth Net depth wanted in each pot [mm], more than 0
 * @param [basis] What must get the depth: "can" (left out), "quarter", or the share of cans or area [0 to 1], from 0.5 to 1
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight
 * @returns Run time [min]
 */
export function runtime(
  readings: unknown[][],
  minutes: unknown,
  mouth: unknown,
  depth: unknown,
  basis?: unknown,
  areas?: unknown[][],
): number {
  return answer(() => {
    const catches = read("readings", readings);
    const length = positive("minutes", plain(minutes), "min");
    const caught = depthBy(mouth);
    const wanted = positive("depth", plain(depth), "mm");
    const by = basisOf(basis);
    const given = areasOf(catches, areas);
    const times = over(catches, (values) => multiplier(values, by, given));
    const average = given ? weightedMean(catches.values, given) : mean(catches.values, 1);
    return runTime(wanted, caughtRate(caught(average), length), times);
  });
}
