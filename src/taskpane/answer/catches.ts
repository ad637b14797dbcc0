import type { Area } from "../../cells/area";
import { cellAt, reference } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import { InputError } from "../../core/errors";
import { over, readings } from "../../functions/cells";

/** The catches of a range, and where the driest can is. */
export interface Catches {
  values: Float64Array;
  /** Cells marked x. */
  marked: number;
  /** Places between cans that hold nothing. */
  blank: number;
  dry: number;
  driest: number;
  driestCell: Area;
  /** How many cans share the driest reading. */
  alike: number;
}

/** What is in a range that is no set of catches, in words, and whether it holds any number at all. */
export class CatchProblem extends Error {
  readonly empty: boolean;

  constructor(message: string, empty: boolean) {
    super(message);
    this.empty = empty;
  }
}

/** The message of an error about one cell, with the cell's address. */
export function withAddress(error: InputError, area: Area): string {
  const place = /^row (\d+), column (\d+)$/.exec(error.place ?? "");
  if (!place) return error.message;
  const cell = cellAt(area, Number(place[1]) - 1, Number(place[2]) - 1);
  return error.at(cell.address).message;
}

function refuseErrors(cells: Cell[][], area: Area): void {
  cells.forEach((line, row) => {
    line.forEach((cell, column) => {
      if (cell === null || typeof cell !== "object") return;
      const words = cell.message ? `${cell.error} (${cell.message})` : cell.error;
      throw new CatchProblem(`${cellAt(area, row, column).address} shows ${words}`, false);
    });
  });
}

/** Runs work on readings; an error about one of them names its cell. */
export function withCells<T>(cells: Cell[][], area: Area, work: (values: Float64Array) => T): T {
  refuseErrors(cells, area);
  try {
    return over(readings("readings", cells), work);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new CatchProblem(withAddress(error, area), false);
  }
}

const isBlank = (cell: Cell) => cell === null || cell === "";

/** Blank places of a list; of a bed those in rows and columns that hold cans, since a form has others. */
function blankAmong(cells: Cell[][]): number {
  if (cells.length === 1 || cells[0]!.length === 1) return cells.flat().filter(isBlank).length;
  const rows = cells.filter((line) => !line.every(isBlank));
  const columns = cells[0]!.filter((_, column) => !rows.every((line) => isBlank(line[column]!)));
  return rows.length * columns.length - rows.flat().filter((cell) => !isBlank(cell)).length;
}

/** Reads the catches of a range by the rules of the worksheet functions. */
export function catchesOf(cells: Cell[][], area: Area): Catches {
  const flat = cells.flat();
  if (!flat.some((cell) => typeof cell === "number")) {
    throw new CatchProblem(`${reference(area)} holds no readings`, true);
  }
  const values = withCells(cells, area, (counted) => counted);
  const driest = values.reduce((low, value) => Math.min(low, value), Infinity);
  const nth = flat.indexOf(driest);
  const width = cells[0]!.length;
  return {
    values,
    marked: flat.filter((cell) => typeof cell === "string" && cell.trim() !== "").length,
    blank: blankAmong(cells),
    dry: values.filter((value) => value === 0).length,
    driest,
    driestCell: cellAt(area, Math.floor(nth / width), nth % width),
    alike: values.filter((value) => value === driest).length,
  };
}
