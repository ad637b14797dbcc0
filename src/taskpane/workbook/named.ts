import type { Area } from "../../cells/area";
import { cellAt } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import type { Host } from "../../hosts/host";
import type { Snapshot } from "../../hosts/snapshot";
import type { CellsOf } from "../../workbook/bed/cells-of";
import { type Reading, readNow } from "./reading";

/** The cell behind a defined name, or the first one of an area. */
export interface NamedCell {
  /** The whole area of the name. */
  area: Area;
  /** Its first cell. */
  cell: Area;
  value: Cell;
  /** All cells of the area. */
  cells: readonly (readonly Cell[])[];
  /** True where the workbook works it out, so that nothing may be typed over it. */
  formula: boolean;
}

export type NamedCells = Readonly<Record<string, NamedCell>>;

/** The first cell behind each of these names that the workbook has. */
export function namedCells(snapshot: Snapshot, names: readonly string[]): NamedCells {
  return Object.fromEntries(
    names.flatMap((name): [string, NamedCell][] => {
      const filled = snapshot.named(name);
      if (!filled) return [];
      const { area, cells, inputs } = filled;
      const input = inputs?.[0]?.[0];
      const formula = typeof input === "string" && input.startsWith("=");
      return [[name, { area, cell: cellAt(area, 0, 0), value: cells[0]![0]!, cells, formula }]];
    }),
  );
}

/** The cells behind the names of a snapshot. */
export const cellsOf =
  (snapshot: Snapshot): CellsOf =>
  (name) =>
    snapshot.named(name)?.cells ?? null;

/** Reads the first cell behind each name. */
export const namedReading = (names: readonly string[]): Reading<NamedCells> => ({
  wants: { inputs: names },
  read: (snapshot) => namedCells(snapshot, names),
});

/** Reads the first cell behind each name once, now. */
export const readNamed = (host: Host, names: readonly string[]): Promise<NamedCells> =>
  readNow(host, namedReading(names));

/** The number in a named cell, if it holds one. */
export const numberIn = (found: NamedCell | undefined): number | undefined =>
  typeof found?.value === "number" ? found.value : undefined;

/** What a cell shows, in words. */
export function cellText(cell: Cell | undefined): string {
  const value = cell ?? "";
  return typeof value === "object" ? value.error : String(value);
}

/** What a named cell shows, in words. */
export const textIn = (found: NamedCell | undefined): string => cellText(found?.value);
