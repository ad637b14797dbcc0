import {
  CellValueType,
  DataValidationErrorStyle,
  DataValidationStatus,
  DataValidationType,
  ICommandService,
} from "@univerjs/core";
import {
  AFTER_CELL_EDIT,
  BEFORE_CELL_EDIT,
  DeviceInputEventType,
  KeyCode,
  SetCellEditVisibleOperation,
  SheetInterceptorService,
  VALIDATE_CELL,
} from "@univerjs/preset-sheets-core";
import {
  DataValidatorRegistryService,
  SheetDataValidationModel,
  SheetsDataValidationValidatorService,
} from "@univerjs/preset-sheets-data-validation";
import { columnLetters } from "../cells/letters";
import { bookOf, type Grid, selectCells } from "../hosts/desk/grid";
import { typedText } from "./univer-fixes/typed-values";

interface Refused {
  unitId: string;
  subUnitId: string;
  row: number;
  col: number;
  text: string;
}

/** Opens the editor of the cell on the refused text. */
function reopen(grid: Grid, { unitId, subUnitId, row, col }: Refused): void {
  const book = bookOf(grid);
  const sheet = book.getSheetBySheetId(subUnitId);
  if (!sheet || book.getId() !== unitId) return;
  if (book.getActiveSheet().getSheetId() !== subUnitId) book.setActiveSheet(sheet);
  selectCells(sheet, sheet.getRange(row, col));
  grid.injector.get(ICommandService).syncExecuteCommand(SetCellEditVisibleOperation.id, {
    visible: true,
    unitId,
    eventType: DeviceInputEventType.Keyboard,
    keycode: KeyCode.F2,
  });
}

/**
 * Where a check said no, the grid threw away what was typed and left the keys nowhere. Here `box` names the cell, what
 * was typed and the rule; then the cell is open on that text, and Escape gives it up.
 */
export function mendRefusals(grid: Grid, box: HTMLDialogElement): void {
  const { injector } = grid;
  const rules = injector.get(SheetDataValidationModel);
  const { writeCellInterceptor } = injector.get(SheetInterceptorService);
  let typed = "";
  let refused: Refused | undefined;
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: 200,
    handler: (cell, _, next) => {
      typed = typedText(cell);
      return next(cell);
    },
  });
  writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: 200,
    handler: (cell, { subUnitId, row, col }, next) =>
      refused?.subUnitId === subUnitId && refused.row === row && refused.col === col
        ? { s: cell?.s, v: refused.text, t: CellValueType.STRING }
        : next(cell),
  });
  writeCellInterceptor.intercept(VALIDATE_CELL, {
    priority: 200,
    handler: async (_, { worksheet, unitId, subUnitId, row, col }) => {
      const text = typed;
      const rule = rules.getRuleByLocation(unitId, subUnitId, row, col);
      const validator = rule && injector.get(DataValidatorRegistryService).getValidatorItem(rule.type);
      if (!validator || rule.errorStyle !== DataValidationErrorStyle.STOP) return true;
      const cell = worksheet.getCellRaw(row, col);
      const dateText = rule.type === DataValidationType.DATE && typeof cell?.v === "string" && cell.v && !cell.f;
      const status = await injector
        .get(SheetsDataValidationValidatorService)
        .validatorCell(unitId, subUnitId, row, col);
      if (status === DataValidationStatus.VALID && !dateText) return true;
      refused = { unitId, subUnitId, row, col, text };
      const words = validator.getRuleFinalError(rule, { unitId, subUnitId, row, col });
      box.querySelector("p")!.textContent =
        `${columnLetters(col + 1)}${row + 1}: "${text}" is not allowed here. ${words}`;
      setTimeout(() => box.showModal()); // after the click or key that ended the entry, which would take its focus
      return false;
    },
  });
  box.querySelector("button")!.addEventListener("click", () => box.close());
  box.addEventListener("close", () => {
    if (refused) reopen(grid, refused);
    refused = undefined;
  });
}
