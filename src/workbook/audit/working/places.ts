import { MOST_ACROSS, MOST_ALONG } from "../../../core/pattern/can-field";

/** The lines of the can places. */
export const FIRST = 7;
export const LAST = FIRST + MOST_ACROSS * MOST_ALONG - 1;
export const column = (letter: string) => `$${letter}$${FIRST}:$${letter}$${LAST}`;

/** The strips of the columns, those of the rows, and what follows from all cans. */
export const FIRST_ACROSS = 7;
export const FIRST_ALONG = FIRST_ACROSS + MOST_ACROSS + 3;
export const TOTALS = FIRST_ALONG + MOST_ALONG + 2;
