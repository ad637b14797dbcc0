import { expect, test } from "vitest";
import type { Cell, Input } from "../../src/cells/cell";
import { bookChange } from "../../src/desk/files/book-change";
import type { BookState, CellState } from "../../src/desk/files/book-state";

const cell = (row: number, input: Input, value: Cell): CellState => ({ row, column: 0, input, value, look: {} });

const book = (...cells: CellState[]): BookState => ({
  names: [],
  sheets: [
    {
      key: "k",
      name: "Bed",
      widths: {},
      heights: {},
      hiddenRows: [],
      hiddenColumns: [],
      frozen: { rows: 0, columns: 0 },
      merges: [],
      drawings: [],
      cells: new Map(cells.map((one) => [`${one.row} ${one.column}`, one])),
    },
  ],
});

const changed = (before: BookState, after: BookState, shifts = new Map()) => {
  const { sheets, stale } = bookChange(before, after, shifts);
  return { cells: sheets[0]!.cells, stale };
};

test("a value that the desk can't calculate stays as the file has it, and the next program is asked to calculate", () => {
  const sum = "=SUBTOTAL(109,[Flow])";
  const before = book(cell(0, 1, 1), cell(1, sum, 5));
  const wrong = cell(1, sum, { error: "#VALUE!" });
  expect(changed(before, book(cell(0, 1, 1), wrong))).toEqual({ cells: [], stale: false });
  const { cells, stale } = changed(before, book(cell(0, 2, 2), wrong));
  expect([cells.map(({ row }) => row), stale]).toEqual([[0], true]);
});

test("a formula that the grid can't read follows inserted rows as the file does", () => {
  const shifts = new Map([["k", [{ axis: "rows", at: 0, count: 2 } as const]]]);
  const before = book(cell(0, 1, 1), cell(1, "=Heads[Flow]*A1", 5));
  const unmoved = cell(3, "=Heads[Flow]*A1", { error: "#NAME?" });
  expect(changed(before, book(cell(2, 1, 1), unmoved), shifts).cells).toEqual([]);
  // one that the grid reads was typed so
  const typed = changed(book(cell(0, 1, 1), cell(1, "=A1", 1)), book(cell(2, 1, 1), cell(3, "=A1", 0)), shifts);
  expect(typed.cells).toEqual([{ row: 3, column: 0, input: "=A1", value: 0 }]);
});
