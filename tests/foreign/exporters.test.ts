import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import type { CellChange, SheetChange } from "../../src/xlsx/desk-file/book";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { foreignParts, MAIN, OFFICE } from "./foreign-parts";
import { readByOpenpyxl } from "./openpyxl";
import { signedParts } from "./signed-parts";

type Parts = Record<string, Uint8Array>;

const SHEET = "xl/worksheets/sheet1.xml";
const BOOK = "xl/workbook.xml";
const MS = "http://schemas.microsoft.com/office";

/** The workbook with texts of its parts changed, and with more parts. */
function withChanges(changes: [part: string, from: string, to: string][], more: Record<string, string> = {}): Parts {
  const parts = foreignParts();
  for (const [part, from, to] of changes) {
    const text = strFromU8(parts[part]!);
    if (!text.includes(from)) throw new Error(`${part} holds no ${from}`);
    parts[part] = strToU8(text.replaceAll(from, () => to));
  }
  return { ...parts, ...Object.fromEntries(Object.entries(more).map(([part, text]) => [part, strToU8(text)])) };
}

async function saved(parts: Parts, change: (sheets: SheetChange[]) => SheetChange[] = (same) => same) {
  const file = await XlsxFile.open(zipSync(parts));
  const sheets = file.book().sheets.map(({ key, name }): SheetChange => ({ key, name, widths: {}, cells: [] }));
  const given = { sheets: change(sheets), addedNames: [], removedNames: [] };
  const signature = file.wouldLoseSignature(given);
  const bytes = await file.save(given);
  const after = unzipSync(bytes);
  return { bytes, signature, after, text: (part: string) => strFromU8(after[part]!) };
}

const cells = (...all: CellChange[]) =>
  (([first, ...others]: SheetChange[]) => [{ ...first!, cells: all }, ...others]) as (
    sheets: SheetChange[],
  ) => SheetChange[];

const relation = (id: string, type: string, target: string) =>
  `<Relationship Id="${id}" Type="${type.startsWith("http") ? type : `${OFFICE}/${type}`}" Target="${target}"/></Relationships>`;

it("a file of a package library, whose parts of xml are by default those of a workbook, is opened and saved", async () => {
  const main = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";
  const texts = {
    "[Content_Types].xml": `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="xml" ContentType="${main}"/><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/worksheets/sheet.xml" ContentType="${main.replace("sheet.main", "worksheet")}"/></Types>`,
    "_rels/.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${relation("R1", "officeDocument", "/xl/workbook.xml")}`,
    "xl/workbook.xml": `<x:workbook xmlns:x="${MAIN}"><x:sheets><x:sheet name="Report" sheetId="1" r:id="R2" xmlns:r="${OFFICE}"/></x:sheets></x:workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${relation("R2", "worksheet", "/xl/worksheets/sheet.xml")}`,
    "xl/worksheets/sheet.xml": `<x:worksheet xmlns:x="${MAIN}"><x:sheetData><x:row r="1"><x:c r="A1" t="str"><x:v>Can</x:v></x:c></x:row><x:row r="2"><x:c r="A2"><x:v>12</x:v></x:c></x:row></x:sheetData></x:worksheet>`,
  };
  const parts = Object.fromEntries(Object.entries(texts).map(([part, text]) => [part, strToU8(text)]));
  const { text, bytes } = await saved(parts, cells({ row: 1, column: 0, input: 15 }));
  expect(text("xl/worksheets/sheet.xml")).toBe(texts["xl/worksheets/sheet.xml"].replace(">12<", ">15<"));
  expect(text("[Content_Types].xml")).toBe(texts["[Content_Types].xml"]);
  expect(readByOpenpyxl(bytes)).toEqual(["Report!A1 Can", "Report!A2 15"]);
});

it("a sheet's stated size grows with a cell outside it, which some programs would not read otherwise", async () => {
  const { text } = await saved(foreignParts(), cells({ row: 30, column: 7, input: 1 }));
  expect(text(SHEET)).toContain('<dimension ref="A1:H31"/>');
  const inside = await saved(foreignParts(), cells({ row: 5, column: 3, input: 1 }));
  expect(inside.text(SHEET)).toContain('<dimension ref="A1:E12"/>');
});

