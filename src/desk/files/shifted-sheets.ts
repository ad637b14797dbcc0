import { ICommandService, type IRange, IUndoRedoService } from "@univerjs/core";
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

/** Rows or columns that were moved: behind that nothing of the sheet can follow, which is named before saving. */
const MOVED = "moved";
type Entry = Shift | typeof MOVED;

function undoes(one: Entry | undefined, other: Entry): boolean {
  if (one === undefined || one === MOVED || other === MOVED) return one === other;
  return one.axis === other.axis && one.at === other.at && one.count === -other.count;
}

/** Shifts in as few as do the same: rows that came or went one by one beside one another. */
function merged(all: readonly Shift[]): Shift[] {
  const found: Shift[] = [];
  for (const one of all) {
    const last = found.at(-1);
    const { axis, at, count } = one;
    const comes = count > 0 && last !== undefined && last.at <= at && at <= last.at + last.count;
    const goes = count < 0 && last !== undefined && at <= last.at && last.at <= at - count;
    const joins = last?.axis === axis && Math.sign(last.count) === Math.sign(count) && (comes || goes);
    if (last && joins) found[found.length - 1] = { axis, at: Math.min(at, last.at), count: last.count + count };
    else found.push(one);
  }
  return found;
}

/** Remembers in which sheets rows or columns were inserted, deleted or moved; what was undone has never been. */
export class ShiftedSheets {
  private readonly found = new Map<string, Entry[]>();
  /** Whether there was any, undone or not. */
  any = false;

  constructor(grid: Grid) {
    const undo = grid.injector.get(IUndoRedoService);
    grid.injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
      const given = (params ?? {}) as ShiftParams;
      if (given.subUnitId === undefined) return;
      const entry = MOVES.includes(id) ? MOVED : shiftOf(id, given);
      if (!entry) return;
      // an undo is on top of what can be undone until all of it is done
      const isUndo = undo.pitchTopUndoElement()?.undoMutations.some((one) => one.params === params);
      this.note(given.subUnitId, entry, isUndo === true);
    });
  }

  private note(key: string, entry: Entry, isUndo: boolean): void {
    const all = this.found.get(key) ?? [];
    if (isUndo && undoes(all.at(-1), entry)) all.pop();
    else all.push(entry);
    this.found.set(key, all);
    this.any = true;
  }

  shifts(): ShiftsBySheet {
    const followed = [...this.found].map(([key, all]): [string, Shift[]] => {
      const moved = all.indexOf(MOVED);
      return [key, merged((moved < 0 ? all : all.slice(0, moved)).filter((one) => one !== MOVED))];
    });
    return new Map(followed.filter(([, all]) => all.length > 0));
  }

  moved(): string[] {
    return [...this.found].flatMap(([key, all]) => (all.includes(MOVED) ? [key] : []));
  }

  /** Another file is open, or one that holds all of it. */
  forget(): void {
    this.found.clear();
    this.any = false;
  }
}
