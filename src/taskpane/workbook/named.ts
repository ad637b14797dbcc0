import type { Area } from "../../cells/area";
import { type Box, boxAddress, boxOf, cellAt } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import type { Host } from "../../hosts/host";

/** The cell behind a defined name, or the first one of an area. */
export interface NamedCell {
  /** The whole area of the name. */
  area: Area;
  /** Its first cell. */
  cell: Area;
  value: Cell;
  /** True where the workbook works it out, so that nothing may be typed over it. */
  formula: boolean;
}

export type NamedCells = Readonly<Record<string, NamedCell>>;

function around(boxes: Box[]): Box {
  const row = Math.min(...boxes.map((box) => box.row));
  const column = Math.min(...boxes.map((box) => box.column));
  return {
    row,
    column,
    rows: Math.max(...boxes.map((box) => box.row)) - row + 1,
    columns: Math.max(...boxes.map((box) => box.column)) - column + 1,
  };
}

/** Reads the first cell behind each name that the workbook has, with one look at each sheet. */
export async function readNamed(host: Host, names: readonly string[]): Promise<NamedCells> {
  const areas = await Promise.all(names.map(async (name) => [name, await host.named(name)] as const));
  const known = areas.flatMap(([name, area]) => (area ? [{ name, area, box: boxOf(area) }] : []));
  const found: Record<string, NamedCell> = {};
  for (const sheet of new Set(known.map(({ area }) => area.sheet))) {
    const here = known.filter(({ area }) => area.sheet === sheet);
    const box = around(here.map((one) => one.box));
    const all = { sheet, address: boxAddress(box) };
    const [cells, inputs] = await Promise.all([host.read(all), host.inputs(all)]);
    for (const one of here) {
      const [row, column] = [one.box.row - box.row, one.box.column - box.column];
      const input = inputs[row]![column]!;
      found[one.name] = {
        area: one.area,
        cell: cellAt(one.area, 0, 0),
        value: cells[row]![column]!,
        formula: typeof input === "string" && input.startsWith("="),
      };
    }
  }
  return found;
}

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
