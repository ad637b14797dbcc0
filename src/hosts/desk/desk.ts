import { IUniverInstanceService, UniverInstanceType, type Workbook } from "@univerjs/core";
import { ILayoutService } from "@univerjs/preset-sheets-core";
import type { Area } from "../../cells/area";
import { type Host, PLAIN_SEPARATORS } from "../host";
import { snapshotOf } from "../snapshot";
import { cells, entered, keepCells, typed } from "./cells";
import type { DeskFiles } from "./files";
import { bookOf, type Grid, selectCells, sheetOf } from "./grid";
import { namesNow } from "./names";
import { pictures, placePicture, removePicture } from "./pictures";
import { addSheet, insertSheets, removeSheet, sheetNames } from "./sheets";
import { usedPart, usedRange } from "./used";

const TOLD = new Set([
  "sheet.mutation.set-range-values",
  "sheet.operation.set-selections",
  "sheet.operation.set-worksheet-active",
  "formula.mutation.set-array-formula-data",
]);

function selection(grid: Grid): Area {
  const sheet = bookOf(grid).getActiveSheet();
  const range = bookOf(grid).getActiveRange() ?? sheet.getRange(0, 0);
  return { sheet: sheet.getSheetName(), address: usedPart(grid, sheet, range).getA1Notation() };
}

/** The grid of the desk as a host. */
export function deskHost(grid: Grid, files: DeskFiles): Host {
  const rangeOf = ({ sheet, address }: Area) => sheetOf(grid, sheet).getRange(address);
  return {
    label: "desk",
    platform: navigator.userAgent,
    opened: "is open as a workbook of its own.",
    saves: true,
    openPage: (address) => void window.open(address, "_blank", "noopener"),
    slow: () => () => {},
    separators: async () => PLAIN_SEPARATORS,
    snapshot: async (wanted) =>
      snapshotOf(
        wanted,
        {
          book: bookOf(grid).getId(),
          file: files.name,
          sheets: sheetNames(grid),
          calculating: grid.calculation.isRunning(),
        },
        selection(grid),
        {
          named: namesNow(grid),
          read: (area) => cells(grid, area),
          inputs: (area) => typed(grid, area),
        },
      ),
    selection: async () => selection(grid),
    select: async (area, toType = false) => {
      const sheet = sheetOf(grid, area.sheet);
      bookOf(grid).setActiveSheet(sheet);
      selectCells(sheet, sheet.getRange(area.address));
      if (toType) grid.injector.get(ILayoutService).focus();
    },
    watch: async (changed) => {
      const listener = grid.api.onCommandExecuted(({ id }) => {
        if (TOLD.has(id) && grid.api.getActiveWorkbook()) changed();
      });
      let shown = bookOf(grid).getId();
      const books = grid.injector
        .get(IUniverInstanceService)
        .getCurrentTypeOfUnit$<Workbook>(UniverInstanceType.UNIVER_SHEET);
      const opened = books.subscribe((book) => {
        if (!book || book.getUnitId() === shown) return;
        shown = book.getUnitId();
        changed();
      });
      return async () => {
        listener.dispose();
        opened.unsubscribe();
      };
    },
    read: async (area) => cells(grid, area),
    inputs: async (area) => typed(grid, area),
    write: async (area, inputs) => {
      rangeOf(area).setValues(inputs.map((line) => line.map(entered)));
    },
    writeTogether: async (writes) => {
      for (const { area, inputs } of writes) rangeOf(area).setValues(inputs.map((line) => line.map(entered)));
    },
    writeKept: async (writes) => {
      for (const { area, inputs } of writes) keepCells(grid, area, inputs);
    },
    named: async (name) => namesNow(grid)(name),
    sheets: async () => sheetNames(grid),
    used: async (sheet) => {
      const range = usedRange(grid, sheetOf(grid, sheet));
      return range && { sheet, address: range.getA1Notation() };
    },
    addSheet: async (name) => {
      files.refuseSheets();
      addSheet(grid, name);
    },
    removeSheet: async (name) => removeSheet(grid, name),
    settled: () => grid.calculation.settled(),
    bytes: () => files.bytes(),
    insertSheets: (file) => insertSheets(grid, files, file),
    openBook: (file, name) => files.open(file, name),
    deliver: async (file, name) => {
      files.deliver(file, name);
      return `${name} went to your downloads.`;
    },
    placePicture: (picture) => placePicture(grid, picture),
    removePicture: async (sheet, name) => removePicture(grid, sheet, name),
    pictures: async (sheet) => pictures(grid, sheet),
  };
}
