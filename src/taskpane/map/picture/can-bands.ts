import type { CanField } from "../../../core/pattern/can-field";
import { rateBetween } from "../../../core/pattern/smooth";
import { type Band, classBands } from "./class-bands";

/** Points along the longer side. */
const FINEST = 120;

const steps = (size: number, longest: number): number => Math.max(2, Math.round((FINEST * size) / longest));
const span = (places: readonly number[]): number => places.at(-1)! - places[0]!;

/** The nearest can that was read, so that bands run on below the ground that is left blank. */
function nearest({ across, along, rates }: CanField, x: number, y: number): number {
  let best = Infinity;
  let found = 0;
  rates.forEach((line, row) => {
    line.forEach((rate, column) => {
      const distance = Math.hypot(across[column]! - x, along[row]! - y);
      if (rate === null || distance >= best) return;
      best = distance;
      found = rate;
    });
  });
  return found;
}

/** The bands between the cans of a field; none where the cans are in one line. */
export function canBands(field: CanField, mean: number): Band[] {
  const { across, along } = field;
  const [width, length] = [span(across), span(along)];
  if (!(width > 0 && length > 0)) return [];
  const longest = Math.max(width, length);
  const [columns, rows] = [steps(width, longest), steps(length, longest)];
  const x = (column: number) => across[0]! + (width * column) / (columns - 1);
  const y = (row: number) => along[0]! + (length * row) / (rows - 1);
  const values: number[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const [px, py] = [Math.min(x(column), across.at(-1)!), Math.min(y(row), along.at(-1)!)];
      values.push(rateBetween(field, px, py) ?? nearest(field, px, py));
    }
  }
  return classBands({ values, columns, rows, x, y }, mean);
}

/** The rectangles between four cans that were all read: the ground that a map may colour. */
export function readGround({
  across,
  along,
  rates,
}: CanField): { x: number; y: number; width: number; length: number }[] {
  const read = (row: number, column: number) => rates[row]?.[column] != null;
  return along.slice(1).flatMap((_, row) =>
    across.slice(1).flatMap((_, column) => {
      const all = read(row, column) && read(row, column + 1) && read(row + 1, column) && read(row + 1, column + 1);
      if (!all) return [];
      const [x, y] = [across[column]!, along[row]!];
      return [{ x, y, width: across[column + 1]! - x, length: along[row + 1]! - y }];
    }),
  );
}
