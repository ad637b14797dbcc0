import { bookOf, type Grid } from "../hosts/desk-grid";
import type { Host } from "../hosts/host";
import type { XlsxFile } from "../hosts/xlsx";
import { bookChange } from "./book-change";
import { type BookState, bookState } from "./book-state";
import { leftOut } from "./left-out";
import { gridWorkbook } from "./open-book";

const EXCEL_FILE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** What a person typed, as one text to compare. */
function typedIn({ sheets, names }: BookState): string {
  const cells = sheets.map((sheet) => [...sheet.cells.values()].map(({ row, column, input }) => [row, column, input]));
  return JSON.stringify([sheets.map(({ name }) => name), cells, names]);
}

/** Opens files into the grid and saves them with all that they held. */
export class Files {
  private file: XlsxFile | null = null;
  private opened: BookState | null = null;
  private count = 0;
  private kept: string;
  name = "Canfall.xlsx";

  constructor(
    private readonly grid: Grid,
    private readonly host: Host,
  ) {
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

  async open(bytes: Uint8Array, name: string): Promise<void> {
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
    await this.host.settled();
  }

  /** What was made at the desk that a saved file does not hold. */
  leftOut(): string[] {
    return leftOut(this.grid);
  }

  async save(): Promise<Uint8Array> {
    await this.host.settled();
    const { XlsxFile } = await import("../hosts/xlsx");
    this.file ??= XlsxFile.blank();
    const state = bookState(this.grid);
    const bytes = await this.file.save(bookChange(this.opened, state));
    this.keep(state);
    return bytes;
  }
}

/** Hands a file to the browser's download. */
export function download(bytes: Uint8Array, name: string): void {
  const address = URL.createObjectURL(new Blob([bytes as BlobPart], { type: EXCEL_FILE }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
