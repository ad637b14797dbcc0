import { FormulaCalculationSessionService } from "@univerjs/preset-sheets-core";
import { plainAddress } from "./address";
import { cells, entered, typed } from "./desk-cells";
import { bookOf, type Grid, sheetOf } from "./desk-grid";
import { usedPart, usedRange } from "./desk-used";

const notYet = async (): Promise<never> => {
  throw new Error("this spreadsheet cannot do that yet");
};

import type { Area, Host } from "./host";

const CALCULATION_LIMIT_MS = 60_000;
/** How long the grid may take to begin calculating after a change. */
const START_LIMIT_MS = 150;

const TOLD = new Set([
  "sheet.mutation.set-range-values",
  "sheet.operation.set-selections",
  "sheet.operation.set-worksheet-active",
  "formula.mutation.set-array-formula-data",
]);

const REFERENCE = /^=?(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/i;

function named(grid: Grid, name: string): Area | null {
  const found = bookOf(grid)
    .getDefinedNames()
    .find((one) => one.getName().toLowerCase() === name.toLowerCase());
  const parts = found && REFERENCE.exec(found.getFormulaOrRefString());
  if (!parts) return null;
  return { sheet: parts[1]?.replaceAll("''", "'") ?? parts[2]!, address: plainAddress(parts[3]!) };
}

function selection(grid: Grid): Area {
  const sheet = bookOf(grid).getActiveSheet();
  const range = bookOf(grid).getActiveRange() ?? sheet.getRange(0, 0);
  return { sheet: sheet.getSheetName(), address: usedPart(grid, sheet, range).getA1Notation() };
}

/** The grid of the desk as a host. */
export function deskHost(grid: Grid): Host {
  const rangeOf = ({ sheet, address }: Area) => sheetOf(grid, sheet).getRange(address);
  return {
    label: "desk",
    selection: async () => selection(grid),
    select: async (area) => {
      bookOf(grid).setActiveSheet(sheetOf(grid, area.sheet));
      rangeOf(area).activate();
    },
    watch: async (changed) => {
      const listener = grid.api.onCommandExecuted(({ id }) => {
        if (TOLD.has(id) && grid.api.getActiveWorkbook()) changed();
      });
      return async () => listener.dispose();
    },
    read: async (area) => cells(grid, sheetOf(grid, area.sheet), rangeOf(area)),
    inputs: async (area) => typed(sheetOf(grid, area.sheet), rangeOf(area)),
    write: async (area, inputs) => {
      rangeOf(area).setValues(inputs.map((line) => line.map(entered)));
    },
    named: async (name) => named(grid, name),
    sheets: async () =>
      bookOf(grid)
        .getSheets()
        .map((sheet) => sheet.getSheetName()),
    used: async (name) => {
      const range = usedRange(grid, sheetOf(grid, name));
      return range && { sheet: name, address: range.getA1Notation() };
    },
    addSheet: async (name) => {
      const active = bookOf(grid).getActiveSheet();
      bookOf(grid).insertSheet(name);
      bookOf(grid).setActiveSheet(active);
    },
    removeSheet: async (name) => {
      bookOf(grid).deleteSheet(sheetOf(grid, name));
    },
    settled: () =>
      grid.injector.get(FormulaCalculationSessionService).waitForLatestApplied(CALCULATION_LIMIT_MS, START_LIMIT_MS),
    bytes: notYet,
    insertSheets: notYet,
    openBook: notYet,
    deliver: notYet,
    placePicture: notYet,
    removePicture: notYet,
    pictures: notYet,
  };
}
