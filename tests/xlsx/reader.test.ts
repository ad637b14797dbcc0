import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { contractFile } from "../../src/hosts/contract/file";
import { sheetContent } from "../../src/xlsx/parts/sheet-cells";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { within, xmlTree } from "../../src/xlsx/parts/xml-tree";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

const parts = unzipSync(contractFile("Cans", "Results", "Cans_Readings"));
const part = (name: string) => strFromU8(parts[name]!);
/** The file with a piece of a part replaced, which has to be there. */
function changed(name: string, from: string, to: string): Uint8Array {
  expect(part(name)).toContain(from);
  return zipSync({ ...parts, [name]: strToU8(part(name).replace(from, to)) });
}
const cellsOf = (inside: string, root = `<worksheet xmlns="${MAIN}">`) =>
  sheetContent(`${root}<sheetData>${inside}</sheetData></worksheet>`, ["one", "two"]).cells;
const cell = (inside: string, type = "") => cellsOf(`<row r="1"><c r="A1"${type}>${inside}</c></row>`).get("A1");

describe("the tree of a part", () => {
  it("says where each tag is, also with line ends of Windows, signs beyond 16 bits and empty tags", () => {
    const xml = '<?xml version="1.0"?>\r\n<a x="1>2">\r\n😀<b/><c >t&amp;<![CDATA[<d>]]></c\r\n></a>';
    const root = xmlTree(xml);
    const pieces = [root, ...within(root)].map((one) => [
      xml.slice(one.start, one.openEnd),
      xml.slice(one.closeStart, one.end),
      one.text,
    ]);
    expect(pieces).toEqual([
      ['<a x="1>2">', "</a>", "\n😀"],
      ["<b/>", "", ""],
      ["<c >", "</c\r\n>", "t&<d>"],
    ]);
  });
});

describe("a file that could be read in two ways is refused:", () => {
  it.each([
    [
      "an id that is no relationship's",
      changed("xl/workbook.xml", "r:id", 'xmlns:z="urn:z" z:id'),
      'the file must hold every sheet that it lists, got "Cans"',
    ],
    [
      "a type that merely ends in the right word",
      changed("xl/_rels/workbook.xml.rels", `${OFFICE}/worksheet`, "urn:z/worksheet"),
      'the file must hold every sheet that it lists, got "Cans"',
    ],
    [
      "two main parts",
      changed(
        "_rels/.rels",
        "</Relationships>",
        `<Relationship Id="z" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
      ),
      "the file must lead to one part as its officeDocument, got 2",
    ],
    [
      "two lists of shared texts",
      changed(
        "xl/_rels/workbook.xml.rels",
        "</Relationships>",
        `${["a", "b"].map((id) => `<Relationship Id="${id}" Type="${OFFICE}/sharedStrings" Target="${id}.xml"/>`).join("")}</Relationships>`,
      ),
      "the file must lead to one part as its sharedStrings, got 2",
    ],
    [
      "one id for two relations",
      changed("xl/_rels/workbook.xml.rels", 'Id="rId2"', 'Id="rId1"'),
      'the file must name each relation of a part once, got "rId1" in xl/workbook.xml',
    ],
    [
      "two sheets in one part",
      changed("xl/_rels/workbook.xml.rels", "sheet2.xml", "sheet1.xml"),
      'the file must list each sheet once, got "Results"',
    ],
    [
      "a part that is not well formed, wherever it is",
      zipSync({ ...parts, "customXml/item1.xml": strToU8("<a><b></a>") }),
      'the file must hold well-formed parts, got "a tag that is not closed"',
    ],
    [
      "an encoding that other programs would read otherwise",
      changed("xl/worksheets/sheet1.xml", "UTF-8", "windows-1252"),
      'the file must hold well-formed parts, got "an unusual encoding"',
    ],
    [
      "a prefix that nothing declares",
      changed("xl/worksheets/sheet1.xml", "<sheetData>", '<sheetData z:a="1">'),
      'the file must hold well-formed parts, got "a prefix that is not declared"',
    ],
  ])("%s", (_, file, message) => {
    expect(() => openBook(file)).toThrow(message);
  });

  it.each([
    ["two values in a cell", () => cell("<v>1</v><v>2</v>"), 'the file must hold one value a cell, got "two" in A1'],
    ["a value of two kinds", () => cell("<v>1</v><is><t>2</t></is>", ' t="inlineStr"'), /one value a cell/],
    ["a hexadecimal number", () => cell("<v>0x1F</v>"), 'the file must hold numbers as numbers, got "0x1F" in A1'],
    ["an endless number", () => cell("<v>1e999</v>"), 'the file must hold numbers as numbers, got "1e999" in A1'],
    ["a text that is not there", () => cell("<v>2</v>", ' t="s"'), /hold every text that a cell names, got "2" in A1/],
    [
      "alternatives among the cells",
      () => cellsOf('<mc:AlternateContent xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"/>'),
      'the file must hold nothing but cells in the table of a sheet, got "mc:AlternateContent"',
    ],
    [
      "a value of another namespace",
      () => cell('<v xmlns="urn:z">7</v>'),
      'the file must hold nothing but cells in the table of a sheet, got "v" in A1',
    ],
    ["a cell outside its row", () => cellsOf('<row r="1"><c r="A2"/></row>'), /hold cells in their rows, got "A2"/],
    [
      "two tables of cells",
      () => cellsOf("</sheetData><sheetData>"),
      'the file must hold one table of cells a sheet, got "two"',
    ],
  ])("%s", (_, read, message) => {
    expect(read).toThrow(message);
  });
});

describe("the cells of a sheet", () => {
  it("are read through any prefix, with places, formulas and their kinds", () => {
    const root = `<x:worksheet xmlns:x="${MAIN}">`;
    const inside =
      '<x:row r="2"><x:c r="A2" s="3" t="s"><x:v>1</x:v></x:c><x:c><x:f t="array" ref="B2:B3">A1:A2</x:f><x:v>-.5E1</x:v></x:c></x:row>';
    const xml = `${root}<x:sheetData>${inside}</x:sheetData></x:worksheet>`;
    const { cells, rows } = sheetContent(xml, ["one", "two"]);
    expect(
      [...cells].map(([address, { value, formula, kind, fills }]) => [address, value, formula, kind, fills]),
    ).toEqual([
      ["A2", "two", undefined, undefined, undefined],
      ["B2", -5, "A1:A2", "array", "B2:B3"],
    ]);
    expect(xml.slice(cells.get("B2")!.start, cells.get("B2")!.end)).toMatch(/^<x:c><x:f.*<\/x:c>$/);
    expect(rows.map(({ number, closeStart, end }) => [number, xml.slice(closeStart, end)])).toEqual([[2, "</x:row>"]]);
  });

  it("take no sounds that are written beside a text, in a cell as among the shared texts", () => {
    expect(
      cell("<is><r><t>ab</t></r><r><t>cd</t></r><rPh sb='0' eb='1'><t>zz</t></rPh></is>", ' t="inlineStr"')?.value,
    ).toBe("abcd");
  });
});
