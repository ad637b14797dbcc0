import { columnLetters } from "../../../cells/letters";
import { MOST_ACROSS, MOST_ALONG } from "../../../core/pattern/can-field";
import type { CellSpec } from "../../form/sheet-spec";
import { FIRST } from "./places";

const LEFT = 23;
const cellOf = (i: number, j: number) => `${columnLetters(LEFT + j)}${FIRST + i}`;

/** The areas of the cans in the shape of their readings, so that a worksheet function can take both. */
export const AREA_GRID = `${cellOf(0, 0)}:${cellOf(MOST_ALONG - 1, MOST_ACROSS - 1)}`;

export const areaGrid = (): CellSpec[] => [
  {
    at: `${cellOf(-1, 0)}:${cellOf(-1, MOST_ACROSS - 1)}`,
    kind: "heading",
    value: "Area of each can that was read [m²], laid out as on Cans",
  },
  ...Array.from({ length: MOST_ALONG * MOST_ACROSS }, (_, index): CellSpec => {
    const [i, j] = [Math.floor(index / MOST_ACROSS), index % MOST_ACROSS];
    return { at: cellOf(i, j), kind: "working", formula: `$I$${FIRST + index}`, format: "0.00" };
  }),
];
