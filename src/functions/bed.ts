import { causes } from "../core/bed/causes/causes";
import { checkOf, nextCheck, whereOf } from "../core/bed/causes/next-check";
import { parseWholeBedIndex, wholeBed } from "../core/bed/interval/whole-bed";
import { answer } from "./answer";
import { index as indexOf, level as levelOf } from "./arguments";
import { bedOf } from "./bed-arguments";

const HEADER = ["cause", "weight %", "where", "next check"];

/**
 * Table of what may be wrong with a bed, from the cans and the places of heads alone (the step Answer also uses buckets, gauges and wind): the verdict, then nine causes with weights [%] that sum to 100.
 * @customfunction BED.CAUSES
 * @helpurl https://localhost:3000/help.html#bed-causes
 * @param grid Catches as laid out in the bed [any one unit], each 0 or more; blank or x: not read
 * @param across Places of the columns of cans [m from the left edge], ascending
 * @param along Places of the rows of cans [m from the top edge], ascending
 * @param width Width of the bed [m], more than 0
 * @param length Length of the bed [m], more than 0
 * @param spacing Distance between heads across the width [m], more than 0
 * @param radius Throw of a head by its maker [m], more than 0
 * @param arrangement Where heads are: "border", "staggered", "inset" or "centre"
 * @param [arcs] What border heads throw: "full" (left out), "matched" or "unmatched"
 * @param [row_spacing] Distance between heads along the length [m], more than 0; left out: as spacing
 * @param [heads] Places of the heads, two columns, across and along [m]; left out: as arranged
 * @returns Table with a header row, the verdict, then the causes by falling weight
 */
export function bedCauses(
  grid: unknown[][],
  across: unknown[][],
  along: unknown[][],
  width: unknown,
  length: unknown,
  spacing: unknown,
  radius: unknown,
  arrangement: unknown,
  arcs?: unknown,
  row_spacing?: unknown,
  heads?: unknown[][],
): unknown[][] {
  return answer(() => {
    const bed = bedOf({
      ...{ grid, across, along, width, length, spacing, radius, arrangement, arcs, row_spacing, heads },
    });
    const found = causes(bed);
    const lead = found.causes[0]!;
    const named = found.doubts.length === 0;
    const verdict = named ? [lead.cause, lead.weight, whereOf(bed, lead)] : ["cannot tell", lead.weight, ""];
    const rows = found.causes.map((one) => [one.cause, one.weight, whereOf(bed, one), checkOf(bed, one)]);
    return [HEADER, [...verdict, nextCheck(found)], ...rows];
  });
}

/**
 * The mean, CU or DU of the whole bed as its heads fit the cans, and the range that it probably lies in: estimate, low and high end [unit of the grid, or %], in three cells side by side.
 * @customfunction BED.INTERVAL
 * @helpurl https://localhost:3000/help.html#bed-interval
 * @param grid Catches of 16 to 200 cans as laid out in the bed [any one unit], each 0 or more; blank or x: not read
 * @param across Places of the columns of cans [m from the left edge], ascending
 * @param along Places of the rows of cans [m from the top edge], ascending
 * @param width Width of the bed [m], more than 0
 * @param length Length of the bed [m], more than 0
 * @param spacing Distance between heads across the width [m], more than 0
 * @param radius Throw of a head by its maker [m], more than 0
 * @param arrangement Where heads are: "border", "staggered", "inset" or "centre"
 * @param index Which index: "MEAN", "CU.CHRISTIANSEN" or "DU.QUARTER"
 * @param [arcs] What border heads throw: "full" (left out), "matched" or "unmatched"
 * @param [row_spacing] Distance between heads along the length [m], more than 0; left out: as spacing
 * @param [heads] Places of the heads, two columns, across and along [m]; left out: as arranged
 * @param [level] Confidence level [0 to 1], from 0.5 to 0.99; left out: 0.9
 * @returns Estimate, low and high end
 */
export function bedInterval(
  grid: unknown[][],
  across: unknown[][],
  along: unknown[][],
  width: unknown,
  length: unknown,
  spacing: unknown,
  radius: unknown,
  arrangement: unknown,
  index: unknown,
  arcs?: unknown,
  row_spacing?: unknown,
  heads?: unknown[][],
  level?: unknown,
): number[][] {
  return answer(() => {
    const asked = parseWholeBedIndex(indexOf(index));
    const confidence = levelOf(level);
    const bed = bedOf({
      ...{ grid, across, along, width, length, spacing, radius, arrangement, arcs, row_spacing, heads },
    });
    const { estimate, low, high } = wholeBed(bed, confidence)[asked];
    return [[estimate, low, high]];
  });
}
