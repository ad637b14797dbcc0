import { ICommandService, type IRange } from "@univerjs/core";
import type { Grid } from "../../hosts/desk/grid";
import type { Shift } from "../../xlsx/desk-file/book";
import type { ShiftsBySheet } from "./shifted-state";

const mutation = (name: string) => `sheet.mutation.${name}`;
const MOVES = ["move-rows", "move-columns"].map(mutation);
const SHIFTS: Record<string, [axis: Shift["axis"], sign: number]> = {
  [mutation("insert-row")]: ["rows", 1],
  [mutation("insert-col")]: ["columns", 1],
  [mutation("remove-rows")]: ["rows", -1],
  [mutation("remove-col")]: ["columns", -1],
};

export interface ShiftParams {
  subUnitId?: string;
  range?: IRange;
}

/** The rows or columns that a change of the grid inserts or deletes; null where it is another change. */
export function shiftOf(id: string, { range }: ShiftParams): Shift | null {
  const kind = SHIFTS[id];
  if (!kind || !range) return null;
  const [axis, sign] = kind;
  const [first, last] = axis === "rows" ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];
  return { axis, at: first, count: sign * (last - first + 1) };
}

const undone = (one: Shift | undefined, other: Shift): boolean =>
  one?.axis === other.axis && one.at === other.at && one.count === -other.count;

/** Remembers in which sheets rows or columns were inserted, deleted or moved. */
export class ShiftedSheets {
  private readonly found = new Map<string, Shift[]>();
  private readonly moves = new Set<string>();

  constructor(grid: Grid) {
    grid.injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
      const given = (params ?? {}) as ShiftParams;
      if (given.subUnitId === undefined) return;
      if (MOVES.includes(id)) this.moves.add(given.subUnitId);
      const shift = shiftOf(id, given);
      if (shift) this.note(given.subUnitId, shift);
    });
  }

  /** Behind a move nothing of the sheet can follow: it is named before saving. */
  private note(key: string, shift: Shift): void {
    if (this.moves.has(key)) return;
    const all = this.found.get(key) ?? [];
    if (undone(all.at(-1), shift)) all.pop();
    else all.push(shift);
    this.found.set(key, all);
  }

  shifts(): ShiftsBySheet {
    return this.found;
  }

  moved(): string[] {
    return [...this.moves];
  }

  /** A file that holds the shifts was made. */
  written(): void {
    this.found.clear();
  }

  forget(): void {
    this.found.clear();
    this.moves.clear();
  }
}
