import { columnLetters, columnNumber } from "../../../cells/letters";
import { RATE_CLASSES } from "../../../core/pattern/rate-classes";
import type { CellSpec, ShadeSpec } from "../../form/sheet-spec";

/** Rows of the key: class, share of the mean, least rate. */
export const KEY_ROWS = 3;
const FIRST_CLASS = "K";
const CLASS_COLUMNS = 2;
const WHITE = "#ffffff";
const isDark = (number: number) => number === 1 || number === RATE_CLASSES.length;

const columnsOf = (index: number) => {
  const from = columnNumber(FIRST_CLASS) + CLASS_COLUMNS * index;
  return [columnLetters(from), columnLetters(from + CLASS_COLUMNS - 1)] as const;
};
const at = (index: number, row: number) =>
  columnsOf(index)
    .map((letters) => `${letters}${row}`)
    .join(":");

/** The key of the picture, under it: each class in its colour with what it means. */
export const keyCells = (top: number): CellSpec[] => [
  {
    at: `A${top}:C${top + 2}`,
    kind: "note",
    value:
      "Coverage: each can against the mean of the bed; the key is under the picture. x: not read. All tiles have one size, also where cans are for different areas. Places in metres and the rate of each can are on the sheet Coverage.",
  },
  ...["Class", "% of mean, over", "mm/h, over"].map(
    (value, index): CellSpec => ({ at: `E${top + index}:J${top + index}`, kind: "unit", value }),
  ),
  ...RATE_CLASSES.flatMap(({ number, from }, index): CellSpec[] => [
    { at: at(index, top), kind: "tile", value: number },
    { at: at(index, top + 1), kind: "tile", value: from, format: "0 %" },
    {
      at: at(index, top + 2),
      kind: "tile",
      formula: `IF(COUNT(Coverage_Limits)=0,"",INDEX(Coverage_Limits,${number}))`,
      format: "0.0",
    },
  ]),
];

/** The colours of the key, those of the picture. */
export const keyShades = (top: number): ShadeSpec[] =>
  RATE_CLASSES.map(({ number, colour }, index) => ({
    range: at(index, top),
    formula: `$${columnsOf(index)[0]}$${top}=${number}`,
    fill: colour,
    ...(isDark(number) && { colour: WHITE }),
  }));
