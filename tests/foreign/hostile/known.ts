import { strFromU8, strToU8 } from "fflate";
import { foreignParts } from "../foreign-parts";

/** A file that no program should write, with what is wrong in it. */
export interface HostileFile {
  wrong: string;
  file: Uint8Array;
}

const SHEET = "xl/worksheets/sheet1.xml";
const BOOK = "xl/workbook.xml";

type Parts = Record<string, Uint8Array>;

function changed(part: string, from: string | RegExp, to: string): Parts {
  const parts = foreignParts();
  const before = strFromU8(parts[part]!);
  const after = before.replace(from, () => to);
  if (after === before) throw new Error(`${part} holds no ${from}`);
  return { ...parts, [part]: strToU8(after) };
}

function without(part: string): Parts {
  const { [part]: _, ...rest } = foreignParts();
  return rest;
}

const cell = (text: string) => changed(SHEET, '<c r="A2"><v>20</v></c>', text);
const beforeBreaks = (text: string) => changed(SHEET, "<conditionalFormatting", `${text}<conditionalFormatting`);
const formula = (text: string) => cell(`<c r="A2"><f>${text}</f></c>`);

/** One file a kind of damage; the first twenty once stopped the desk or were read in two ways. */
export const HOSTILE: readonly [wrong: string, parts: () => Parts][] = [
  ["a missing sheet", () => without(SHEET)],
  ["missing shared texts", () => without("xl/sharedStrings.xml")],
  ["missing styles", () => without("xl/styles.xml")],
  ["a missing main part", () => without(BOOK)],
  ["a missing relationship", () => changed("xl/_rels/workbook.xml.rels", /<Relationship Id="rId1"[^>]*>/, "")],
  ["no list of relations", () => without("xl/_rels/workbook.xml.rels")],
  ["an address in row 0", () => cell('<c r="A0"><v>20</v></c>')],
  ["an address past the sheet", () => cell('<c r="XFE2"><v>20</v></c>')],
  ["an undefined entity", () => cell('<c r="A2" t="str"><v>&bomb;</v></c>')],
  [
    "merged cells that overlap",
    () => beforeBreaks('<mergeCells><mergeCell ref="A1:B2"/><mergeCell ref="B2:C3"/></mergeCells>'),
  ],
  ["a merge over the whole sheet", () => beforeBreaks('<mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells>')],
  ["a merge from an address that is none", () => beforeBreaks('<mergeCells><mergeCell ref="A0:B2"/></mergeCells>')],
  ["an array over the whole sheet", () => cell('<c r="A2"><f t="array" ref="A1:XFD1048576">1</f><v>1</v></c>')],
  ["a formula of 9,000 characters", () => formula(`1${"+1".repeat(4500)}`)],
  ["a formula of 500 levels", () => formula(`${"(".repeat(500)}1${")".repeat(500)}`)],
  ["two values in a cell", () => cell('<c r="A2"><v>20</v><v>21</v></c>')],
  ["a number that is none", () => cell('<c r="A2"><v>0x14</v></c>')],
  ["a shared text that is not there", () => cell('<c r="A2" t="s"><v>400000</v></c>')],
  ["a check at an address that is none", () => changed(SHEET, 'sqref="A1:XFD1"', 'sqref="A0"')],
  ["a document type", () => changed(SHEET, "<worksheet", "<!DOCTYPE a []><worksheet")],
  ["a cell twice", () => cell('<c r="A2"><v>20</v></c><c r="A2"><v>21</v></c>')],
  ["two sheets of one name", () => changed(BOOK, 'name="Secret"', 'name="BED 7"')],
  ["a tag that is not closed", () => changed("xl/styles.xml", "</fonts>", "")],
  ["tags nested without end", () => changed("customXml/item1.xml", "<block>7</block>", "<a>".repeat(500))],
  ["a cell in another row", () => cell('<c r="A3"><v>20</v></c>')],
];
