import {
  CellValueType,
  DataValidationErrorStyle,
  DataValidationStatus,
  DataValidationType,
  DOCS_NORMAL_EDITOR_UNIT_ID_KEY,
  ICommandService,
} from "@univerjs/core";
import {
  AFTER_CELL_EDIT,
  BEFORE_CELL_EDIT,
  DeviceInputEventType,
  IEditorService,
  ILayoutService,
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
import { columnLetters } from "../../../cells/letters";
import { bookOf, type Grid, selectCells } from "../../../hosts/desk/grid";
import type { Fix } from "../fix";
import { typedText } from "./typed-values";

interface Refused {
  unitId: string;
  subUnitId: string;
  row: number;
  col: number;
  text: string;
}

/** The page's own caret stays in what was clicked although the focus moves on, and the browser then inserts nothing. */
function takeCaret(): void {
  if (document.activeElement) getSelection()?.collapse(document.activeElement, 0);
}

/** Gives the keys to the open editor of a cell, with all its text selected, so that typing puts another in its place. */
function selectText({ injector }: Grid, length: number): void {
  const editor = injector.get(IEditorService).getEditor(DOCS_NORMAL_EDITOR_UNIT_ID_KEY);
  editor?.focus();
  takeCaret();
  editor?.setSelectionRanges([{ startOffset: 0, endOffset: length }]);
}

/** Opens the editor of the cell on the refused text. */
function reopen(grid: Grid, { unitId, subUnitId, row, col, text }: Refused): void {
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
  selectText(grid, text.length);
}

/**
 * From a refusal on no key reaches the grid. A hand that types on does not see the box: the Enter or Tab that ends such an
 * entry answers nothing.
 */
class TypedOn {
  private typing = false;

  constructor(private readonly box: HTMLDialogElement) {}

  begin(): void {
    this.typing = false;
    addEventListener("keydown", this.take, { capture: true });
  }

  end(): void {
    removeEventListener("keydown", this.take, { capture: true });
  }

  private take = (event: KeyboardEvent): void => {
    const ends = event.key === "Enter" || event.key === "Tab";
    const held = !this.box.open || (this.typing && ends);
    if (held) event.preventDefault();
    if (held) event.stopImmediatePropagation();
    this.typing = ends ? false : this.typing || (event.key.length === 1 && event.key !== " ");
  };
}

/** How a number with a decimal comma is written here. */
const pointWords = (text: string) =>
  /^[+-]?\d+,\d+$/.test(text.trim())
    ? ` Write it with a point, ${text.trim().replace(",", ".")}, or tick Decimal comma above the grid.`
    : "";

/**
 * A box names the cell, what was typed and the rule. OK opens the cell on that text, all of it selected; Cancel and Escape
 * leave the cell as it was.
 */
export const refusals: Fix = {
  name: "refusals",
  wrong: "Where a check says no, the grid throws away what was typed and leaves the keys nowhere.",
  seen: "0.25.1",
  members: ({ injector }) => [
    ["SheetInterceptorService", injector.get(SheetInterceptorService), "writeCellInterceptor"],
    ["SheetDataValidationModel", injector.get(SheetDataValidationModel), "getRuleByLocation"],
    ["SheetsDataValidationValidatorService", injector.get(SheetsDataValidationValidatorService), "validatorCell"],
    ["DataValidatorRegistryService", injector.get(DataValidatorRegistryService), "getValidatorItem"],
  ],
  mend(grid) {
    const box = document.getElementById("refusal") as HTMLDialogElement;
    const { injector } = grid;
    const rules = injector.get(SheetDataValidationModel);
    const { writeCellInterceptor } = injector.get(SheetInterceptorService);
    const typedOn = new TypedOn(box);
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
          `${columnLetters(col + 1)}${row + 1}: "${text}" is not allowed here. ${words}${pointWords(text)}`;
        typedOn.begin();
        setTimeout(() => box.showModal()); // after the click or key that ended the entry, which would take its focus
        return false;
      },
    });
    /** At once, not on the box's own event of closing: the next key can come before that. */
    const answer = (again: boolean) => {
      typedOn.end();
      box.close();
      injector.get(ILayoutService).focus(); // a click on a button took the keys from the grid
      takeCaret();
      if (again && refused) reopen(grid, refused);
      refused = undefined;
    };
    for (const button of box.querySelectorAll("button")) {
      button.addEventListener("click", () => answer(button.value === "again"));
    }
    box.addEventListener("cancel", () => answer(false));
    box.addEventListener("keydown", ({ key, target }) => {
      if (key === "Enter" && target === box) answer(true); // a click on its words took the focus from OK
    });
  },
};
