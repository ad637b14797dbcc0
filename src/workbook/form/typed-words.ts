/** True where something is in a cell that is no number within its bounds. */
export const outside = (cell: string, least: number, most: number): string =>
  `AND(${cell}<>"",IF(ISNUMBER(${cell}),OR(${cell}<${least},${cell}>${most}),TRUE))`;

/** True where something is in a cell that is no number above 0. */
export const notAboveZero = (cell: string, most = 1e9): string =>
  `AND(${cell}<>"",IF(ISNUMBER(${cell}),OR(${cell}<=0,${cell}>${most}),TRUE))`;

/** `Tmin in B5 must be 3 or more, got 2`, as a formula that gives it. */
export const wrong = (what: string, cell: string, rule: string): string =>
  `"${what} in ${cell.replaceAll("$", "")} must ${rule}, got "&${cell}`;

/** The pair of `outside` and what is said then, for `nestedIfs`. */
export const bounded = (
  what: string,
  cell: string,
  least: number,
  most: number,
  unit: string,
): readonly [string, string] => [
  outside(cell, least, most),
  wrong(what, cell, `be from ${least} to ${`${most} ${unit}`.trim()}`),
];

/** The pair of `notAboveZero` and what is said then, for `nestedIfs`. */
export const aboveZero = (what: string, cell: string, unit: string): readonly [string, string] => [
  notAboveZero(cell),
  wrong(what, cell, `be more than ${`0 ${unit}`.trim()}`),
];
