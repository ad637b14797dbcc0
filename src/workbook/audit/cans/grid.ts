import { columnLetters } from "../../../cells/letters";
import { cellAt } from "../../../cells/places";
import { number } from "../../form/allowed";
import { inRow } from "../../form/entry-lines";
import type { CellSpec, CheckSpec, ShadeSpec } from "../../form/sheet-spec";

const ACROSS = 20;
const ALONG = 30;
const POSITIONS_ROW = 5;
const POSITIONS_COLUMN = 6;
const FIRST_ROW = POSITIONS_ROW + 1;
const FIRST_COLUMN = POSITIONS_COLUMN + 1;
const COUNTS_ROW = FIRST_ROW + ALONG;
const COUNTS_COLUMN = FIRST_COLUMN + ACROSS;

const rows = Array.from({ length: ALONG }, (_, index) => FIRST_ROW + index);
const columns = Array.from({ length: ACROSS }, (_, index) => FIRST_COLUMN + index);
const between = (row: number, column: number, lastRow: number, lastColumn: number) =>
  `${cellAt(row, column)}:${cellAt(lastRow, lastColumn)}`;

const READINGS = between(FIRST_ROW, FIRST_COLUMN, COUNTS_ROW - 1, COUNTS_COLUMN - 1);
const POSITIONS_ACROSS = between(POSITIONS_ROW, FIRST_COLUMN, POSITIONS_ROW, COUNTS_COLUMN - 1);
const POSITIONS_ALONG = between(FIRST_ROW, POSITIONS_COLUMN, COUNTS_ROW - 1, POSITIONS_COLUMN);

/** The readings as they lie in the bed, with their positions and the cans in each row and column. */
export const CANS_GRID = {
  firstColumn: columnLetters(POSITIONS_COLUMN),
  lastColumn: columnLetters(COUNTS_COLUMN),
  countsAcross: between(COUNTS_ROW, FIRST_COLUMN, COUNTS_ROW, COUNTS_COLUMN - 1),
  countsAlong: between(FIRST_ROW, COUNTS_COLUMN, COUNTS_ROW - 1, COUNTS_COLUMN),
  /** All positions but the last, and all but the first: neighbours when laid side by side. */
  neighboursAcross: [
    between(POSITIONS_ROW, FIRST_COLUMN, POSITIONS_ROW, COUNTS_COLUMN - 2),
    between(POSITIONS_ROW, FIRST_COLUMN + 1, POSITIONS_ROW, COUNTS_COLUMN - 1),
  ],
  neighboursAlong: [
    between(FIRST_ROW, POSITIONS_COLUMN, COUNTS_ROW - 2, POSITIONS_COLUMN),
    between(FIRST_ROW + 1, POSITIONS_COLUMN, COUNTS_ROW - 1, POSITIONS_COLUMN),
  ],
  areas: { Cans_Readings: READINGS, Cans_Across_m: POSITIONS_ACROSS, Cans_Along_m: POSITIONS_ALONG },
} as const;

const counted = (range: string) => `IF(COUNTA(${range})=0,"",COUNTA(${range}))`;

export const GRID_CELLS: readonly CellSpec[] = [
  {
    at: between(3, POSITIONS_COLUMN, POSITIONS_ROW, POSITIONS_COLUMN),
    kind: "heading",
    value: "Along [m]",
  },
  {
    at: inRow(`${columnLetters(FIRST_COLUMN)}:${columnLetters(COUNTS_COLUMN - 1)}`, POSITIONS_ROW - 1),
    kind: "heading",
    value: "First line: across [m]; below it: readings [mL]",
  },
  { at: cellAt(POSITIONS_ROW - 1, COUNTS_COLUMN), kind: "heading", value: "cans" },
  ...columns.map((column): CellSpec => ({ at: cellAt(POSITIONS_ROW, column), kind: "reading" })),
  ...rows.flatMap((row): CellSpec[] => [
    { at: cellAt(row, POSITIONS_COLUMN), kind: "reading" },
    ...columns.map((column): CellSpec => ({ at: cellAt(row, column), kind: "reading" })),
    {
      at: cellAt(row, COUNTS_COLUMN),
      kind: "working",
      align: "center",
      formula: counted(between(row, FIRST_COLUMN, row, COUNTS_COLUMN - 1)),
    },
  ]),
  { at: cellAt(COUNTS_ROW, POSITIONS_COLUMN), kind: "note", value: "cans" },
  ...columns.map(
    (column): CellSpec => ({
      at: cellAt(COUNTS_ROW, column),
      kind: "working",
      align: "center",
      formula: counted(between(FIRST_ROW, column, COUNTS_ROW - 1, column)),
    }),
  ),
];

