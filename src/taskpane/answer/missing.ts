import { ASKED_FIRST } from "../../core/figures/entries";
import type { Settings } from "./settings";

/** What each setting is called where it is lacking. */
export const NEEDED = {
  minutes: "the length of the test",
  mouth: "the can's mouth",
  depth: "the net depth wanted",
  share: "the share of the cans",
};

export type Needed = keyof typeof NEEDED;

/** The depth of an audit workbook is calculated on its sheet Run time, from what that step's fields say. */
const IN_RUN_TIME = `under ${ASKED_FIRST.Depth_Typed_mm.label} in the step Answer`;
const IN_READINGS = "under Test settings in the step Readings";

/** `Run time needs the can's mouth: fill it in under Test settings in the step Readings`. */
export function lackOf(measure: string, lacking: readonly Needed[], { depth }: Settings): string {
  const names = lacking.map((need) => NEEDED[need]);
  const last = names.at(-1)!;
  const listed = names.length > 1 ? `${names.slice(0, -1).join(", ")} and ${last}` : last;
  const where = lacking.every((need) => need === "depth") && depth.area ? IN_RUN_TIME : IN_READINGS;
  return `${measure} needs ${listed}: fill ${names.length > 1 ? "them" : "it"} in ${where}`;
}