it("newer charts follow with the names of their series, and lists of where formulas are go where they move", async () => {
  const chart = `<cx:chartSpace xmlns:cx="${MS}/drawing/2014/chartex"><cx:f>'Bed 7'!$A$2:$A$4</cx:f><cx:nf>'Bed 7'!$A$3</cx:nf></cx:chartSpace>`;
  const volatile = `<volTypes xmlns="${MAIN}"><volType type="realTimeData"><main first="p"><tp><v>5</v><tr r="A3" s="1"/></tp></main></volType></volTypes>`;
  const parts = withChanges(
    [["xl/_rels/workbook.xml.rels", "</Relationships>", relation("rId80", "volatileDependencies", "volatile.xml")]],
    { "xl/charts/chartEx1.xml": chart, "xl/volatile.xml": volatile },
  );
  expect((await saved(parts)).after["xl/volatile.xml"]).toEqual(parts["xl/volatile.xml"]);
  const { text, after } = await saved(parts, ([bed, ...others]) => [
    { ...bed!, shifts: [{ axis: "rows", at: 2, count: 2 }] },
    ...others,
  ]);
  expect(text("xl/charts/chartEx1.xml")).toContain("<cx:nf>'Bed 7'!$A$5</cx:nf>");
  expect(after["xl/volatile.xml"]).toBeUndefined();
});

describe("a table's column has the name that its header has", () => {
  const formula = '<c r="C12"><f>SUM(Heads[Flow])+Heads[[#This Row],[flow]]</f><v>4</v></c></row></sheetData>';
  const parts = () =>
    withChanges([
      [SHEET, "</row></sheetData>", formula],
      [
        "xl/tables/table1.xml",
        '<tableColumn id="2" name="Flow"/>',
        '<tableColumn id="2" name="Flow"><calculatedColumnFormula>Heads[[#This Row],[Flow]]*1</calculatedColumnFormula></tableColumn>',
      ],
    ]);

  it("and formulas speak of it by that", async () => {
    const { text, bytes } = await saved(parts(), cells({ row: 10, column: 1, input: "Litres" }));
    expect(text("xl/tables/table1.xml")).toContain('<tableColumn id="2" name="Litres">');
    expect(text("xl/tables/table1.xml")).toContain(">Heads[[#This Row],[Litres]]*1<");
    expect(text(SHEET)).toContain("<f>SUM(Heads[Litres])+Heads[[#This Row],[Litres]]</f>");
    expect(readByOpenpyxl(bytes)).toContain("Bed 7!B11 Litres");
  });

  it("as a text, once in the table, and never empty", async () => {
    const named = async (input: CellChange["input"]) => {
      const { text } = await saved(parts(), cells({ row: 10, column: 1, ...(input !== undefined && { input }) }));
      const [, column] = /id="2" name="([^"]*)"/.exec(text("xl/tables/table1.xml"))!;
      return [column, /<c r="B11"[^>]*t="inlineStr"><is><t[^>]*>([^<]*)</.exec(text(SHEET))?.[1]];
    };
    expect(await named(2026)).toEqual(["2026", "2026"]);
    expect(await named("head")).toEqual(["head2", "head2"]);
    expect(await named("")).toEqual(["Column2", "Column2"]);
  });
});

describe("a digital signature", () => {
  it("stays with a file in which nothing changed", async () => {
    const parts = signedParts();
    const { after, signature } = await saved(parts);
    expect(signature).toBe(false);
    expect(Object.keys(after).sort()).toEqual(Object.keys(parts).sort());
    for (const [part, bytes] of Object.entries(parts)) expect(after[part], part).toEqual(bytes);
  });

  it("is known to be lost, and left out, where a cell changed", async () => {
    const { after, signature, text } = await saved(signedParts(), cells({ row: 1, column: 0, input: 25 }));
    expect(signature).toBe(true);
    expect(Object.keys(after).filter((part) => part.startsWith("_xmlsignatures"))).toEqual([]);
    expect(text("_rels/.rels")).toBe(strFromU8(foreignParts()["_rels/.rels"]!));
  });
});

