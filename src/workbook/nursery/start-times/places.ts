/** Where the parts of the sheet Start times are. */
export const HEADINGS = 5;
export const FIRST = HEADINGS + 1;
export const START_LINES = 240;
export const LAST = HEADINGS + START_LINES;
/** The start of a line that has none [min]. */
export const NOWHEN = 99999;

/** The cells of a column over all lines. */
export const column = (letter: string): string => `$${letter}$${FIRST}:$${letter}$${LAST}`;

/** Pairs of blocks kept apart, by their lines in the Program: the one above the other. */
export const PAIR_ONE = "$K$2:$V$2";
export const PAIR_OTHER = "$K$3:$V$3";

/** Lines that a page of the paper holds, in order of time and by block. */
export const PAPER_LINES = 40;
export const PAPER_PARTS = START_LINES / PAPER_LINES;