const first = READINGS.split(":")[0];
const READABLE = `IF(ISNUMBER(${first}),${first}>=0,UPPER(TRIM(${first}))="X")`;
const FARTHEST = 500;
const position = number(0, FARTHEST, "m")("");
/** A place lies farther on than the one before it. */
const farther = (cell: string, before: string, edge: string): Omit<CheckSpec, "range"> => ({
  message: `Metres from the ${edge} edge, more than the place before, up to ${FARTHEST}.`,
  rule: { kind: "formula", formula: `IF(ISNUMBER(${cell}),AND(${cell}>N(${before}),${cell}<=${FARTHEST}),FALSE)` },
});
const [SECOND_COLUMN, SECOND_ROW] = [FIRST_COLUMN + 1, FIRST_ROW + 1];
/** Times the mean of its neighbours above which a reading is asked about: common practice, no source. */
const FAR_ABOVE = 9.9;
const within = (place: "ROW" | "COLUMN", block: string, from: number, to: number) =>
  `(${place}(${block})>=${from})*(${place}(${block})<=${to})`;
/** Whether a can holds far more than those beside it, across a corner too; those are read only where it may. */
export function oddReading(row: number, column: number): string {
  const can = cellAt(row, column);
  const block = between(row - 1, column - 1, row + 1, column + 1); // beside an outermost can not all is of the grid
  const ofGrid = `${within("ROW", block, FIRST_ROW, COUNTS_ROW - 1)}*${within("COLUMN", block, FIRST_COLUMN, COUNTS_COLUMN - 1)}`;
  const [others, caught] = [`SUMPRODUCT(${ofGrid}*ISNUMBER(${block}))-1`, `SUMPRODUCT(${ofGrid},${block})-${can}`];
  return `IF(N(${can})>3*N(Mean_Catch_mL),${can}*(${others})>${FAR_ABOVE}*(${caught}),FALSE)`;
}
export const GRID_CHECKS: readonly CheckSpec[] = [
  { range: cellAt(POSITIONS_ROW, FIRST_COLUMN), ...position },
  {
    range: between(POSITIONS_ROW, SECOND_COLUMN, POSITIONS_ROW, COUNTS_COLUMN - 1),
    ...farther(cellAt(POSITIONS_ROW, SECOND_COLUMN), cellAt(POSITIONS_ROW, FIRST_COLUMN), "left"),
  },
  { range: cellAt(FIRST_ROW, POSITIONS_COLUMN), ...position },
  {
    range: between(SECOND_ROW, POSITIONS_COLUMN, COUNTS_ROW - 1, POSITIONS_COLUMN),
    ...farther(cellAt(SECOND_ROW, POSITIONS_COLUMN), cellAt(FIRST_ROW, POSITIONS_COLUMN), "top"),
  },
  {
    range: READINGS,
    message: "The mL in this can, 0 for a dry can, or x for a can that was not read.",
    rule: { kind: "formula", formula: READABLE },
  },
];

export const GRID_SHADES: readonly ShadeSpec[] = [
  { range: READINGS, formula: `AND(${first}<>"",NOT(${READABLE}))`, fill: "#8c510a", colour: "#ffffff", bold: true },
  { range: READINGS, formula: oddReading(FIRST_ROW, FIRST_COLUMN), fill: "#dfc27d", colour: "#543005", bold: true },
  { range: POSITIONS_ACROSS, formula: "TRUE", fill: "#f0e2bd" },
  { range: POSITIONS_ALONG, formula: "TRUE", fill: "#f0e2bd" },
];
