import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { zipSync } from "fflate";
import { InputError } from "../../core/errors";
import { isMain } from "../parts/namespaces";
import { checkParts, type FilePackage, openPackage } from "../parts/package";
import { childOf, isOn } from "../parts/xml-tree";
import { blankFile } from "../patch/blank";
import { patchBook, type ShapedBook, shapedBook } from "../patch/book-patch";
import { dynamicMark } from "../patch/dynamic-arrays";
import { importSheets } from "../patch/import-sheets";
import { leaningOn } from "../patch/leaning";
import { leftBehind } from "../patch/shift-parts";
import { differ, isSigned, removeSignatures } from "../patch/signatures";
import { keepStrict } from "../patch/strict-form";
import { anchoredKinds } from "./anchored";
import type { Book, BookChange, Shift } from "./book";
import { checkForDesk, type ReadSheet } from "./limits/desk-limits";
import { namesOf, ownNamesOf, unknownNamesOf } from "./names";
import { notesOf } from "./note";
import { paletteOf, stylesOf } from "./palette";
import { drawnPictures } from "./picture";
import type { Extent } from "./place";
import { sheetOf } from "./read";
import { usualPackage } from "./usual-package";

let opened = 0;

const file1904 = ({ workbook }: FilePackage): boolean =>
  isOn(childOf(workbook, isMain, "workbookPr")?.given.get("date1904"));

async function byLibrary(bytes: Uint8Array): Promise<Workbook> {
  installChartSupport();
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  return workbook;
}

/** What the grid's library reads of the file: without what newer programs add to sheets if it fails at that. */
async function loaded(source: FilePackage, read: ReadonlyMap<string, ReadSheet>): Promise<Workbook> {
  try {
    return await byLibrary(usualPackage(source, read, true));
  } catch {
    // the desk shows little of these additions
  }
  try {
    return await byLibrary(usualPackage(source, read, false));
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : String(cause);
    throw new InputError("the file", "be a workbook that the desk can show", why);
  }
}

/** A workbook file that keeps all that it holds, shown or not, from opening to saving. */
export class XlsxFile {
  /** Whether its parts are not those that were opened: sheets of another file came. */
  private grown = false;
  /** Its parts as they were opened. */
  private readonly opened: ReadonlyMap<string, Uint8Array>;
  /** What it was saved as last, before cells. */
  private shaped: ShapedBook | null = null;

  private constructor(
    private readonly source: FilePackage,
    /** The part of the sheet behind each key. */
    private sheets: Map<string, string>,
    private readonly content: Book,
  ) {
    this.opened = new Map(source.parts);
  }

  static blank(): XlsxFile {
    return new XlsxFile(openPackage(blankFile()), new Map(), {
      sheets: [],
      names: [],
      unknownNames: [],
      asksCalculation: false,
      locked: false,
    });
  }

  /** @param mark What the keys of its sheets begin with, where that is to be known beforehand */
  static async open(bytes: Uint8Array, mark = `file-${++opened}`): Promise<XlsxFile> {
    const source = openPackage(bytes);
    const read = checkForDesk(source);
    checkParts(source.parts, new Set([source.main, ...read.keys()]));
    const workbook = await loaded(source, read);
    const sheets = new Map<string, string>();
    const content: Book = {
      sheets: [],
      names: namesOf(source.names),
      unknownNames: unknownNamesOf(source.names),
      asksCalculation: isOn(childOf(source.workbook, isMain, "calcPr")?.given.get("fullCalcOnLoad")),
      locked: isOn(childOf(source.workbook, isMain, "workbookProtection")?.given.get("lockStructure")),
    };
    for (const [place, { name, part, sheetId, kind }] of source.sheets.entries()) {
      if (kind !== "worksheet") continue;
      const sheet = workbook.getWorksheet(name);
      if (!sheet) throw new InputError("the file", "hold sheets that the desk can show", name);
      const key = `${mark}-${sheetId}`;
      sheets.set(key, part);
      const pictures = drawnPictures(source.parts, part).map(({ picture }) => picture);
      const held = read.get(part)!;
      const notes = (extent: Extent) => notesOf(source.parts, part, extent);
      const palette = paletteOf(sheet, stylesOf(held));
      const shown = sheetOf(sheet, key, held, palette, pictures, notes, file1904(source));
      content.sheets.push({ ...shown, ownNames: ownNamesOf(source.names, place) });
    }
    return new XlsxFile(source, sheets, content);
  }

  book(): Book {
    const { sheets, names } = this.content;
    return { ...this.content, sheets: [...sheets], names: [...names] };
  }

  /** Takes in all sheets of another file with its defined names; answers them under their keys here. */
  insert(other: XlsxFile): Book {
    const { main } = this.source;
    const parts = new Map(this.source.parts);
    let mark: number | undefined;
    const dynamic = () => {
      mark ??= dynamicMark(parts, main);
      return mark;
    };
    this.grown = true;
    this.shaped = null;
    const fresh = importSheets(parts, main, other.source, dynamic);
    this.source.parts = parts;
    for (const [key, part] of other.sheets) this.sheets.set(key, fresh.get(part)!);
    this.content.sheets.push(...other.content.sheets);
    this.content.names.push(...other.content.names);
    this.content.unknownNames.push(...other.content.unknownNames);
    return other.book();
  }

  /** Whether it counts days from 1904; the desk counts them from 1900. */
  get from1904(): boolean {
    return file1904(this.source);
  }

  /** What a sheet of the file holds that would stay where it is if these rows or columns were inserted or deleted. */
  leftBehind(key: string, shifts: readonly Shift[]): string[] {
    const part = this.sheets.get(key);
    return part === undefined ? [] : leftBehind(this.source.parts, part, shifts);
  }

  /** What a sheet of the file holds that would stay where it is if rows or columns were moved. */
  anchored(key: string): string[] {
    const part = this.sheets.get(key);
    return part === undefined ? [] : anchoredKinds(this.source.parts, part);
  }

  /** What reads a sheet of the file, other than formulas, and would have nothing to read without it. */
  leaningOn(key: string): string[] {
    const part = this.sheets.get(key);
    return part === undefined ? [] : leaningOn(this.source.parts, this.source.main, part);
  }

  private losesSignature(parts: Map<string, Uint8Array>): boolean {
    return this.isSigned && (this.grown || differ(parts, this.source.parts));
  }

  get isSigned(): boolean {
    return isSigned(this.source.parts);
  }

  private patched(change: BookChange): Map<string, Uint8Array> {
    const { parts, main } = this.source;
    this.shaped = shapedBook({ parts, sheets: this.sheets }, main, change, this.shaped);
    const patched = patchBook(this.shaped, main);
    keepStrict(patched, main, this.opened);
    return patched;
  }

  /** Whether the file is signed and saving what changed would change what was signed. */
  wouldLoseSignature(change: BookChange): boolean {
    return this.isSigned && this.losesSignature(this.patched(change));
  }

  /** The file as it was opened, with what changed since put into its parts; it stays as it was opened. */
  async save(change: BookChange): Promise<Uint8Array> {
    const parts = this.patched(change);
    if (this.losesSignature(parts)) removeSignatures(parts);
    return zipSync(Object.fromEntries(parts));
  }

  /** Becomes the file with what changed. */
  settle(change: BookChange): void {
    const parts = this.patched(change);
    this.grown ||= this.losesSignature(parts);
    this.source.parts = parts;
    this.sheets = this.shaped?.sheets ?? this.sheets;
    this.shaped = null;
  }
}
