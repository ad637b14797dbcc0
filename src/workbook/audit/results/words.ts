import { whileFresh } from "../working/stamp";

/** What is shown where a measure has no number. */
export const DRY = "a can is dry";
export const QUARTER_DRY = "the low quarter is dry";
export const NEEDS_FOUR = "needs 4 cans";
/** Verdict where the readings were changed since the intervals were kept. */
export const OUT_OF_DATE = "interval out of date";

/** What the verdicts of the sheets compare with the limits. */
export const VERDICTS_USE = whileFresh(
  ["Ends_Stamp", "Inputs_Stamp"],
  '"Verdicts compare the whole 90 % interval with the limit, as the add-in\'s pane does: too close to call where the limit is inside it."',
  {
    none: '"Verdicts compare the value alone with the limit, until the step Answer of the add-in\'s pane keeps the intervals in this workbook."',
    stale: `"Readings or heads were changed since the intervals were kept (${OUT_OF_DATE}): open the step Answer of the add-in's pane."`,
  },
);
