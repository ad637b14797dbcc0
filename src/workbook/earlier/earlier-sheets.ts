import { inflateSync, strFromU8 } from "fflate";
import type { SheetSpec } from "../form/sheet-spec";

/** What is new since a version of the audit, for somebody who works with a workbook of it. */
const EARLIER: Readonly<Record<string, { kept: () => Promise<{ deflated: string }>; news: readonly string[] }>> = {
  "1.1": {
    kept: () => import("./audit-1.1.json"),
    news: [
      "by area as soon as places and bed are typed, with no step at 5 %, the share of pots and the map too",
      "the share of the water that drains is summed over the cans (before: 1 - 1 / multiplier, too low where the run time is not set by the driest can)",
      "water that falls between the pots is apart from what drains from them, fertiliser too",
      "up to four pot sizes in a block, on a sheet Pots",
      "water, costs and pulses count every bed on the valve, at the longest run of its tested beds; Metered is of the whole valve",
      "staggered heads as a layout",
      "walk-through before the test, and leaves over the cans",
      "no leaching is advised where the water may be salty and its EC is not typed",
      "limits from memory say so",
      "places of heads, throw and supply side, from which the cause is found",
      "water used now by minutes and runs where nothing is metered",
      "no fertiliser is lost where run-off is returned",
    ],
  },
};

/** The same of the nursery plan, which keeps its own formulas and needs no sheets kept. */
const EARLIER_PLAN: Readonly<Record<string, readonly string[]>> = {
  "1.0": [
    "the leaching test weighs a planted pot inside one without holes (before: an empty pot, which under leaves gets less water; with a capture factor of 1.5 the corrected run time was 9 % too short, with 2.0 18 %)",
    "evapotranspiration from monthly weather counts the heat that goes into the soil (FAO-56, eq. 43 and 44; before: none)",
  ],
};

const since = (what: string, version: string, news: readonly string[] | undefined, other: string) =>
  news
    ? `This ${what} is of version ${version} and keeps the rules of that version. New since: ${news.join("; ")}. ${other} has them.`
    : null;

/** The versions of the audit workbook whose sheets are known beside the present ones. */
export const EARLIER_VERSIONS: readonly string[] = Object.keys(EARLIER);

/** Said where an audit of an earlier version is open or checked; null for other versions. */
export const newsSince = (version: string): string | null =>
  since("workbook", version, Object.hasOwn(EARLIER, version) ? EARLIER[version]!.news : undefined, "A new audit");

/** Said where a nursery plan of an earlier version is open; null for other versions. */
export const planNewsSince = (version: string): string | null =>
  since(
    "nursery plan",
    version,
    Object.hasOwn(EARLIER_PLAN, version) ? EARLIER_PLAN[version] : undefined,
    "A new nursery plan",
  );

/** The audit's sheets as they were in an earlier version, as far as a check needs them; null where they are not kept. */
export async function earlierSheets(version: string): Promise<readonly SheetSpec[] | null> {
  const earlier = Object.hasOwn(EARLIER, version) ? EARLIER[version] : undefined;
  if (!earlier) return null;
  const { deflated } = await earlier.kept();
  const bytes = Uint8Array.from(atob(deflated), (sign) => sign.charCodeAt(0));
  return JSON.parse(strFromU8(inflateSync(bytes))) as SheetSpec[];
}
