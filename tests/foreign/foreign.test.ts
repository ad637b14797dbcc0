import { strFromU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import type { CellChange } from "../../src/xlsx/desk-file/book";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { converted } from "../support/libreoffice";
import { chartFile } from "../xlsx/chart-sample";
import { formFile } from "../xlsx/form-sample";
import { foreignParts } from "./foreign-parts";
import { readByOpenpyxl } from "./openpyxl";
import { rareParts } from "./rare-parts";
import { unusualParts } from "./unusual-parts";

type Files = Record<string, Uint8Array>;

/** The file opened and saved with these cells of its first sheet changed. */
async function saved(file: Uint8Array, cells: CellChange[]): Promise<Files> {
  const opened = await XlsxFile.open(file);
  const sheets = opened.book().sheets.map(({ key, name }) => ({ key, name, widths: {}, cells: [] as CellChange[] }));
  sheets[0]!.cells = cells;
  return unzipSync(await opened.save({ sheets, addedNames: [], removedNames: [] }));
}

const differing = (before: Files, after: Files): string[] =>
  [...new Set([...Object.keys(before), ...Object.keys(after)])]
    .filter((part) => !before[part] || !after[part] || Buffer.compare(before[part], after[part]) !== 0)
    .sort();

const text = (files: Files, part: string) => strFromU8(files[part]!);

describe("a file of another program, opened and saved", () => {
  const foreign = foreignParts();
  let byLibreOffice: Uint8Array;
  beforeAll(async () => {
    byLibreOffice = (await converted([zipSync(foreign)], "xlsx"))[0]!;
  });

  const corpus: [string, () => Promise<Uint8Array> | Uint8Array][] = [
    ["written by hand, with much that the desk does not show", () => zipSync(foreign)],
    ["with controls, slicers, embedded objects, ink and scenarios", () => zipSync(rareParts())],
    ["with prefixes and parts of any name", () => zipSync(unusualParts())],
    ["saved by LibreOffice", () => byLibreOffice],
    ["with charts and a picture", chartFile],
    ["with checks, notes and a picture", formFile],
  ];

  it.each(corpus)("is the same in every part where nothing changed: %s", async (_, file) => {
    const bytes = await file();
    expect(differing(unzipSync(bytes), await saved(bytes, []))).toEqual([]);
  });

  it.each(corpus)("differs in one cell where one changed: %s", async (_, file) => {
    const bytes = await file();
    const before = unzipSync(bytes);
    const after = await saved(bytes, [{ row: 1, column: 0, input: 25 }]);
    const { sheets } = openBook(bytes);
    const [sheet] = sheets;
    expect(differing(before, after).filter((part) => part !== sheet!.part)).toEqual([]);
    const [was, is] = [text(before, sheet!.part), text(after, sheet!.part)];
    const cell = sheet!.cells.get("A2");
    if (!cell) {
      const cellOrRow = /<row r="2"><c r="A2"[^>]*><v>25<\/v><\/c><\/row>|<c r="A2"[^>]*><v>25<\/v><\/c>/;
      expect(is.replace(cellOrRow, "")).toBe(was);
      return;
    }
    expect(is.slice(0, cell.start)).toBe(was.slice(0, cell.start));
    expect(is.slice(is.length - (was.length - cell.end))).toBe(was.slice(cell.end));
    expect(is.slice(cell.start, is.length - (was.length - cell.end))).toMatch(
      /^<(x:)?c r="A2"( s="\d+")?><\1v>25<\/\1v><\/\1c>$/,
    );
  });

  it("is read by openpyxl and by LibreOffice with the change, its look and the formulas that shared one", async () => {
    const changes: CellChange[] = [
      { row: 1, column: 0, input: 25 },
      { row: 1, column: 1, input: "=A2*3", value: 75 },
      { row: 5, column: 2, input: "new & <more>" },
      { row: 9, column: 3, input: 7, look: { bold: true, fill: "#ff0000", format: "0.000" }, was: {} },
      { row: 20, column: 0, input: true },
    ];
    const parts = await saved(zipSync(foreign), changes);
    const file = zipSync(parts);
    expect(readByOpenpyxl(file)).toEqual([
      "Bed 7!A1 Caught",
      "Bed 7!B1 Twice bold",
      "Bed 7!C1 'Bed 7'!A2", // where the link of an empty cell leads
      "Bed 7!A2 25",
      "Bed 7!B2 =A2*3",
      "Bed 7!C2 0.125",
      "Bed 7!A3 30",
      "Bed 7!B3 =A3*2",
      "Bed 7!A4 40",
      "Bed 7!B4 =A4*2",
      "Bed 7!D4 =SUM(A2:A4)",
      "Bed 7!C6 new & <more>",
      "Bed 7!A10 Rich text",
      "Bed 7!D10 7",
      "Bed 7!A11 Head",
      "Bed 7!B11 Flow",
      "Bed 7!A12 1",
      "Bed 7!B12 2",
      "Bed 7!A21 True",
      "Secret!A1 5",
    ]);
    const again = openBook((await converted([file], "xlsx"))[0]!);
    const cells = again.sheets.find(({ name }) => name === "Bed 7")!.cells;
    const values = ["B2", "B3", "B4", "D4", "C6", "D10"].map((address) => cells.get(address)?.value);
    expect(values).toEqual([75, 60, 80, 95, "new & <more>", 7]); // 25·3, 30·2, 40·2, 25 + 30 + 40
    expect(differing(foreign, parts)).toEqual([
      "[Content_Types].xml",
      "xl/_rels/workbook.xml.rels",
      "xl/calcChain.xml",
      "xl/styles.xml",
      "xl/worksheets/sheet1.xml",
    ]);
    expect(parts["xl/calcChain.xml"]).toBeUndefined();
    const styled = text(parts, "xl/styles.xml");
    // what was there comes first and as it was, the new look keeps turned text, indent, protection and border
    expect(styled).toContain(
      '<xf numFmtId="171" fontId="3" fillId="4" borderId="1" xfId="0" applyFont="1" applyFill="1" applyNumberFormat="1">' +
        '<alignment textRotation="45" indent="1"/><protection locked="0" hidden="1"/></xf></cellXfs>',
    );
  });

  it("keeps all of a sheet that another is added to, renamed, moved before and deleted beside", async () => {
    const opened = await XlsxFile.open(zipSync(foreign));
    const [bed, secret] = opened.book().sheets;
    const same = { widths: {}, cells: [] };
    const names = { addedNames: [], removedNames: [] };
    const sheets = [
      { key: "new", name: "New", widths: {}, cells: [{ row: 0, column: 0, input: "x" }] },
      { key: secret!.key, name: "Secret", ...same },
      { key: bed!.key, name: "Bed's 8", ...same },
    ];
    const parts = unzipSync(await opened.save({ sheets, ...names }));
    const list = text(parts, "xl/workbook.xml");
    expect([...list.matchAll(/<sheet [^>]*name="([^"]*)"/g)].map(([, name]) => name)).toEqual([
      "New",
      "Chart",
      "Secret",
      "Bed's 8",
    ]);
    expect(list).toContain("<definedName name=\"_xlnm.Print_Area\" localSheetId=\"3\">'Bed''s 8'!$A$1:$D$12<");
    expect(list).toContain('<definedName name="Here" localSheetId="2">Secret!$A$1<');
    expect(list).toContain("<definedName name=\"Two\">'Bed''s 8'!$A$2,'Bed''s 8'!$A$4<");
    for (const chart of ["chart1", "chart2", "chart3"]) {
      expect(text(parts, `xl/charts/${chart}.xml`)).toContain("<c:f>'Bed''s 8'!$A$2:$A$4</c:f>");
    }
    expect(text(parts, "xl/worksheets/sheet1.xml")).toContain("<xm:f>'Bed''s 8'!A2:A4</xm:f>");
    expect(text(parts, "xl/pivotCache/pivotCacheDefinition1.xml")).toContain('sheet="Bed\'s 8"');
    const without = unzipSync(await opened.save({ sheets: [sheets[2]!], ...names }));
    expect(text(without, "xl/workbook.xml")).not.toContain('name="Here"');
    expect(text(without, "xl/workbook.xml")).toContain('localSheetId="0">\'Bed'); // the file's order
    const gone = differing(parts, without).filter((part) => !without[part]);
    expect(gone).toEqual([
      "xl/pivotTables/_rels/pivotTable1.xml.rels",
      "xl/pivotTables/pivotTable1.xml",
      "xl/worksheets/_rels/sheet2.xml.rels",
      "xl/worksheets/sheet2.xml",
      "xl/worksheets/sheet3.xml",
    ]);
    expect(readByOpenpyxl(zipSync(without))[0]).toBe("Bed's 8!A1 Caught");
  });
});
