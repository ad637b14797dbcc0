/** What a cell of a file may state: null where it is blank or missing. */
export type Stated = number | string | boolean | null;
