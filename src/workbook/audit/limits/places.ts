import { LIMIT_SETS, SET_LINES } from "./limit-sets";

/** Where the parts of the sheet Limits are, by their first row. */
export const TABLE = 6;
export const OWN = 13;
export const QUOTED = 20;
export const SETS = 27;
export const LINES = SETS + LIMIT_SETS.length + 2;
export const READ = LINES + SET_LINES.length + 2;

/** A column of the lines of all sets. */
export const setColumn = (letter: string) => `$${letter}$${LINES}:$${letter}$${LINES + SET_LINES.length - 1}`;
