import { Worksheet } from "@univerjs/core";
import { Spreadsheet } from "@univerjs/preset-sheets-core";

const MOST_COLUMNS = 16_384;

type Cell = ReturnType<Worksheet["getCell"]>;

/**
 * To draw a cell the grid asks some ten times what is in it, and works out its formats, checks and notes each time: while
 * it draws, each cell is worked out once.
 */
export function mendDrawing(): void {
  const { getCell } = Worksheet.prototype;
  const { render } = Spreadsheet.prototype;
  let drawn: Map<Worksheet, Map<number, Cell>> | null = null;
  Worksheet.prototype.getCell = function (row, column) {
    if (!drawn) return getCell.call(this, row, column);
    const known = drawn.get(this) ?? new Map<number, Cell>();
    drawn.set(this, known);
    const place = row * MOST_COLUMNS + column;
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
}