describe("slicers of a deleted sheet's table", () => {
  const X14 = `${MS}/spreadsheetml/2009/9/main`;
  const X15 = `${MS}/spreadsheetml/2010/11/main`;
  const slicer = (name: string) => `<slicer name="${name}" cache="Slicer_${name}" rowHeight="241300"/>`;
  const cache = (name: string, inside: string) =>
    `<slicerCacheDefinition xmlns="${X14}" name="Slicer_${name}">${inside}</slicerCacheDefinition>`;
  const ofTable = (id: number) =>
    `<extLst><x:ext xmlns:x="${MAIN}"><x15:tableSlicerCache xmlns:x15="${X15}" tableId="${id}" column="1"/></x:ext></extLst>`;
  const listed = (...ids: string[]) =>
    `<ext xmlns:x14="${X14}" uri="{A8765BA9-456A-4dab-B4F3-ACF838C121DE}"><x14:slicerList>${ids.map((id) => `<x14:slicer r:id="${id}"/>`).join("")}</x14:slicerList></ext>`;
  const anchor = (name: string) =>
    `<xdr:twoCellAnchor><sle:slicer xmlns:sle="${MS}/drawing/2010/slicer" name="${name}"/></xdr:twoCellAnchor>`;
  const parts = () =>
    withChanges(
      [
        [
          "xl/_rels/workbook.xml.rels",
          "</Relationships>",
          relation("rId70", `${MS}/2007/relationships/slicerCache`, "slicerCaches/c1.xml"),
        ],
        [
          "xl/_rels/workbook.xml.rels",
          "</Relationships>",
          relation("rId71", `${MS}/2007/relationships/slicerCache`, "slicerCaches/c2.xml"),
        ],
        [BOOK, "</definedNames>", '<definedName name="Slicer_Head">#N/A</definedName></definedNames>'],
        [
          BOOK,
          "</workbook>",
          `<extLst><ext uri="{46BE6895-7355-4a93-B00E-2C351335B9C9}"><x15:slicerCaches xmlns:x15="${X15}" xmlns:x14="${X14}"><x14:slicerCache r:id="rId70"/></x15:slicerCaches></ext><ext uri="{BBE1A952-AA13-448e-AADC-164F8A28A991}"><x14:slicerCaches xmlns:x14="${X14}"><x14:slicerCache r:id="rId71"/></x14:slicerCaches></ext></extLst></workbook>`,
        ],
        ["xl/worksheets/sheet2.xml", "<worksheet ", `<worksheet xmlns:r="${OFFICE}" `],
        [
          "xl/worksheets/sheet2.xml",
          "</sheetData>",
          `</sheetData><drawing r:id="rId40"/><extLst>${listed("rId41")}${listed("rId42")}</extLst>`,
        ],
        [
          "xl/worksheets/_rels/sheet2.xml.rels",
          "</Relationships>",
          `${relation("rId40", "drawing", "../drawings/slicers.xml")}`,
        ],
        [
          "xl/worksheets/_rels/sheet2.xml.rels",
          "</Relationships>",
          relation("rId41", `${MS}/2007/relationships/slicer`, "../slicers/s1.xml"),
        ],
        [
          "xl/worksheets/_rels/sheet2.xml.rels",
          "</Relationships>",
          relation("rId42", `${MS}/2007/relationships/slicer`, "../slicers/s2.xml"),
        ],
      ],
      {
        "xl/slicerCaches/c1.xml": cache("Head", ofTable(1)),
        "xl/slicerCaches/c2.xml": cache("Other", '<pivotTables><pivotTable tabId="4" name="Pivot"/></pivotTables>'),
        "xl/slicers/s1.xml": `<slicers xmlns="${X14}">${slicer("Head")}</slicers>`,
        "xl/slicers/s2.xml": `<slicers xmlns="${X14}">${slicer("Other")}</slicers>`,
        "xl/drawings/slicers.xml": `<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing">${anchor("Head")}${anchor("Other")}</xdr:wsDr>`,
      },
    );

  it("go from the other sheets with all that speaks of them; those of other tables stay", async () => {
    const { after, text, bytes } = await saved(parts(), ([, secret]) => [secret!]);
    expect(
      Object.keys(after)
        .filter((part) => /slicer/i.test(part))
        .sort(),
    ).toEqual(["xl/drawings/slicers.xml", "xl/slicerCaches/c2.xml", "xl/slicers/s2.xml"]);
    expect(text(BOOK)).not.toMatch(/Slicer_Head|rId70|15:slicerCaches/);
    expect(text(BOOK)).toContain('<x14:slicerCache r:id="rId71"/>');
    expect(text("xl/worksheets/sheet2.xml")).toContain(`<extLst>${listed("rId42")}</extLst>`);
    expect(text("xl/drawings/slicers.xml")).toContain(`Drawing">${anchor("Other")}</xdr:wsDr>`);
    expect(readByOpenpyxl(bytes)).toEqual(["Secret!A1 5"]);
  });

  it("stay while their sheet does", async () => {
    const before = parts();
    const { after } = await saved(before, ([bed]) => [bed!]);
    expect(after["xl/slicerCaches/c1.xml"]).toEqual(before["xl/slicerCaches/c1.xml"]);
    expect(after["xl/slicerCaches/c2.xml"]).toBeUndefined(); // whose pivot table went with Secret
  });
});
