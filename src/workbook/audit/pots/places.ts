/** Groups of pots that a block may have. */
export const GROUPS = [1, 2, 3, 4] as const;

const FIRST = 5;
export const LAST = FIRST + GROUPS.length - 1;
export const rowOf = (group: number) => FIRST + group - 1;

/** What a group is called, by its formula. */
export const nameOf = (group: number) => `IF(A${rowOf(group)}="","group ${group}",A${rowOf(group)})`;

/** The cells of a column over all groups. */
export const column = (letter: string) => `$${letter}$${FIRST}:$${letter}$${LAST}`;

/** What is typed of a group: its column, its name in the workbook, its heading. */
export const TYPED = {
  name: "A",
  top: "B",
  spacing: "C",
  use: "D",
  capture: "E",
  depth: "F",
  area: "G",
} as const;

export const WHERE = LAST + 2;
export const ALL_FROM = WHERE + 6;
