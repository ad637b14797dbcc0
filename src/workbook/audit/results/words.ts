/** What is shown where a measure has no number. */
export const DRY = "a can is dry";
export const QUARTER_DRY = "the low quarter is dry";
export const NEEDS_FOUR = "needs 4 cans";
