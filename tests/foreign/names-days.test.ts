import { strFromU8, strToU8, zipSync } from "fflate";
import { expect, it } from "vitest";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { foreignParts } from "./foreign-parts";

const BOOK = "xl/workbook.xml";
const SHEET = "xl/worksheets/sheet1.xml";

async function opened(...changes: [part: string, from: string, to: string][]) {
  const parts = foreignParts();
  for (const [part, from, to] of changes) {
    const text = strFromU8(parts[part]!);
    if (!text.includes(from)) throw new Error(`${part} holds no ${from}`);
    parts[part] = strToU8(text.replace(from, () => to));
  }
  return (await XlsxFile.open(zipSync(parts))).book();
}

it("names of constants, places and formulas are calculated with; those that depend on the asking cell are not", async () => {
  const more = [
    ["Label", '"x &amp; y"'],
    ["Less", "-0.05"],
    ["Yes", "TRUE"],
    ["Sum", "SUM('Bed 7'!$A$2:$A$4)"],
    ["Next", "'Bed 7'!B1"],
    ["Other", "Price*2"],
    ["Away", "[1]Sheet1!$A$1"],
    ["Twice", "_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2)"],
    ["Lost", "#REF!$A$1"],
    ["Broken", "))(("],
  ].map(([name, text]) => `<definedName name="${name}">${text}</definedName>`);
  const { names } = await opened([BOOK, "</definedNames>", `${more.join("")}</definedNames>`]);
  expect(names).toEqual([
    { name: "All_of_A", reference: "'Bed 7'!$A:$A" },
    { name: "Price", reference: "2.34" },
    { name: "Readings", reference: "'Bed 7'!$A$2:$A$4" },
    { name: "Label", reference: '"x & y"' },
    { name: "Less", reference: "-0.05" },
    { name: "Yes", reference: "TRUE" },
    { name: "Sum", reference: "(SUM('Bed 7'!$A$2:$A$4))" },
  ]);
});

it("names of single sheets are those of these sheets, known as such where the desk can't calculate with them", async () => {
  const own = (place: number, text: string) => `<definedName name="Own" localSheetId="${place}">${text}</definedName>`;
  const more = `${own(0, "'Bed 7'!$A$3")}${own(2, "Secret!A1")}</definedNames>`;
  const { sheets } = await opened([BOOK, "</definedNames>", more]);
  expect(sheets.map(({ name, ownNames }) => [name, ownNames])).toEqual([
    ["Bed 7", [{ name: "Own", reference: "'Bed 7'!$A$3" }]],
    [
      "Secret",
      [
        { name: "Here", reference: "Secret!$A$1" },
        { name: "Own", reference: null },
      ],
    ],
  ]);
});

it("days of a workbook that counts from 1904 are shown as those that they are", async () => {
  const { sheets } = await opened(
    [BOOK, "<workbookPr ", '<workbookPr date1904="1" '],
    ["xl/styles.xml", 'numFmtId="10" fontId="2"', 'numFmtId="14" fontId="2"'],
    [SHEET, '<c r="C2" s="5"><v>0.125</v></c>', '<c r="C2" s="5"><v>44562</v></c>'],
    [SHEET, 'type="decimal" operator="greaterThanOrEqual"', 'type="date" operator="greaterThanOrEqual"'],
  );
  const day = sheets[0]!.cells.find(({ row, column }) => row === 1 && column === 2);
  // from 1904-01-01 to 2026-01-02: 122 years of 365 days, 31 leap days and 1 day are 44,562; that day is 46,024 from 1900
  expect(day?.input).toBe(46024);
  expect(sheets[0]!.cells.find(({ row, column }) => row === 1 && column === 0)?.input).toBe(20);
  expect(sheets[0]!.validations[0]?.formulas).toEqual(["1462"]);
});
