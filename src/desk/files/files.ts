import type { DeskFiles } from "../../hosts/desk/files";
import { bookOf, type Grid } from "../../hosts/desk/grid";
import { download } from "../../hosts/download";
import type { Book, BookChange } from "../../xlsx/desk-file/book";
import type { XlsxFile } from "../../xlsx/desk-file/desk-file";
import type { ProtectedCells } from "../protected-cells";
import { LOCKED } from "../sheets/locked-structure";
import { keepFileValues, keepPlaces, keptPlaces } from "../univer-fixes/formulas/kept-values";
import { bookChange } from "./book-change";
import { type BookState, bookState, withAdded } from "./book-state";
import { DerivedFormats } from "./derived-formats";
import { joinedBooks } from "./joined-books";
import { madeIn } from "./made-in";
import { gridWorkbook, showBook } from "./open-book";
import { readXlsx } from "./read-xlsx";
import { LeftBehind } from "./saving/left-behind";
import { leftOut, type UnsavedParts, unsavedParts } from "./saving/left-out";
import { FILE_MS, isCurrent, ready } from "./settled";
import { ASKED, isShareCopy, UNCHECKED } from "./share-copy";
import { ShiftedSheets } from "./shifted-sheets";
import { focusGrid, halfTyped } from "./typing";

const QUESTION = "What you changed here is not saved. Open another file all the same?";

/** How long a file that is handed on waits for its figures [ms]. */
const WHOLE_MS = 60_000;

/** Opens files into the grid and saves them with all that they held. */
export class Files implements DeskFiles {
  private file: XlsxFile | null = null;
  /** Reads the file of the open book, which was not needed yet. */
  private unread: (() => Promise<XlsxFile>) | null = null;
  private written: BookState | null = null;
  private parts: UnsavedParts = {};
  private readonly shifted: ShiftedSheets;
  private readonly formats: DerivedFormats;
  private readonly behind: LeftBehind;
  private count = 0;
  /** Whether the last file was made while figures were out of date. */
  stale = false;
  /** Whether it asks for figures that may follow from what changed, and that the desk can't calculate. */
  unsure = false;
  /** What was opened or saved last. */
  private kept: BookState;
  name = "Canfall.xlsx";
  /** Whether the open file says that its sheets stay as they are. */
  locked = false;
  /** The file as it was opened or saved last; null where there is none that holds what is open. */
  base: Uint8Array | null = null;
  /** Told when another workbook is open, and when sheets came to the open one. */
  replaced: (by: "another" | "more sheets") => void = () => {};

  constructor(
    private readonly grid: Grid,
    private readonly cells: ProtectedCells,
    private readonly opened: (name: string) => void,
  ) {
    this.formats = new DerivedFormats(grid);
    this.kept = this.state();
    this.shifted = new ShiftedSheets(grid);
    this.behind = new LeftBehind(grid);
  }

  private state(): BookState {
    return bookState(this.grid, this.formats);
  }

  /** What is said of an open share copy; "" where what is open is none. */
  private copy: "" | typeof UNCHECKED | typeof ASKED = "";
  /** Its name, and that a share copy is not checked by being opened. */
  get said(): string {
    return this.copy ? `${this.name}: ${this.copy}` : this.name;
  }

  /** The file as it was opened or saved last, to be checked; none where there is none. */
  toCheck(): File[] {
    if (this.copy) this.copy = ASKED;
    return this.base ? [new File([this.base.slice()], this.name)] : [];
  }

  /** True when what is in the grid was neither saved nor opened as it is. */
  changed(): boolean {
    return halfTyped(this.grid) || madeIn(this.state()) !== madeIn(this.kept);
  }

  /** True when nothing would be lost, or the person lets it go. */
  mayGo(): boolean {
    return !this.changed() || confirm(QUESTION);
  }

  private async calculated(): Promise<void> {
    this.parts = unsavedParts(this.grid);
    this.grid.api.getFormula().executeCalculation();
    await this.grid.calculation.settledWithin(FILE_MS);
    this.parts = unsavedParts(this.grid);
  }

  /** Calculates a file that was taken with the figures that it brings along. */
  calculate = (): void => void this.calculated();

  /** Opens a file in place of the open workbook, whatever is in that. */
  async load(bytes: Uint8Array, name: string): Promise<void> {
    const file = await readXlsx(bytes);
    await this.take(file.book(), name, bytes, async () => file);
    await this.calculated();
  }

