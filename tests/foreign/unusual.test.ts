import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import type { SheetChange } from "../../src/xlsx/desk-file/book";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { readByOpenpyxl } from "./openpyxl";
import { unusualParts } from "./unusual-parts";

const ONE = "cells/one.xml";

async function saved(first: Partial<SheetChange>, without: string[] = []) {
  const file = await XlsxFile.open(zipSync(unusualParts()));
  const sheets = file
    .book()
    .sheets.filter(({ name }) => !without.includes(name))
    .map(({ key, name }, i): SheetChange => ({ key, name, widths: {}, cells: [], ...(i === 0 && first) }));
  const bytes = await file.save({ sheets, addedNames: [], removedNames: [] });
  const parts = unzipSync(bytes);
  return { bytes, text: (part: string) => strFromU8(parts[part]!) };
}

describe("a workbook with prefixes, parts of any name and cells without address", () => {
  it("is shown with all that it holds", async () => {
    const { sheets, names } = (await XlsxFile.open(zipSync(unusualParts()))).book();
    const inputs = sheets.map(({ cells }) => cells.map(({ row, column, input }) => [row, column, input]));
    expect(inputs).toEqual([
      [
        [0, 0, "Caught"],
        [1, 0, 10],
        [1, 1, "=A2*$A$3"],
        [1, 2, 46024], // 2026-01-02: 126 years of 365 days, 32 leap days (1900 counts in files) and day 2
        [2, 0, 20],
        [2, 1, "=A3*$A$3"],
        [3, 0, 30],
        [3, 1, "=A4*$A$3"],
        [3, 2, '=IF(A2<11,"a & b","c")'],
        [3, 3, 1],
        [4, 3, 2],
        [4, 4, "=A2:A4*2"],
      ],
      [
        [0, 0, "=SUM(Main!A2:A4)"],
        [0, 1, "=SUM(Main:Two!B9)"],
      ],
    ]);
    expect(sheets[0]!.validations).toEqual([
      {
        places: [{ startRow: 1, endRow: 3, startColumn: 0, endColumn: 0 }],
        type: "whole",
        operator: "greaterThan",
        formulas: ["=Two!$A$1"],
        allowBlank: false,
        refusal: { style: "stop", title: "", text: "" },
      },
    ]);
    expect(names).toEqual([{ name: "Here", reference: "Main!$A$3" }]);
  });

  it("follows two rows that are inserted before row 3", async () => {
    const { bytes, text } = await saved({ shifts: [{ axis: "rows", at: 2, count: 2 }] });
    expect(text("book.xml")).toContain(">Main!$A$5<");
    expect(text("cells/two.xml")).toContain("<x:f>SUM(Main!A2:A6)</x:f>");
    expect(text("drawn/graph.xml")).toContain("<c:f>Main!$A$2:$A$6</c:f>");
    expect(text("drawn/graph.xml")).toContain("<c15:sqref>Main!$A$2:$A$7</c15:sqref>");
    expect(text("drawn/a.xml")).toContain('textlink="Main!$A$5"');
    expect(text("drawn/old.vml")).toContain("<x:FmlaLink>$A$5</x:FmlaLink>");
    const sheet = text(ONE);
    expect(sheet).toContain('<x:f t="dataTable" ref="D6:D7" dt2D="0" dtr="0" r1="A5"/>');
    expect(sheet).toContain('<x:dataRef ref="A5:A6" sheet="Main"/>');
    expect(sheet).toContain('<x:cfvo type="formula" val="$A$5"/>');
    expect(sheet).toContain('<x:hyperlink ref="B6" location="A5" display="go"/>');
    expect(sheet).toContain('<x:cellWatch r="A5"/>');
    expect(readByOpenpyxl(bytes)).toContain("Main!B6 =A6*$A$5");
  });

  it("keeps the rectangle of an array formula that the desk calculates, whatever the desk fills", async () => {
    // 10 · 2, 20 · 2, 30 · 2: the desk fills three cells, the file has room for two
    const spill = [[20], [40], [60]];
    const same = { row: 4, column: 4, input: "=A2:A4*2", value: 20, spill };
    expect(unzipSync((await saved({ cells: [same] })).bytes)[ONE]).toEqual(unusualParts()[ONE]);
    const one = await saved({ cells: [{ ...same, value: 22, spill: [[22]] }] });
    expect(one.text(ONE)).toContain(
      '<x:c r="E5"><x:f t="array" ref="E5:E6">A2:A4*2</x:f><x:v>22</x:v></x:c></x:row><x:row r="6"><x:c r="E6" t="e"><x:v>#N/A</x:v></x:c>',
    );
  });

  it("keeps such a formula as it is where only the desk has no room for it, but not over what is typed there", async () => {
    const error = { error: "#SPILL!" };
    const blocked = { row: 4, column: 4, input: "=A2:A4*2", value: error, spill: [[error]] };
    const below = { row: 6, column: 4, input: 7 };
    const kept = (await saved({ cells: [blocked, below] })).text(ONE);
    expect(kept).toContain(
      '<x:c r="E5"><x:f t="array" ref="E5:E6">A2:A4*2</x:f><x:v>20</x:v></x:c></x:row><x:row r="6"><x:c r="E6"><x:v>40</x:v></x:c>',
    );
    const typed = (await saved({ cells: [blocked, { ...below, row: 5, input: "=A2*9", value: 90 }] })).text(ONE);
    expect(typed).toContain('<x:f t="array" ref="E5">A2:A4*2</x:f><x:v>#VALUE!</x:v>');
    expect(typed).toContain('<x:c r="E6"><x:f>A2*9</x:f><x:v>90</x:v></x:c>');
  });

  it("keeps a filter on its column when one is inserted before it, and lets it go with that column", async () => {
    const more = await saved({ shifts: [{ axis: "columns", at: 1, count: 1 }] });
    expect(more.text(ONE)).toContain('<x:autoFilter ref="A1:D4"><x:filterColumn colId="2">');
    const fewer = await saved({ shifts: [{ axis: "columns", at: 1, count: -1 }] });
    expect(fewer.text(ONE)).toContain('<x:autoFilter ref="A1:B4"></x:autoFilter>');
  });

  it("calls a renamed sheet by its new name, and one that is gone #REF!", async () => {
    const { text } = await saved({ name: "Bed 7" });
    expect(text("cells/two.xml")).toContain("<x:f>SUM('Bed 7'!A2:A4)</x:f>");
    expect(text("cells/two.xml")).toContain("<x:f>SUM('Bed 7:Two'!B9)</x:f>");
    expect(text("drawn/graph.xml")).toContain("<c15:sqref>'Bed 7'!$A$2:$A$5</c15:sqref>");
    expect(text("drawn/a.xml")).toContain("textlink=\"'Bed 7'!$A$3\"");
    expect(text(ONE)).toContain('<x:dataRef ref="A3:A4" sheet="Bed 7"/>');
    const gone = await saved({}, ["Main"]);
    expect(gone.text("cells/two.xml")).toContain("<x:f>SUM(#REF!A2:A4)</x:f>");
    expect(gone.text("book.xml")).toContain(">#REF!$A$3<");
  });

  it("is opened where a part is in UTF-16", async () => {
    const parts = unusualParts();
    const wide = Buffer.from(`\uFEFF${strFromU8(parts[ONE]!)}`, "utf16le");
    const { sheets } = (await XlsxFile.open(zipSync({ ...parts, [ONE]: new Uint8Array(wide) }))).book();
    expect(sheets[0]!.cells).toHaveLength(12);
  });
});

it("columns and rows that no sheet has are refused", async () => {
  const opened = (from: string, to: string) => {
    const parts = unusualParts();
    return XlsxFile.open(zipSync({ ...parts, [ONE]: strToU8(strFromU8(parts[ONE]!).replace(from, to)) }));
  };
  const columns = '<x:cols><x:col min="1" max="99999999" width="9"/></x:cols><x:sheetData>';
  await expect(opened("<x:sheetData>", columns)).rejects.toThrow(
    'the file must hold columns from 1 to 16384, got "1:99999999" in Main',
  );
  await expect(opened("</x:sheetData>", '<x:row r="1048577"/></x:sheetData>')).rejects.toThrow(
    "the file must hold rows from 1 to 1048576, got 1048577 in Main",
  );
});
