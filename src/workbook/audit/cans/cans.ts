import { timeOfDay } from "../../form/allowed";
import { checkLines } from "../../form/check-lines";
import { entryField } from "../../form/entry-field";
import { formLines, joined, STRIKING } from "../../form/entry-lines";
import type { SheetSpec } from "../../form/sheet-spec";
import { CAN_CHECKS, MOUTH_QUESTION, ODD_MOUTH } from "./checks";
import { CAN_FIGURES } from "./figures";
import { CANS_GRID, GRID_CELLS, GRID_CHECKS, GRID_SHADES } from "./grid";

const FORM = { label: "A", entry: "B:C", unit: "D", noteLine: 40 };
const NOTE = 8;
const FIGURES = NOTE + 2;
const CHECKS = FIGURES + CAN_FIGURES.length + 1;
/** Rows that a data check takes. */
export const CHECK_ROWS = 2;

const LAST_CHECK = CHECKS + CAN_CHECKS.length * CHECK_ROWS - 1;

const test = formLines(3, FORM, [
  "The test",
  entryField("Can_Mouth_mm"),
  entryField("Test_Minutes"),
  { label: "Started", unit: "time", name: "Test_Start", format: "h:mm", allowed: timeOfDay },
  { label: "Stopped", unit: "time", name: "Test_Stop", format: "h:mm", allowed: timeOfDay },
]);
const figures = formLines(FIGURES, FORM, CAN_FIGURES);
const found = checkLines(CHECKS, { label: "A", text: "B:D", rows: CHECK_ROWS }, CAN_CHECKS);
const { cells, checks: rules } = joined(test, figures, found);

/** The readings, laid out as in the bed, and what is to be said about them. */
export const CANS: SheetSpec = {
  name: "Cans",
  roomy: true,
  widths: [22, 12, 14, 8, 2, 8, ...Array.from({ length: 20 }, () => 5), 6],
  landscape: true,
  heights: Object.fromEntries(Array.from({ length: LAST_CHECK - CHECKS + 1 }, (_, index) => [CHECKS + index, 15])),
  printed: `A1:${CANS_GRID.lastColumn}${LAST_CHECK}`,
  cells: [
    { at: `A1:${CANS_GRID.lastColumn}1`, kind: "title", value: "Cans" },
    {
      at: `A2:${CANS_GRID.lastColumn}2`,
      kind: "said",
      value:
        "One cell for each can, laid out as in the bed seen from above. Type the mL caught, 0 for a dry can, x for a can that was not read (spilt, knocked over).",
    },
    ...cells,
    {
      at: `A${NOTE}:D${NOTE + 1}`,
      kind: "note",
      formula: `IF(${ODD_MOUTH},${MOUTH_QUESTION},"Mouth: at the rim, the mean of two diameters; 1 mm off is about 2 % of depth. Minutes: water on to water off.")`,
    },
    { at: `A${CHECKS - 1}:D${CHECKS - 1}`, kind: "heading", value: "Data checks" },
    {
      at: `G3:${CANS_GRID.lastColumn}3`,
      kind: "heading",
      value: "The bed seen from above: its width from left to right, its length from top to bottom",
    },
    ...GRID_CELLS,
  ],
  areas: {
    ...CANS_GRID.areas,
    Cans_In_Columns: CANS_GRID.countsAcross.replaceAll("$", ""),
    Cans_In_Rows: CANS_GRID.countsAlong.replaceAll("$", ""),
    Can_Checks: `A${CHECKS}:D${LAST_CHECK}`,
  },
  checks: [...rules, ...GRID_CHECKS],
  shades: [...found.shades, ...GRID_SHADES, { range: `A${NOTE}:D${NOTE + 1}`, formula: ODD_MOUTH, ...STRIKING }],
};
