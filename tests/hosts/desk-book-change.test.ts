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

test("days of a workbook that counts from 1904 are saved as it counts them, and the next program calculates", () => {
  const dated = (row: number, input: Input, value: Cell): CellState => ({
    ...cell(row, input, value),
    look: { format: "yyyy-mm-dd" },
  });
  const before = book(dated(0, 46024, 46024), dated(1, "=A1+1", 46025), cell(2, "=A1", 44562), cell(3, 7, 7));
  const after = book(dated(0, 46025, 46025), dated(1, "=A1+1", 46026), cell(2, "=A1", 46025), cell(3, 8, 8));
  const { sheets, stale } = bookChange(before, after, new Map(), { from1904: true });
  // 1462 days from 1900 to 1904, the 29th of February that 1900 has not counted
  expect(sheets[0]!.cells.map(({ row, input, value }) => [row, input, value])).toEqual([
    [0, 44563, 44563],
    [1, undefined, 44564],
    [2, undefined, 46025],
    [3, 8, 8],
  ]);
  expect(stale).toBe(true);
  const same = book(dated(0, 46024, 46024), dated(1, "=A1+1", 46025), cell(2, "=A1", 46024), cell(3, 7, 7));
  expect(bookChange(before, same, new Map(), { from1904: true }).sheets[0]!.cells).toEqual([]);
});

test("a figure that a file from 1904 lacks is given with the wish that the next program calculates it", () => {
  const before = book({ ...cell(0, 46024, 46024), look: { format: "yyyy-mm-dd" } }, cell(1, "=A1+1", null));
  const after = book({ ...cell(0, 46024, 46024), look: { format: "yyyy-mm-dd" } }, cell(1, "=A1+1", 46025));
  // shown as a number the day after is 46,025 from 1900, 44,563 from 1904: the desk can't tell it from any number
  expect(bookChange(before, after, new Map(), { from1904: true }).stale).toBe(true);
  expect(bookChange(before, after).stale).toBe(false);
});

test("an inserted row has no height of its own where the grid gave it that of a row beside it", () => {
  const sized = (heights: Record<number, number>): BookState => {
    const [sheet] = book().sheets;
    return { names: [], sheets: [{ ...sheet!, heights }] };
  };
  const shifts = new Map([["k", [{ axis: "rows", at: 1, count: 3 } as const]]]);
  const { sheets } = bookChange(sized({ 0: 40, 1: 25 }), sized({ 0: 40, 1: 40, 2: 40, 3: 33, 4: 25 }), shifts);
  expect(sheets[0]).toMatchObject({ heights: { 1: 40, 2: 40, 3: 33 }, fitted: [1, 2] });
});

test("a format that the grid took over from the cells of a formula is saved only with a formula typed at the desk", () => {
  const shown = (row: number, input: Input, derived = true): CellState => ({
    ...cell(row, input, 1),
    look: { format: "0.0" },
    ...(derived && { derived: true as const }),
  });
  const before = book(cell(0, "=B1", 1), cell(1, "=B2", 1));
  const after = book(shown(0, "=B1"), shown(1, "=B2", false), shown(2, "=B3"));
  expect(changed(before, after).cells.map(({ row, look }) => [row, look])).toEqual([
    [1, { format: "0.0" }], // which a person gave
    [2, { format: "0.0" }],
  ]);
});
