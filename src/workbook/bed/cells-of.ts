import type { Cell } from "../../cells/cell";

/** What is behind a defined name; null where the workbook has no such name. */
export type CellsOf = (name: string) => Cell[][] | null;

export const firstOf = (cells: CellsOf, name: string): Cell => cells(name)?.[0]?.[0] ?? null;

/** The number in the first cell of a name. */
export function numberOf(cells: CellsOf, name: string): number | undefined {
  const value = firstOf(cells, name);
  return typeof value === "number" ? value : undefined;
}

export function textOf(cells: CellsOf, name: string): string {
  const value = firstOf(cells, name);
  return typeof value === "string" ? value : "";
}

/** The cells behind a name as one list. */
export const listOf = (cells: CellsOf, name: string): Cell[] => cells(name)?.flat() ?? [];
