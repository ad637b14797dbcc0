import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import type { Book, BookChange } from "./xlsx-book";
import { bookOf, sheetKey } from "./xlsx-read";
import { patch } from "./xlsx-write";

/** A workbook file that keeps all that it holds, shown or not, from opening to saving. */
export class XlsxFile {
  /** Which sheet of the file stands behind a key. */
  private readonly ids: Map<string, number>;

  private constructor(private readonly workbook: Workbook) {
    this.ids = new Map(workbook.worksheets.map(({ id }) => [sheetKey(id), id]));
  }

  static blank(): XlsxFile {
    return new XlsxFile(new Workbook());
  }

  static async open(bytes: Uint8Array): Promise<XlsxFile> {
    installChartSupport();
    const workbook = new Workbook();
    await workbook.xlsx.load(bytes);
    return new XlsxFile(workbook);
  }

  book(): Book {
    return bookOf(this.workbook);
  }

  async save(change: BookChange): Promise<Uint8Array> {
    patch(this.workbook, this.ids, change);
    return new Uint8Array(await this.workbook.xlsx.writeBuffer());
  }
}
