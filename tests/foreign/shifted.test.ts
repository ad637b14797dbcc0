import { strFromU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import type { SheetChange, Shift } from "../../src/xlsx/desk-file/book";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { edited } from "../../src/xlsx/parts/edits";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { xmlTree } from "../../src/xlsx/parts/xml-tree";
import { shiftedFormula, shiftedList } from "../../src/xlsx/patch/shift";
import { elementShift } from "../../src/xlsx/patch/shift-elements";
import { foreignParts } from "./foreign-parts";
import { readByOpenpyxl } from "./openpyxl";

const SHEET = "xl/worksheets/sheet1.xml";

async function opened(shifts: Shift[], more: Partial<SheetChange> = {}) {
  const file = await XlsxFile.open(zipSync(foreignParts()));
  const [bed, secret] = file.book().sheets;
  const behind = file.leftBehind(bed!.key, shifts);
  const sheets = [
    { key: bed!.key, name: "Bed 7", shifts, widths: {}, cells: [], ...more },
    { key: secret!.key, name: "Secret", widths: {}, cells: [] },
  ];
  const bytes = await file.save({ sheets, addedNames: [], removedNames: [] });
  const parts = unzipSync(bytes);
  return { bytes, behind, text: (part: string) => strFromU8(parts[part]!) };
}

const cell = (bytes: Uint8Array, address: string) => openBook(bytes).sheets[0]!.cells.get(address);

describe("after rows were inserted all of a file goes along", () => {
  // two rows before row 3: what was in row 3 is in row 5, what was in row 2 stays
  const shifts: Shift[] = [{ axis: "rows", at: 2, count: 2 }];

  it("cells, formulas that shared one, row heights and hidden rows", async () => {
    const { bytes, text, behind } = await opened(shifts);
    expect(behind).toEqual([]);
    const formulas = ["B2", "B5", "B6", "D6"].map((address) => cell(bytes, address)?.formula);
    expect(formulas).toEqual(["A2*2", "A5*2", "A6*2", "SUM(A2:A6)"]);
    expect(["A5", "A6", "A12", "A3"].map((address) => cell(bytes, address)?.value)).toEqual([
      30,
      40,
      "Rich text",
      undefined,
    ]);
    expect(text(SHEET)).toContain('<row r="8" hidden="1" outlineLevel="1"/><row r="9" hidden="1" outlineLevel="1"/>');
    expect(text(SHEET)).toContain('<row r="12" s="5" customFormat="1" ht="22.5" customHeight="1">');
    expect(readByOpenpyxl(bytes)).toContain("Bed 7!D6 =SUM(A2:A6)");
  });

  it("conditional formats, checks, protected ranges, page breaks and sparklines", async () => {
    const sheet = (await opened(shifts)).text(SHEET);
    expect(sheet).toContain('<conditionalFormatting sqref="A2:A6">');
    expect(sheet).toContain('<conditionalFormatting sqref="C1:C1048576">');
    expect(sheet).toContain('sqref="A1:A1048576"');
    expect(sheet).toContain('<protectedRange password="CF1A" sqref="A2:A6" name="Readings"/>');
    expect(sheet).toContain('<brk id="7" max="16383" man="1"/>');
    expect(sheet).toContain("<xm:f>'Bed 7'!A2:A6</xm:f>");
  });

  it("of several shifts each is of the sheet as the ones before left it", async () => {
    const behind = async (...all: Shift[]) => (await opened(all)).behind;
    const above: Shift = { axis: "rows", at: 0, count: 5 };
    // the header of the table is in row 11, then in row 16
    expect(await behind(above, { axis: "rows", at: 10, count: -1 })).toEqual([]);
    expect(await behind(above, { axis: "rows", at: 15, count: -1 })).toEqual(["tables"]);
  });

  it("charts, pictures, notes, tables and names", async () => {
    const { text } = await opened(shifts);
    expect(text("xl/charts/chart1.xml")).toContain("<c:f>'Bed 7'!$A$2:$A$6</c:f>");
    // the drawings began in the rows 2, 9, 16 and 23
    const rows = [...text("xl/drawings/drawing1.xml").matchAll(/<xdr:from>.*?<xdr:row>(\d+)</g)].map(([, row]) => row);
    expect(rows).toEqual(["1", "10", "17", "24"]);
    expect(text("xl/comments1.xml")).toContain('ref="A5"');
    expect(text("xl/threadedComments/threadedComment1.xml")).toContain('ref="A5"');
    const vml = text("xl/drawings/vmlDrawing1.vml");
    expect(vml).toContain("<x:Row>4</x:Row><x:Column>0</x:Column>");
    expect(vml).toContain("<x:Anchor>1, 15, 4, 2, 3, 31, 8, 1</x:Anchor>");
    expect(text("xl/tables/table1.xml")).toContain('ref="A13:B14"');
    const names = text("xl/workbook.xml");
    expect(names).toContain("'Bed 7'!$A$1:$D$14");
    expect(names).toContain("'Bed 7'!$A$2,'Bed 7'!$A$6");
    expect(names).toContain("'Bed 7'!$A:$A");
  });
});

describe("after rows or columns were deleted", () => {
  it("what was in them goes and the rest closes up", async () => {
    const { bytes, text } = await opened([{ axis: "rows", at: 2, count: -1 }]);
    expect(cell(bytes, "D3")?.formula).toBe("SUM(A2:A3)");
    expect(text("xl/comments1.xml")).not.toContain("<comment ");
    expect(text("xl/drawings/vmlDrawing1.vml")).not.toContain("<v:shape ");
    expect(text(SHEET)).toContain('<conditionalFormatting sqref="A2:A3">');
  });

  it("a formula on cells that are gone says so, links and checks move", async () => {
    const { bytes, text, behind } = await opened([{ axis: "columns", at: 0, count: -1 }]);
    expect(cell(bytes, "A2")?.formula).toBe("#REF!*2");
    expect(text(SHEET)).toContain('<hyperlink ref="A1"');
    expect(text(SHEET)).not.toContain("<protectedRange ");
    expect(text(SHEET)).toContain('<col min="4" max="4" width="9" hidden="1"/>');
    expect(behind).toEqual(["tables"]);
  });
});

describe("what a shift makes of one reference", () => {
  const without = (row: number): Shift => ({ axis: "rows", at: row - 1, count: -1 });

  /** A check's cells and formula with a row less. */
  function check(sqref: string, formula: string, shift: Shift): string {
    const xml = `<worksheet><dataValidations><dataValidation sqref="${sqref}"><formula1>${formula}</formula1></dataValidation></dataValidations></worksheet>`;
    const moved = edited(xml, elementShift(xmlTree(xml), shift, { sheet: "Bed", own: true }));
    return /sqref="(.*?)"><formula1>(.*?)</.exec(moved)!.slice(1).join(" ");
  }

  it("a check keeps what the first of its cells spoke of", () => {
    expect(check("E21:E1048576", "LEN(E1)", without(2))).toBe("E20:E1048576 LEN(E1)");
    // E21 is gone, and the first cell is what was E22, which spoke of E2
    expect(check("E21:E1048576", "LEN(E1)", without(21))).toBe("E21:E1048576 LEN(E2)");
    expect(check("A2:A9", "A2", without(2))).toBe("A2:A8 A2");
    expect(check("A2:A9", "A$5", without(2))).toBe("A2:A8 A$4");
    // A3 is gone for the first cell, not for the others, which speak of the cell below them
    expect(check("A2:A9", "A3", without(3))).toBe("A2:A8 A3");
    expect(check("E21:E1048576", "LEN(E1)", without(1))).toBe("E20:E1048576 LEN(#REF!)");
    expect(check("A3:A9", "A2", { axis: "rows", at: 2, count: 2 })).toBe("A5:A11 A4");
  });

  it("the last cell of a sheet stays one cell, and a range to it goes to it", () => {
    expect(shiftedList("XFD1048576", without(2))).toBe("XFD1048575");
    expect(shiftedList("E21:XFD1048576", without(2))).toBe("E20:XFD1048576");
  });

  it("print titles without signs for fixed rows keep the quotes of their sheet's name", () => {
    const place = { sheet: "Ö", own: false };
    expect(shiftedFormula("'Ö'!1:2", without(2), place)).toBe("'Ö'!1:1");
  });
});

it("a file that was saved before is saved again as if it had only been opened", async () => {
  const one: Shift = { axis: "rows", at: 2, count: 2 };
  const other: Shift = { axis: "columns", at: 0, count: -1 };
  const file = await XlsxFile.open(zipSync(foreignParts()));
  const [bed, secret] = file.book().sheets;
  const saved = (from: XlsxFile, keys: string[], ...shifts: Shift[]) => {
    const sheets = [
      { key: keys[0]!, name: "Bed 8", shifts, widths: {}, cells: [] },
      { key: keys[1]!, name: "Secret", widths: {}, cells: [] },
    ];
    return from.save({ sheets, addedNames: [], removedNames: [] });
  };
  // more shifts, fewer, others: rows are undone and come again
  for (const shifts of [[one], [one, other], [one], [], [other], [other, one]]) {
    const fresh = await XlsxFile.open(zipSync(foreignParts()));
    const alone = await saved(
      fresh,
      fresh.book().sheets.map(({ key }) => key),
      ...shifts,
    );
    const again = await saved(file, [bed!.key, secret!.key], ...shifts);
    expect(unzipSync(again)).toEqual(unzipSync(alone));
  }
});

it("heights, widths and hidden lines that were set at the desk are in the file", async () => {
  const { text, bytes } = await opened([], {
    widths: { 3: 75 },
    heights: { 1: 40, 19: 20, 20: 28 },
    fitted: [20],
    rowsHidden: { 5: false, 2: true },
    columnsHidden: { 4: false, 0: true },
  });
  const sheet = text(SHEET);
  expect(sheet).toContain('<row r="2" ht="30" customHeight="1">'); // 40 px at 96 to the inch are 30 points
  expect(sheet).toContain('<row r="3" hidden="1">');
  expect(sheet).toContain('<row r="6" outlineLevel="1"/>');
  expect(sheet).toContain('<row r="20" ht="15" customHeight="1"/>');
  expect(sheet).toContain('<row r="21" ht="21"/>'); // 28 px, not fixed
  expect(sheet).toContain('<col min="1" max="1" width="14.5" style="2" customWidth="1" hidden="1"/>');
  expect(sheet).toContain('<col width="10" customWidth="1" min="4" max="4"/>'); // (75 - 5) / 7 characters
  expect(sheet).toContain('<col min="5" max="5" width="9" hidden="0"/>');
  expect(readByOpenpyxl(bytes).length).toBeGreaterThan(10);
});
