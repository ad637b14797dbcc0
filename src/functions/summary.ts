import { caughtRate } from "../core/application/rate";
import { positive } from "../core/checks";
import { summary as measured } from "../core/summary/summary";
import { answer } from "./answer";
import { mouth as depthBy } from "./arguments";
import { areasOf } from "./by-area";
import { over, plain, readings as read } from "./cells";
import { limits as limitsIn } from "./limits";

const HEADER = ["measure", "value", "unit", "low", "high", "limit", "verdict"] as const;

/**
 * Table of all figures of the test, each with its own unit, 90 % interval, limit and verdict.
 * @customfunction SUMMARY
 * @helpurl https://localhost:3000/help.html#summary
 * @param readings Catches of at least 2 cans [mL or mm], each 0 or more; blank or x: not read
 * @param minutes Length of the test [min], more than 0
 * @param mouth Inside diameter of the can's mouth [mm] for readings in mL, more than 0; "mm" for readings in mm
 * @param [limits] Range of two columns, measure and limit such as ">= 85" or "5 to 12"; left out: the built-in limits
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight
 * @returns Table with a header row
 */
export function summary(
  readings: unknown[][],
  minutes: unknown,
  mouth: unknown,
  limits?: unknown[][],
  areas?: unknown[][],
): unknown[][] {
  return answer(() => {
    const catches = read("readings", readings);
    const length = positive("minutes", plain(minutes), "min");
    const rateOfOneUnit = caughtRate(depthBy(mouth)(1), length);
    const known = limitsIn(limits);
    const given = areasOf(catches, areas);
    const rows = over(catches, (values) => measured(values, rateOfOneUnit, known, { areas: given }));
    return [[...HEADER], ...rows.map((row) => HEADER.map((column) => row[column]))];
  });
}
