import { contours } from "d3-contour";
import { RATE_CLASSES } from "../../../core/pattern/rate-classes";

/** The ground that gets at least a class's lower end: its edge is the isoline. */
export interface Band {
  /** Number of the class. */
  number: number;
  colour: string;
  /** Rate over the mean along the edge. */
  share: number;
  /** Closed lines of places [m]. */
  rings: [x: number, y: number][][];
}

/** Rates at the points of an even grid, row after row. */
export interface Samples {
  values: ArrayLike<number>;
  columns: number;
  rows: number;
  /** Place of a column and of a row [m]; parts of them lie between. */
  x: (column: number) => number;
  y: (row: number) => number;
}

/** The bands of a coverage map, driest first; the driest class itself is all ground outside them. */
export function classBands({ values, columns, rows, x, y }: Samples, mean: number): Band[] {
  const outlined = contours().size([columns, rows]);
  const numbers = Array.from(values);
  return RATE_CLASSES.slice(1).map(({ number, colour, from }) => ({
    number,
    colour,
    share: from,
    rings: outlined
      .contour(numbers, from * mean)
      .coordinates.flat()
      .map((ring) => ring.map(([column, row]) => [x(column! - 0.5), y(row! - 0.5)])),
  }));
}

/** The lines of a band as the path of a picture. */
export function ringPath({ rings }: Band, place: (x: number, y: number) => string): string {
  return rings.map((ring) => `M${ring.map(([x, y]) => place(x, y)).join("L")}Z`).join("");
}
