import { Workbook, type Worksheet } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { checkParts, openPackage } from "../parts/package";
import type { Book, BookChange, BookSheet } from "./book";
import { type PictureWords, pictureWords, withPictureWords } from "./drawing";
import { adoptPictures, picturesOf, unnameDrawings } from "./picture";
import { namesOf, sheetOf } from "./read";
import { patch } from "./write";

let opened = 0;

/** A workbook file that keeps all that it holds, shown or not, from opening to saving. */
export class XlsxFile {
  /** Which sheet of the file is behind a key. */
  private readonly ids = new Map<string, number>();
  /** The words of the pictures of a sheet, by its number. */
  private readonly words = new Map<number, PictureWords[]>();
  private readonly count = ++opened;

  private constructor(private readonly workbook: Workbook) {
    for (const sheet of workbook.worksheets) this.know(sheet);
  }

  static blank(): XlsxFile {
    return new XlsxFile(new Workbook());
  }

  static async open(bytes: Uint8Array): Promise<XlsxFile> {
    const opened = openPackage(bytes);
    checkParts(opened.parts, new Set([opened.main]));
    installChartSupport();
    const workbook = new Workbook();
    await workbook.xlsx.load(bytes);
    const file = new XlsxFile(workbook);
    for (const [name, words] of pictureWords(opened)) {
      const sheet = workbook.getWorksheet(name);
      if (sheet) file.words.set(sheet.id, words);
    }
    return file;
  }

  private know(sheet: Worksheet): string {
    const key = `file-${this.count}-${sheet.id}`;
    this.ids.set(key, sheet.id);
    return key;
  }

  private sheets(): BookSheet[] {
    return [...this.ids].flatMap(([key, id]) => {
      const sheet = this.workbook.worksheets.find((one) => one.id === id);
      return sheet ? [sheetOf(sheet, key, picturesOf(sheet, this.words.get(id) ?? []))] : [];
    });
  }

  book(): Book {
    return { sheets: this.sheets(), names: namesOf(this.workbook) };
  }

  /** Takes in all sheets of another file with its defined names; answers them under their keys here. */
  insert(other: XlsxFile): Book {
    const keys = new Set<string>();
    for (const source of other.workbook.worksheets) {
      const sheet = this.workbook.importSheet(source);
      adoptPictures(sheet, other.workbook);
      const words = other.words.get(source.id);
      if (words) this.words.set(sheet.id, words);
      keys.add(this.know(sheet));
    }
    const names = namesOf(other.workbook);
    for (const { name, reference } of names) this.workbook.definedNames.add(reference, name);
    return { sheets: this.sheets().filter(({ key }) => keys.has(key)), names };
  }

  async save(change: BookChange): Promise<Uint8Array> {
    patch(this.workbook, this.ids, this.words, change);
    if (change.stale) this.workbook.calcProperties.fullCalcOnLoad = true;
    unnameDrawings(this.workbook);
    const bytes = new Uint8Array(await this.workbook.xlsx.writeBuffer());
    const words = this.workbook.worksheets.flatMap(({ id, name }) => {
      const said = this.words.get(id);
      return said ? [[name, said] as const] : [];
    });
    return withPictureWords(bytes, new Map(words));
  }
}
