/** Pot groups, one a column. */
export const GROUP_COLUMNS = ["B", "C", "D", "E", "F", "G"] as const;
/** Where the names of the groups are. */
export const NAME_ROW = 5;
