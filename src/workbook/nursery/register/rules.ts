import type { CellSpec } from "../../form/sheet-spec";
import { TREND_TOP } from "./trend-places";

const RULES = [
  "Two audits are compared only where these are known and the same in both: grid of cans, cans read, class of the mean wind (up to 2.2, up to 4, over 4 m/s) and kind of SC. A change is this audit minus the earlier one.",
  "Water is compared only where both audits are for the same area.",
  "A re-test is due the stated months after the last audit of a block, or at once where its last two mean pressures differ by more than the stated share of the one before.",
  "A line that is not ok takes no part. Names of site and block count as the same whatever their capitals.",
  "Each figure as its audit puts it first; where each can counts by its area, the grid says so. Area, water and flow are of all beds on the valve.",
] as const;
/** How audits are compared and when a block is due, in words. */
export const REGISTER_RULES: CellSpec[] = [
  { at: `T${TREND_TOP}:AD${TREND_TOP}`, kind: "heading", value: "How it is judged (common practice, no source)" },
  ...RULES.map(
    (value, index): CellSpec => ({
      at: `T${TREND_TOP + 1 + 2 * index}:AD${TREND_TOP + 2 + 2 * index}`,
      kind: "note",
      value,
    }),
  ),
];
