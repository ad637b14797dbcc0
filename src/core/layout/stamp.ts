import type { Cells } from "./cells";
import type { Head, Side } from "./heads";
import type { Profile } from "./profile";

/** A centre this close beyond the throw counts as on it, so that rounding cannot tell mirror images apart. */
const SLACK = 1e-9;

/** Rates about one head, over the box of cells that it can wet. */
export interface Stamp {
  /** First row and column of the box, counted from the cell that the head is in. */
  firstRow: number;
  firstColumn: number;
  rows: number;
  columns: number;
  /** Rates at the centres of the cells of the box, row after row [mm/h]. */
  rates: Float64Array;
}

/** The stamp of a head whose x and y count from a corner of the cell that it is in [m]. */
export function stamp(
  { x, y, across, along }: Pick<Head, "x" | "y" | "across" | "along">,
  { cellWidth, cellLength }: Cells,
  { distances, rates }: Profile,
): Stamp {
  const throwLength = distances[distances.length - 1] as number;
  const reach = throwLength * (1 + SLACK);
  const [firstRow, lastRow] = span(y, reach, cellLength, along);
  const [firstColumn, lastColumn] = span(x, reach, cellWidth, across);
  const rows = Math.max(0, lastRow - firstRow + 1);
  const columns = Math.max(0, lastColumn - firstColumn + 1);
  const filled = new Float64Array(rows * columns);
  const slopes = rates.map(
    (rate, i) => ((rates[i + 1] ?? rate) - rate) / ((distances[i + 1] ?? Infinity) - (distances[i] as number)),
  );
  let line = 0;
  for (let row = 0; row < rows; row += 1) {
    const dy = (firstRow + row + 0.5) * cellLength - y;
    const chord = Math.sqrt(Math.max(0, reach * reach - dy * dy));
    const [first, last] = span(x, chord, cellWidth, across);
    for (let column = first; column <= last; column += 1) {
      const dx = (column + 0.5) * cellWidth - x;
      const r = Math.min(throwLength, Math.sqrt(dx * dx + dy * dy));
      while (r < (distances[line] as number)) line -= 1;
      while (r > (distances[line + 1] as number)) line += 1;
      const rate = (rates[line] as number) + (slopes[line] as number) * (r - (distances[line] as number));
      filled[row * columns + column - firstColumn] = Math.max(0, rate);
    }
  }
  return { firstRow, firstColumn, rows, columns, rates: filled };
}

/** First and last of the cells whose centres lie within reach of a place, on the side that gets water. */
function span(place: number, reach: number, cell: number, side: Side): [number, number] {
  const low = side > 0 ? place : place - reach;
  const high = side < 0 ? place : place + reach;
  return [Math.ceil(low / cell - 0.5), Math.floor(high / cell - 0.5)];
}
