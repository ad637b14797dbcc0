import { CanceledError, Direction, ICommandService } from "@univerjs/core";
import { KeyCode } from "@univerjs/preset-sheets-core";
import { columnLetters } from "../cells/letters";
import { bookOf, type Grid, type Sheet, selectCells } from "../hosts/desk/grid";
import type { BookSheet } from "../xlsx/desk-file/book";

type Cells = Record<number, Record<number, unknown>>;

/** What changes of the grid say of themselves, as far as it matters here. */
interface Change {
  subUnitId?: string;
  visible?: boolean;
  trigger?: string;
  cellValue?: Cells;
  from?: { subUnitId: string; value: Cells };
  to?: { subUnitId: string; value: Cells };
}

/** A move of the selection by a key. */
interface Move {
  keycode?: KeyCode;
  direction?: Direction;
}

const EDIT = "sheet.operation.set-cell-edit-visible";
const NEXT = "sheet.command.move-selection-enter-tab";
const UNDOING = ["univer.command.undo", "univer.command.redo"];
/** Changes of a sheet's shape, which a protected sheet refuses as a whole. */
const SHAPES = new Set(
  [
    "insert-row",
    "insert-col",
    "remove-rows",
    "remove-col",
    "move-rows",
    "move-columns",
    "reorder-range",
    "add-worksheet-merge",
    "remove-worksheet-merge",
  ].map((name) => `sheet.mutation.${name}`),
);

/** Commands that formulas elsewhere follow, those on protected sheets too. */
const FOLLOWED = /^sheet\.command\.(insert-(row|col)|remove-(row|col|sheet)|move-(rows|cols)|set-worksheet-name)/;

const isFormulas = (cells: Cells): boolean =>
  Object.values(cells).every((line) =>
    Object.values(line ?? {}).every(
      (cell) => cell !== null && typeof cell === "object" && ("f" in cell || "si" in cell),
    ),
  );

const placesIn = (cells: Cells): [number, number][] =>
  Object.entries(cells).flatMap(([row, line]) =>
    Object.keys(line ?? {}).map((column): [number, number] => [Number(row), Number(column)]),
  );

/** Keeps people from changing locked cells of protected sheets; our own code works freely. */
export class ProtectedCells {
  /** The cells that may be changed, as `row column`, by the key of a protected sheet. */
  private unlocked = new Map<string, Set<string>>();
  private free = 0;
  /** Whether rows, columns or sheets come, go or get a name just now. */
  private reshaping = false;

  constructor(
    private readonly grid: Grid,
    private readonly say: (sentence: string) => void,
  ) {
    grid.injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
      if (FOLLOWED.test(id)) {
        this.reshaping = true;
        setTimeout(() => {
          this.reshaping = false;
        });
      }
      if (this.free > 0 || options?.applyFormulaCalculationResult || this.unlocked.size === 0) return;
      const change: Change = params ?? {};
      const refusal = this.refusal(id, change);
      if (!refusal) return;
      this.say(refusal);
      throw new CanceledError();
    });
    grid.injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
      const { keycode, direction }: Move = params ?? {};
      if (id === NEXT && keycode === KeyCode.TAB) this.tabbed(direction === Direction.LEFT);
    });
  }

  /** Takes what is protected from a file's sheets. */
  know(sheets: BookSheet[]): void {
    for (const { key, unlocked } of sheets) if (unlocked) this.unlocked.set(key, new Set(unlocked));
  }

  forget(): void {
    this.unlocked.clear();
  }

  /** Runs our own code, which may change any cell. */
  async freely<T>(work: () => Promise<T>): Promise<T> {
    this.free += 1;
    try {
      return await work();
    } finally {
      this.free -= 1;
    }
  }

  private refusal(id: string, { subUnitId, visible, trigger, cellValue, from, to }: Change): string | undefined {
    if (trigger && UNDOING.includes(trigger)) return undefined;
    if (id === EDIT && visible) {
      const cell = bookOf(this.grid).getActiveSheet().getSelection()?.getCurrentCell();
      const sheet = bookOf(this.grid).getActiveSheet();
      return cell ? this.locked(sheet.getSheetId(), [[cell.actualRow, cell.actualColumn]]) : undefined;
    }
    if (subUnitId && SHAPES.has(id) && this.unlocked.has(subUnitId)) {
      return `The sheet ${this.sheet(subUnitId)?.getSheetName() ?? ""} is protected: its rows and columns stay as they are`;
    }
    if (id === "sheet.mutation.set-range-values" && subUnitId && cellValue) {
      if (this.reshaping && isFormulas(cellValue)) return undefined;
      return this.locked(subUnitId, placesIn(cellValue));
    }
    if (id === "sheet.mutation.move-range" && from && to) {
      return this.locked(from.subUnitId, placesIn(from.value)) ?? this.locked(to.subUnitId, placesIn(to.value));
    }
    return undefined;
  }

  private sheet(key: string): Sheet | undefined {
    return bookOf(this.grid)
      .getSheets()
      .find((one) => one.getSheetId() === key);
  }

  /** What is wrong with changing these cells of a sheet. */
  private locked(key: string, places: [number, number][]): string | undefined {
    const open = this.unlocked.get(key);
    const first = open && places.find(([row, column]) => !open.has(`${row} ${column}`));
    if (!first) return undefined;
    const [row, column] = first;
    const formula = this.sheet(key)?.getRange(row, column).getFormula();
    return `${columnLetters(column + 1)}${row + 1} is a protected ${formula ? "formula " : ""}cell`;
  }

  /** On a protected sheet Tab goes to the next cell that may be changed. */
  private tabbed(backwards: boolean): void {
    const sheet = bookOf(this.grid).getActiveSheet();
    const open = this.unlocked.get(sheet.getSheetId());
    const cell = sheet.getSelection()?.getCurrentCell();
    if (!open || open.size === 0 || !cell || open.has(`${cell.actualRow} ${cell.actualColumn}`)) return;
    const places = [...open].map((place) => place.split(" ").map(Number) as [number, number]);
    places.sort(([row, column], [otherRow, otherColumn]) => row - otherRow || column - otherColumn);
    const behind = ([row, column]: [number, number]) => row - cell.actualRow || column - cell.actualColumn;
    const found = backwards
      ? (places.filter((place) => behind(place) < 0).at(-1) ?? places.at(-1)!)
      : (places.find((place) => behind(place) > 0) ?? places[0]!);
    selectCells(sheet, sheet.getRange(found[0], found[1]));
  }
}
