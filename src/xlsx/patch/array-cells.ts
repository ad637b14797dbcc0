import type { Cell } from "../../cells/cell";
import { cellAt } from "../../cells/places";
import { addressParts, areaOf } from "../../cells/sheet-area";
import type { CellChange } from "../desk-file/book";
import { typedFormula } from "../desk-file/formula";
import type { FileCell, SheetContent } from "../parts/file-cell";

/** A change with what follows for a cell that shared its formula with one that changes. */
export interface PlannedChange extends CellChange {
  own?: true;
  /** The value that a formula elsewhere puts into the cell. */
  spilled?: Cell;
}

type Changes = Map<string, PlannedChange>;
type FileCells = SheetContent["cells"];

const addressOf = ({ row, column }: CellChange): string => cellAt(row + 1, column + 1);

/** Whether a formula in a cell is the one that the file holds there, with a rectangle to fill. */
export function isFiled(input: unknown, cell: FileCell | undefined): cell is FileCell & { fills: string } {
  return cell?.fills !== undefined && typeof input === "string" && typedFormula(cell.formula ?? "") === input;
}

/**
 * A formula whose rectangle is fixed in the file keeps it until something else is put there: cells that it has no value
 * for show #N/A, and where only the desk has no room for it, it stays as it is.
 */
function inRectangle(change: CellChange, changes: Changes, cells: FileCells): CellChange {
  const { spill, input, value, ...rest } = change;
  const cell = cells.get(addressOf(change));
  if (!spill || !isFiled(input, cell) || cell.given.has("cm")) return change;
  const { top, left, bottom, right } = areaOf(cell.fills, "")!;
  const rows = Array.from({ length: bottom - top + 1 }, (_, i) => i);
  const columns = Array.from({ length: right - left + 1 }, (_, j) => j);
  const isTaken = (i: number, j: number) => i + j > 0 && Boolean(changes.get(cellAt(top + i, left + j))?.input);
  if (rows.some((i) => columns.some((j) => isTaken(i, j)))) return change;
  if (value !== null && typeof value === "object" && value.error === "#SPILL!") return rest;
  const held = (i: number, j: number) => (i < spill.length && j < spill[i]!.length ? spill[i]![j]! : { error: "#N/A" });
  return { ...change, spill: rows.map((i) => columns.map((j) => held(i, j))) };
}

/** The cells that an array formula filled are free again. */
function freeBody(change: CellChange, changes: Changes, cells: FileCells): void {
  const address = addressOf(change);
  const fills = cells.get(address)?.fills;
  const area = fills?.includes(":") ? areaOf(fills, "") : null;
  if (!area) return;
  for (const [inside] of cells) {
    const { row, column } = addressParts(inside);
    const within = row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
    const known = changes.get(inside);
    if (!within || inside === address || known?.input !== undefined) continue;
    changes.set(inside, { ...known, row: row - 1, column: column - 1, input: "" });
  }
}

/** The cells that a formula fills show its values. */
function fillBody({ row, column, spill }: CellChange, changes: Changes): void {
  spill?.forEach((line, i) => {
    line.forEach((value, j) => {
      if (i + j === 0) return;
      const filled: PlannedChange = { row: row + i, column: column + j, input: "", spilled: value };
      const known = changes.get(addressOf(filled));
      changes.set(addressOf(filled), { ...filled, ...(known?.look && { look: known.look, was: known.was ?? {} }) });
    });
  });
}

/** All changes by their cells, with what they mean for the cells that array formulas fill. */
export function withArrays(all: readonly CellChange[], cells: FileCells): Changes {
  const given: Changes = new Map(all.map((change) => [addressOf(change), change]));
  const changes: Changes = new Map([...given].map(([address, one]) => [address, inRectangle(one, given, cells)]));
  for (const change of [...changes.values()]) {
    if (change.input === undefined) continue;
    freeBody(change, changes, cells);
    fillBody(change, changes);
  }
  return changes;
}
