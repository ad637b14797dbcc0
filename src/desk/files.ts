import type { DeskFiles } from "../hosts/desk-files";
import { bookOf, type Grid } from "../hosts/desk-grid";
import { settled } from "../hosts/desk-settled";
import { download } from "../hosts/download";
import type { XlsxFile } from "../hosts/xlsx";
import { bookChange } from "./book-change";
import { type BookState, bookState } from "./book-state";
import { leftOut } from "./left-out";
import { gridWorkbook } from "./open-book";

/** What a person typed, as one text to compare. */
function typedIn({ sheets, names }: BookState): string {
  const cells = sheets.map((sheet) => [...sheet.cells.values()].map(({ row, column, input }) => [row, column, input]));
  return JSON.stringify([sheets.map(({ name }) => name), cells, names]);
}

/** Opens files into the grid and saves them with all that they held. */
export class Files implements DeskFiles {
  private file: XlsxFile | null = null;
  private opened: BookState | null = null;
  private count = 0;
  private kept: string;
  name = "Canfall.xlsx";

  constructor(private readonly grid: Grid) {
    this.kept = typedIn(bookState(grid));
  }

  /** True when what is in the grid was neither saved nor opened as it stands. */
  changed(): boolean {
    return typedIn(bookState(this.grid)) !== this.kept;
  }

  private keep(state: BookState): void {
    this.opened = state;
    this.kept = typedIn(state);
  }

  async open(bytes: Uint8Array, name: string): Promise<boolean> {
    const { XlsxFile } = await import("../hosts/xlsx");
    const file = await XlsxFile.open(bytes);
    this.count += 1;
    const workbook = gridWorkbook(file.book(), `file-${this.count}`, name);
    const { api } = this.grid;
    api.disposeUnit(bookOf(this.grid).getId());
    api.createWorkbook(workbook);
    this.file = file;
    this.name = name;
    this.keep(bookState(this.grid));
    api.getFormula().executeCalculation();
    await settled(this.grid);
    return true;
  }

  /** What was made at the desk that a saved file does not hold. */
  leftOut(): string[] {
    return leftOut(this.grid);
  }

  async bytes(): Promise<Uint8Array> {
    await settled(this.grid);
    const { XlsxFile } = await import("../hosts/xlsx");
    this.file ??= XlsxFile.blank();
    const state = bookState(this.grid);
    const bytes = await this.file.save(bookChange(this.opened, state));
    this.opened = state;
    return bytes;
  }

  async save(): Promise<Uint8Array> {
    const bytes = await this.bytes();
    this.kept = typedIn(this.opened!);
    return bytes;
  }

  async insert(): Promise<void> {
    throw new Error("The desk cannot insert a file yet");
  }

  deliver(file: Uint8Array, name: string): void {
    download(file, name);
  }
}
