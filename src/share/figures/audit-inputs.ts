import type { Stated } from "../../cells/stated";
import { InputError } from "../../core/errors";
import { cellsIn, type FileBook, namedArea, type PlacedCell } from "../../xlsx/parts/workbook-file";

/** What was typed into the audit of a file, by the names of its cells; nothing that a formula gave is read. */
export class AuditInputs {
  constructor(private readonly book: FileBook) {}

  cells(name: string): PlacedCell[] {
    const area = namedArea(this.book, name);
    return area ? cellsIn(this.book, area) : [];
  }

  value(name: string): Stated {
    return this.cells(name).find(({ row, column }) => row === 1 && column === 1)?.cell.value ?? null;
  }

  /** The number in a cell, or null where it holds none. */
  number(name: string): number | null {
    const value = this.value(name);
    return typeof value === "number" ? value : null;
  }

  text(name: string): string {
    const value = this.value(name);
    return value === null ? "" : String(value);
  }

  /** Numbers of a rectangle of one row or one column, by their place from 1. */
  numbers(name: string): Map<number, number> {
    return new Map(
      this.cells(name).flatMap(({ row, column, cell: { value } }) =>
        typeof value === "number" ? [[Math.max(row, column), value] as const] : [],
      ),
    );
  }
}

/** What a computation gives, or null where its inputs cannot give it. */
export function ifAll<T extends readonly (number | null)[], R = number>(
  inputs: readonly [...T],
  compute: (...numbers: { [K in keyof T]: number }) => R | null,
): R | null {
  if (inputs.some((input) => input === null)) return null;
  try {
    return compute(...(inputs as { [K in keyof T]: number }));
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}