  /** Shows a book with the figures that it brings along, which can be calculated later as its file can be read. */
  async take(book: Book, name: string, base: Uint8Array, read: () => Promise<XlsxFile>): Promise<void> {
    this.count += 1;
    this.cells.forget();
    const workbook = gridWorkbook(book, `file-${this.count}`, name);
    this.name = name; // before the pane hears of another workbook and asks for it
    showBook(this.grid, workbook);
    keepFileValues(this.grid, book);
    this.cells.know(book.sheets);
    this.file = null;
    this.unread = read;
    this.locked = book.locked;
    this.copy = isShareCopy(book) ? UNCHECKED : "";
    this.shifted.forget();
    this.behind.clear();
    this.base = base;
    this.opened(this.said);
    this.replaced("another");
    this.written = this.state();
    this.kept = this.written;
  }

  /** Reads the open file where it was not needed before. */
  private async readNow(): Promise<void> {
    const { unread } = this;
    const file = await unread?.();
    if (!file || this.unread !== unread) return;
    this.file = file;
    this.unread = null;
  }

  async open(bytes: Uint8Array, name: string): Promise<boolean> {
    if (!this.mayGo()) return false;
    await this.load(bytes, name);
    return true;
  }

  refuseSheets(): void {
    if (this.locked) throw new Error(LOCKED);
  }

  async insert(bytes: Uint8Array): Promise<void> {
    const other = await readXlsx(bytes);
    await this.readNow();
    if (this.file) await this.settle();
    const open = bookOf(this.grid);
    const active = open.getActiveSheet().getSheetId();
    const book = this.file ? this.file.insert(other) : other.book();
    this.file ??= other;
    this.count += 1;
    const kept = keptPlaces(this.grid);
    const more = gridWorkbook(book, `file-${this.count}`, this.name);
    showBook(this.grid, joinedBooks(open.save(), more));
    keepFileValues(this.grid, book);
    keepPlaces(this.grid, kept);
    this.cells.know(book.sheets);
    this.written = withAdded(this.written, this.state(), book);
    bookOf(this.grid).setActiveSheet(active);
    this.base = null;
    this.replaced("more sheets");
    await this.calculated();
  }

  /** Gives the keys to the grid. */
  focus(): void {
    focusGrid(this.grid);
  }

  deliver(file: Uint8Array, name: string): void {
    download(file, name);
  }

  /** What saving would leave at its old place, without what it reads or unsigned, in words; "" where nothing. */
  async losses(prepare: () => Promise<void>): Promise<string> {
    await this.readNow();
    this.behind.note(this.file, this.shifted, this.written);
    if (this.file?.isSigned) {
      await ready(this.grid, prepare);
      this.behind.unsigned = this.file.wouldLoseSignature(this.change(this.state(), this.file));
    }
    return this.behind.news();
  }

  /** Goes on under another name. */
  rename(name: string): void {
    this.name = name;
    this.opened(name);
  }

  /** What was made at the desk that a saved file does not hold. */
  leftOut(): string[] {
    return leftOut(this.parts, this.grid, this.shifted.any);
  }

  private change(state: BookState, { from1904 }: XlsxFile): BookChange {
    return bookChange(this.written, state, this.shifted.shifts(), { stale: this.stale, from1904 });
  }

  /** All that changed since the file was opened. */
  private async changes(limit: number): Promise<{ file: XlsxFile; change: BookChange; state: BookState }> {
    this.stale = !(await isCurrent(this.grid, limit));
    const { XlsxFile } = await import("../../xlsx/desk-file/desk-file");
    await this.readNow();
    this.file ??= XlsxFile.blank();
    const state = this.state();
    return { file: this.file, change: this.change(state, this.file), state };
  }

  private async write(limit: number): Promise<{ bytes: Uint8Array; state: BookState }> {
    const { file, change, state } = await this.changes(limit);
    this.unsure =
      change.stale === true && state.sheets.some(({ cells }) => [...cells.values()].some(({ kept }) => kept));
    return { bytes: await file.save(change), state };
  }

  /** Goes on from what changed as if the file had been opened with it: it can't be undone any more. */
  private async settle(): Promise<void> {
    const { file, change, state } = await this.changes(FILE_MS);
    this.behind.settle(file, this.shifted, this.written);
    file.settle(change);
    this.written = state;
    this.shifted.forget();
  }

  async bytes(): Promise<Uint8Array> {
    const { bytes } = await this.write(WHOLE_MS);
    if (this.stale) throw new Error(`the figures are not up to date after ${WHOLE_MS / 1000} s`);
    return bytes;
  }

  /** @param prepare Writes what the file is to keep, once figures follow what was typed */
  async save(prepare: () => Promise<void>): Promise<Uint8Array> {
    await ready(this.grid, prepare);
    const { bytes, state } = await this.write(FILE_MS);
    this.kept = state;
    this.base = bytes;
    this.behind.told();
    return bytes;
  }
}
