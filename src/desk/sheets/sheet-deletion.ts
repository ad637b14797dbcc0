import { CanceledError, ICommandService } from "@univerjs/core";
import {
  FormulaDataModel,
  IDefinedNamesService,
  RemoveSheetCommand,
  RemoveSheetConfirmCommand,
} from "@univerjs/preset-sheets-core";
import { cellAt } from "../../cells/places";
import { placeName } from "../../cells/sheet-area";
import { bookOf, type Grid, type Sheet } from "../../hosts/desk/grid";
import { WHOLE_BOOK } from "../../hosts/desk/names";
import { ask } from "../question";
import { readsSheet } from "./reads-sheet";

/** The formulas on the other sheets that read a sheet, as `Sheet!A1`. */
function readersOf(grid: Grid, sheet: Sheet, others: readonly Sheet[]): string[] {
  const unit = bookOf(grid).getId();
  const names = Object.values(grid.injector.get(IDefinedNamesService).getDefinedNameMap(unit) ?? {});
  const reads = readsSheet(
    sheet.getSheetName(),
    names.map(({ name, formulaOrRefString: reference, localSheetId: key = WHOLE_BOOK }) => ({
      name: key === WHOLE_BOOK ? name : name.slice(0, -key.length - 1),
      reference,
    })),
  );
  const formulas = grid.injector.get(FormulaDataModel).getFormulaData()[unit] ?? {};
  return others.flatMap((one) =>
    Object.entries(formulas[one.getSheetId()] ?? {}).flatMap(([row, line]) =>
      Object.entries((line ?? {}) as Record<string, { f?: string } | null>).flatMap(([column, held]) =>
        held?.f && reads(held.f) ? [placeName(one.getSheetName(), cellAt(Number(row) + 1, Number(column) + 1))] : [],
      ),
    ),
  );
}

function question(sheet: string, readers: string[]): string {
  const [first] = readers;
  const read =
    readers.length === 0
      ? "No formula on another sheet reads it."
      : readers.length === 1
        ? `1 formula on another sheet reads it, ${first}: it loses what it reads (#REF!).`
        : `${readers.length.toLocaleString("en")} formulas on other sheets read it, the first in ${first}: they lose what they read (#REF!).`;
  return `Delete the sheet ${sheet}? ${read} Undo brings the sheet back.`;
}

/** Says before a sheet is deleted by hand what reads it. */
export function askBeforeDeleting(grid: Grid, refuse: (sentence: string) => void): void {
  const commands = grid.injector.get(ICommandService);
  const asked = async (sheet: Sheet) => {
    const others = bookOf(grid)
      .getSheets()
      .filter((one) => one.getSheetId() !== sheet.getSheetId());
    if (others.every((one) => one.isSheetHidden())) {
      return refuse("A workbook needs a sheet that is not hidden: show another one first");
    }
    const answer = await ask(question(sheet.getSheetName(), readersOf(grid, sheet, others)), [
      ["delete", "Delete the sheet"],
      ["not", "Cancel"],
    ]);
    if (answer === "delete") commands.syncExecuteCommand(RemoveSheetCommand.id, { subUnitId: sheet.getSheetId() });
  };
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== RemoveSheetConfirmCommand.id) return;
    const key = (params as { subUnitId?: string } | undefined)?.subUnitId;
    const book = bookOf(grid);
    void asked((key !== undefined && book.getSheetBySheetId(key)) || book.getActiveSheet());
    throw new CanceledError();
  });
}
