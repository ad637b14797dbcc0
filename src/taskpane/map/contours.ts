import { contours } from "d3-contour";
import type { CanField } from "../../core/pattern/can-field";
import { RATE_CLASSES } from "../../core/pattern/rate-classes";
import { rateBetween } from "../../core/pattern/smooth";

const FINEST = 120;

/** A line of equal rate, and the ground inside it, as rings of places [m]. */
export interface Isoline {
  /** Rate over the mean. */
  share: number;
  rings: [x: number, y: number][][];
}

const steps = (size: number, longest: number): number => Math.max(2, Math.round((FINEST * size) / longest));
const span = (places: readonly number[]): number => places.at(-1)! - places[0]!;

/** The nearest can that was read, so that lines run on below the places that are left blank. */
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

/** The lines between the classes of a coverage map over a field of cans; none where the cans stand in one line. */
export function isolines(field: CanField, mean: number): Isoline[] {
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
  return RATE_CLASSES.slice(1).map(({ from }) => ({
    share: from,
    rings: contours()
      .size([columns, rows])
      .contour(values, from * mean)
      .coordinates.flat()
      .map((ring) => ring.map(([column, row]) => [x(column! - 0.5), y(row! - 0.5)])),
  }));
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
