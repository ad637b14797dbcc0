import { type ICellData, ICommandService, type Nullable } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/preset-sheets-core";
import { SheetDataValidationModel } from "@univerjs/preset-sheets-data-validation";
import { cellAt } from "../cells/places";
import { bookOf, type Grid } from "../hosts/desk/grid";
import type { Host } from "../hosts/host";

/** What the selected cell asks for, by its check. */
function prompt(grid: Grid): string {
  const sheet = bookOf(grid).getActiveSheet();
  const cell = sheet.getSelection()?.getCurrentCell();
  if (!cell) return "";
  const rules = grid.injector.get(SheetDataValidationModel);
  const unit = bookOf(grid).getId();
  const rule = rules.getRuleByLocation(unit, sheet.getSheetId(), cell.actualRow, cell.actualColumn);
  return rule?.showInputMessage ? [rule.promptTitle, rule.prompt].filter(Boolean).join(": ") : "";
}

/** What a function of ours says of the first error that a calculation put into these cells. */
function complaint(cells: Record<number, Record<number, Nullable<ICellData>> | undefined>): string {
  for (const [row, line] of Object.entries(cells)) {
    for (const [column, cell] of Object.entries(line ?? {})) {
      const message: unknown = cell?.custom?.message;
      if (message) return `${cellAt(Number(row) + 1, Number(column) + 1)} shows ${cell?.v}: ${message}`;
    }
  }
  return "";
}

/** How long a refusal stays although the grid goes on with the refused act, which moves its selection. */
const HELD_MS = 1000;

/** The line under the grid. */
export class Messages {
  private newest = 0;
  private heldUntil = 0;
  /** What the last entry made wrong elsewhere on its sheet. */
  private entryMade = "";

  constructor(private readonly line: HTMLElement) {}

  /** Says why something was not done, until the person goes on. */
  refuse(sentence: string): void {
    this.heldUntil = Date.now() + HELD_MS;
    this.line.textContent = sentence;
  }

  private async show(host: Host, grid: Grid): Promise<void> {
    const asked = ++this.newest;
    const { sheet, address } = await host.selection();
    const first = address.split(":")[0]!;
    const [[cell = null] = []] = await host.read({ sheet, address: first });
    if (asked !== this.newest || Date.now() < this.heldUntil) return;
    const wrong = cell !== null && typeof cell === "object" ? cell : null;
    this.line.textContent = wrong
      ? [`${first} shows ${wrong.error}`, wrong.message].filter(Boolean).join(": ")
      : prompt(grid) || this.entryMade;
  }

  /** From now on says what is wrong in the selected cell, else what it asks for, and what an entry made wrong. */
  async follow(host: Host, grid: Grid): Promise<void> {
    grid.injector.get(ICommandService).onCommandExecuted(({ id, params }, options) => {
      if (id !== SetRangeValuesMutation.id || options?.kept) return;
      const { subUnitId, cellValue = {} } = params as {
        subUnitId: string;
        cellValue?: Parameters<typeof complaint>[0];
      };
      if (!options?.applyFormulaCalculationResult) this.entryMade = "";
      else if (bookOf(grid).getActiveSheet().getSheetId() === subUnitId) {
        this.entryMade = complaint(cellValue) || this.entryMade;
      }
    });
    await host.watch(() => void this.show(host, grid));
    await this.show(host, grid);
  }
}
