import { ICommandService } from "@univerjs/core";
import { expect, test } from "vitest";
import { ShiftedSheets } from "../../src/desk/files/shifted-sheets";
import type { Grid } from "../../src/hosts/desk/grid";

type Change = [name: string, first: number, last: number];

/** What is remembered of changes of rows of the sheet `bed`; an undo is told by the grid's own record of it. */
function remembered() {
  let tell = (_: { id: string; params: unknown }): void => {};
  let undone: unknown;
  const commands = { onCommandExecuted: (listener: typeof tell) => (tell = listener) };
  const undo = { pitchTopUndoElement: () => ({ undoMutations: [{ params: undone }] }) };
  const grid = { injector: { get: (asked: unknown) => (asked === ICommandService ? commands : undo) } };
  const shifted = new ShiftedSheets(grid as unknown as Grid);
  const change = (isUndo: boolean, [name, startRow, endRow]: Change) => {
    const params = { subUnitId: "bed", range: { startRow, endRow } };
    undone = isUndo ? params : {};
    tell({ id: `sheet.mutation.${name}`, params });
  };
  return {
    make: (...one: Change) => change(false, one),
    undo: (...one: Change) => change(true, one),
    shifts: () => shifted.shifts().get("bed") ?? [],
    moved: () => shifted.moved(),
  };
}

test("what was undone is forgotten, rows that come by hand are new ones", () => {
  const { make, undo, shifts } = remembered();
  make("remove-rows", 2, 3);
  make("insert-row", 7, 7);
  undo("remove-rows", 7, 7);
  undo("insert-row", 2, 3);
  expect(shifts()).toEqual([]);
  make("remove-rows", 2, 3);
  make("insert-row", 2, 3);
  expect(shifts().map(({ count }) => count)).toEqual([-2, 2]);
});

test("rows that come or go beside one another are one shift, and are undone one by one", () => {
  const { make, undo, shifts } = remembered();
  make("insert-row", 4, 4);
  make("insert-row", 5, 5); // behind it
  make("insert-row", 4, 5); // before both
  expect(shifts()).toEqual([{ axis: "rows", at: 4, count: 4 }]);
  undo("remove-rows", 4, 5);
  expect(shifts()).toEqual([{ axis: "rows", at: 4, count: 2 }]);
  make("remove-rows", 9, 9);
  make("remove-rows", 8, 9); // those around the place where it was
  make("remove-rows", 3, 4); // elsewhere
  expect(shifts().map(({ at, count }) => [at, count])).toEqual([
    [4, 2],
    [8, -3],
    [3, -2],
  ]);
});

test("behind a move nothing follows, until that is undone", () => {
  const { make, undo, shifts, moved } = remembered();
  make("insert-row", 4, 4);
  make("move-rows", 1, 2);
  make("insert-row", 9, 9);
  expect([shifts().length, moved()]).toEqual([1, ["bed"]]);
  undo("remove-rows", 9, 9);
  undo("move-rows", 5, 6);
  expect([shifts().length, moved()]).toEqual([1, []]);
});
