import type { Area } from "../../cells/area";
import { cellAt, reference } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import { caughtDepth } from "../../core/application/depth";
import { caughtRate } from "../../core/application/rate";
import { type CanField, canField, canFieldOfList } from "../../core/pattern/can-field";
import { readings, spread } from "../../functions/cells";
import { withCells } from "../answer/catches";

/** How a reading becomes a rate: minutes of the test, and the can's mouth [mm] or "mm" for readings in mm. */
export interface Test {
  minutes: number;
  mouth: number | "mm";
}

/** A field of cans, and the cells that it comes from. */
export interface Source {
  field: CanField;
  /** The cell of each can, row after row; null where there is none. */
  cells: readonly (readonly (Area | null)[])[];
}

const isRead = (rate: number | string): rate is number => typeof rate === "number";

function ratesOf(cells: Cell[][], area: Area, { minutes, mouth }: Test): (number | null)[][] {
  withCells(cells, area, (values) => values);
  const rate = (reading: number) => caughtRate(mouth === "mm" ? reading : caughtDepth(reading, mouth), minutes);
  const rates = spread(readings("readings", cells), rate);
  return rates.map((line) => line.map((each) => (isRead(each) ? each : null)));
}

/** Which rows or columns hold anything: a reading, or an x. */
const filled = (cells: Cell[][]) => ({
  rows: cells.flatMap((line, row) => (line.some((cell) => cell !== null && cell !== "") ? [row] : [])),
  columns: cells[0]!.flatMap((_, column) =>
    cells.some((line) => line[column] !== null && line[column] !== "") ? [column] : [],
  ),
});

function place(places: Cell[], index: number, what: string): number {
  const found = places[index];
  if (typeof found === "number") return found;
  throw new Error(`The place [m] of ${what} ${index + 1} of the cans is missing`);
}

/** Readings laid out as in the bed, with the places of their columns and rows [m]. */
export function gridSource(cells: Cell[][], area: Area, test: Test, across: Cell[], along: Cell[]): Source {
  const rates = ratesOf(cells, area, test);
  const { rows, columns } = filled(cells);
  const field = canField(
    rows.map((row) => columns.map((column) => rates[row]![column]!)),
    columns.map((column) => place(across, column, "column")),
    rows.map((row) => place(along, row, "row")),
  );
  return { field, cells: rows.map((row) => columns.map((column) => cellAt(area, row, column))) };
}

/** A list with a can a row: place across [m], place along [m], reading. */
export function listSource(cells: Cell[][], area: Area, test: Test): Source {
  if (cells[0]!.length !== 3) {
    throw new Error(`${reference(area)} must have three columns: place across [m], place along [m], reading`);
  }
  const reading = { ...area, address: cellAt(area, 0, 2).address };
  const rates = ratesOf(
    cells.map((line) => [line[2]!]),
    reading,
    test,
  );
  const points = cells.flatMap(([x, y, caught], row) => {
    if (x === null && y === null && caught === null) return [];
    if (typeof x !== "number" || typeof y !== "number") {
      throw new Error(
        `${cellAt(area, row, 0).address} and ${cellAt(area, row, 1).address} must hold the can's place [m]`,
      );
    }
    return [{ x, y, rate: rates[row]![0]!, row }];
  });
  const field = canFieldOfList(points);
  const source = field.along.map((y) =>
    field.across.map((x) => {
      const found = points.find((point) => point.x === x && point.y === y);
      return found ? cellAt(area, found.row, 2) : null;
    }),
  );
  return { field, cells: source };
}
