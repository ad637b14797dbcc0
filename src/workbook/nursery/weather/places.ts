/** Row of January. */
export const FIRST_MONTH = 6;
export const LAST_MONTH = FIRST_MONTH + 11;
/** Heading of the working part, and its first line. */
export const WORKING_HEADING = LAST_MONTH + 2;
export const WORKING_FROM = WORKING_HEADING + 1;
/** Where words are. */
export const NOTE_COLUMN = "N";
