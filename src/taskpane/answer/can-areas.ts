import type { Area } from "../../cells/area";
import { boxOf } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import { InputError } from "../../core/errors";
import { canAreas } from "../../core/pattern/can-areas";
import type { Snapshot } from "../../hosts/snapshot";
import { type NamedCells, namedCells, numberIn } from "../workbook/named";

/** `Positions_Uneven` said it in workbooks up to version 1.1. */
const DECIDES = ["By_Area", "Positions_Uneven"] as const;
/** What the areas are read from. */
export const AREA_NAMES: readonly string[] = [
  ...DECIDES,
  "Cans_Readings",
  "Cans_Across_m",
  "Cans_Along_m",
  "Bed_Width_m",
  "Bed_Length_m",
];

/** Whether the figures of the workbook are by area. */
export const isByArea = (found: NamedCells | null): boolean => DECIDES.some((name) => found?.[name]?.value === true);

/** The area of each place of the workbook's can grid [m²], "" where it has no place. */
function gridAreas(across: Cell[], along: Cell[], width: number, length: number): (number | "")[][] {
  const places = (cells: Cell[]) => cells.filter((cell) => typeof cell === "number");
  const areas = canAreas(places(across), places(along), width, length);
  return along.map((_, row) => across.map((__, column) => areas[row]?.[column] ?? ""));
}

/**
 * The area of each cell of readings [m²], in their shape; null where each can has equal weight. The workbook decides,
 * and only about its own cans.
 */
export function areasFor(snapshot: Snapshot, { sheet, address }: Area): (number | "")[][] | null {
  const found = namedCells(snapshot, AREA_NAMES);
  const cans = found.Cans_Readings?.area;
  const [width, length] = [numberIn(found.Bed_Width_m), numberIn(found.Bed_Length_m)];
  if (!isByArea(found) || cans?.sheet !== sheet || width === undefined || length === undefined) return null;
  const [whole, shown] = [boxOf(cans), boxOf({ sheet, address })];
  const [row, column] = [shown.row - whole.row, shown.column - whole.column];
  if (row < 0 || column < 0 || row + shown.rows > whole.rows || column + shown.columns > whole.columns) return null;
  const [across, along] = [snapshot.named("Cans_Across_m")!.cells, snapshot.named("Cans_Along_m")!.cells];
  try {
    const areas = gridAreas(across.flat(), along.flat(), width, length);
    return areas.slice(row, row + shown.rows).map((line) => line.slice(column, column + shown.columns));
  } catch (error) {
    // places that are being typed: the workbook has not decided anew yet
    if (error instanceof InputError) return null;
    throw error;
  }
}
