import { CommandType, DOCS_NORMAL_EDITOR_UNIT_ID_KEY, ICommandService } from "@univerjs/core";
import { IEditorBridgeService, IEditorService, SetRangeValuesMutation } from "@univerjs/preset-sheets-core";
import { sheetCells } from "../../hosts/desk/cells";
import { bookOf, type Grid } from "../../hosts/desk/grid";
import type { Files } from "../files/files";
import { type ShiftParams, shiftOf } from "../files/shifted-sheets";
import type { Draft, Store } from "./store";

type Cells = Record<number, Record<number, unknown> | undefined>;

/** How long after a change of shape or looks the whole file is noted [ms]. */
const WHOLE_MS = 1500;

/** Changes that no list of cells can tell: the whole file is noted anew. */
const WHOLE =
  /^sheet\.mutation\.(insert|remove|move|reorder|add|copy|set-(?!range-values|worksheet-row-(auto|is-auto)|worksheet-active|selection|scroll|zoom))/;

const hasContent = (cell: unknown): boolean =>
  cell === null || (typeof cell === "object" && ["v", "f", "si", "p"].some((part) => part in cell));
const hasLook = (cell: unknown): boolean => cell !== null && typeof cell === "object" && "s" in cell;

/** Notes every committed edit, and the text that is being typed, so that they come back after the page has ended. */
export class Journal {
  private queue: Promise<unknown> = Promise.resolve();
  private begun = false;
  private draft: Draft | null = null;
  private whole: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly grid: Grid,
    private readonly files: Files,
    private readonly store: Store,
  ) {
    grid.injector.get(ICommandService).onCommandExecuted(({ id, params, type }, options) => {
      if (
        type !== CommandType.MUTATION ||
        options?.onlyLocal ||
        options?.applyFormulaCalculationResult ||
        options?.kept
      )
        return;
      if (id === SetRangeValuesMutation.id) {
        const { unitId, subUnitId, cellValue } = params as { unitId: string; subUnitId: string; cellValue?: Cells };
        if (bookOf(grid).getId() === unitId) this.changed(subUnitId, cellValue ?? {});
      } else if (WHOLE.test(id)) {
        this.shifted(id, (params ?? {}) as ShiftParams);
        this.noteWhole();
      }
    });
    document.addEventListener("input", () => setTimeout(() => this.noteDraft()), { capture: true });
    grid.injector.get(IEditorBridgeService).visible$.subscribe(({ visible }) => {
      if (!visible && this.draft) this.keepDraft(null);
    });
  }

  /** Forgets this page's work, which was saved or let go. */
  clear(): void {
    clearTimeout(this.whole);
    this.whole = undefined;
    this.begun = false;
    this.next(() => this.store.drop());
  }

  private next(work: () => Promise<unknown>): void {
    this.queue = this.queue.then(work).catch((problem) => console.warn("unsaved work could not be noted", problem));
  }

  private begin(): void {
    if (this.begun) return;
    this.begun = true;
    const { name, base } = this.files;
    this.next(async () => this.store.rebase(name, base ?? (await this.files.bytes())));
  }

  private changed(key: string, cellValue: Cells): void {
    const sheet = bookOf(this.grid).getSheetBySheetId(key);
    if (!sheet) return;
    const all = Object.entries(cellValue).flatMap(([row, line]) =>
      Object.entries(line ?? {}).map(([column, cell]) => ({ row: Number(row), column: Number(column), cell })),
    );
    const typed = all.filter(({ cell }) => hasContent(cell));
    if (all.some(({ cell }) => hasLook(cell) && !hasContent(cell))) this.noteWhole();
    if (typed.length === 0) return;
    this.begin();
    const { input } = sheetCells(this.grid, sheet);
    const cells = typed.map(({ row, column }): [number, number, ReturnType<typeof input>] => [
      row,
      column,
      input(row, column),
    ]);
    const edit = { sheet: sheet.getSheetName(), cells };
    this.next(() => this.store.add(edit));
  }

  /** Rows and columns that come or go are noted at once, as the whole file is noted only later. */
  private shifted(id: string, params: ShiftParams): void {
    const shift = shiftOf(id, params);
    const sheet = bookOf(this.grid).getSheetBySheetId(params.subUnitId ?? "");
    if (!shift || !sheet) return;
    this.begin();
    const edit = { sheet: sheet.getSheetName(), shift, cells: [] };
    this.next(() => this.store.add(edit));
  }

  /** Notes the whole workbook, once it rests. */
  noteWhole(): void {
    this.begin();
    clearTimeout(this.whole);
    const asked = setTimeout(() => {
      this.next(async () => {
        const bytes = await this.files.bytes().catch(() => null);
        if (this.whole !== asked) return;
        if (!bytes) return this.noteWhole();
        await this.store.rebase(this.files.name, bytes);
        if (this.whole === asked) this.whole = undefined;
      });
    }, WHOLE_MS);
    this.whole = asked;
  }

  private noteDraft(): void {
    const editor = this.grid.injector.get(IEditorBridgeService);
    const location = editor.isVisible().visible ? editor.getEditLocation() : null;
    const body = this.grid.injector
      .get(IEditorService)
      .getEditor(DOCS_NORMAL_EDITOR_UNIT_ID_KEY)
      ?.getDocumentData().body;
    const sheet = location && bookOf(this.grid).getSheetBySheetId(location.sheetId);
    if (!location || !sheet || !body) return;
    this.begin();
    const { row, column } = location;
    const draft: Draft = { sheet: sheet.getSheetName(), row, column, text: body.dataStream.replace(/\r\n$/, "") };
    this.keepDraft(draft);
  }

  /** Only the newest text is written, however many keys came meanwhile. */
  private keepDraft(draft: Draft | null): void {
    this.draft = draft;
    this.next(async () => {
      if (this.draft === draft) await this.store.draft(draft);
    });
  }
}
