/** Where the parts of the sheet Program are. */
export const SETTINGS_FROM = 3;
export const DAY_FROM = 12;
export const CHECKS_FROM = 20;
export const HEADINGS = 26;
export const FIRST_BLOCK = HEADINGS + 1;
export const BLOCKS = 60;
export const LAST_BLOCK = HEADINGS + BLOCKS;
export const FIRST_WINDOW = 5;
export const LAST_WINDOW = 10;
export const FIRST_PAIR = 5;
export const LAST_PAIR = 16;

/** The cells of a column over all blocks, or over all windows. */
export const ofBlocks = (letter: string): string => `$${letter}$${FIRST_BLOCK}:$${letter}$${LAST_BLOCK}`;
export const ofWindows = (letter: string): string => `$${letter}$${FIRST_WINDOW}:$${letter}$${LAST_WINDOW}`;

/** `C30` holds a quantity that core takes. */
export const isPositive = (cell: string): string =>
  `IF(COUNT(${cell})=1,AND(${cell}>=1/10^9,${cell}<=1000000000),FALSE)`;
