import { Worksheet } from "@univerjs/core";
import { Spreadsheet } from "@univerjs/preset-sheets-core";
import { LAST_COLUMN } from "../../../cells/box";
import type { Fix } from "../fix";

type Cell = ReturnType<Worksheet["getCell"]>;

/** While the grid draws, each cell is made ready once. */
export const drawing: Fix = {
  name: "drawing",
  wrong:
    "To draw a cell the grid asks some ten times what is in it, and goes through its formats, checks and notes each time: drawing is slow.",
  seen: "0.25.1",
  members: () => [
    ["Worksheet", Worksheet.prototype, "getCell"],
    ["Spreadsheet", Spreadsheet.prototype, "render"],
  ],
  mend() {
    const { getCell } = Worksheet.prototype;
    const { render } = Spreadsheet.prototype;
    let drawn: Map<Worksheet, Map<number, Cell>> | null = null;
    Worksheet.prototype.getCell = function (row, column) {
      if (!drawn) return getCell.call(this, row, column);
      const known = drawn.get(this) ?? new Map<number, Cell>();
      drawn.set(this, known);
      const place = row * LAST_COLUMN + column;
      const cell = known.has(place) ? known.get(place) : getCell.call(this, row, column);
      known.set(place, cell);
      return cell;
    };
    Spreadsheet.prototype.render = function (...given) {
      drawn = new Map();
      try {
        return render.apply(this, given);
      } finally {
        drawn = null;
      }
    };
  },
};
