import { strFromU8, strToU8 } from "fflate";
import { foreignParts } from "../foreign-parts";

export type Parts = Record<string, Uint8Array>;
/** A number from 0 up to one below `most`. */
export type Draw = (most: number) => number;

export const SHEET = "xl/worksheets/sheet1.xml";
export const BOOK = "xl/workbook.xml";
export const STYLES = "xl/styles.xml";
export const RELATIONS = "xl/_rels/workbook.xml.rels";

export const pick = <T>(draw: Draw, all: readonly T[]): T => all[draw(all.length)]!;

export function changed(part: string, from: string | RegExp, to: string): Parts {
  const parts = foreignParts();
  return { ...parts, [part]: strToU8(strFromU8(parts[part]!).replace(from, () => to)) };
}

export const cell = (text: string) => changed(SHEET, '<c r="A2"><v>20</v></c>', text);
export const before = (mark: string, text: string) => changed(SHEET, mark, text + mark);
export const rule = (formula: string) =>
  before(
    "<dataValidations",
    `<conditionalFormatting sqref="A2:A4"><cfRule type="expression" priority="9"><formula>${formula}</formula></cfRule></conditionalFormatting>`,
  );

export const PLACES = [
  "A0",
  "XFE1",
  "A1048577",
  "1A",
  "A",
  "1",
  "",
  "A1:",
  ":B2",
  "A1:B2:C3",
  "$A$0",
  "R1C1",
  "A-1",
  "ZZZZ9",
  "A1 B0",
];
export const RANGES = ["A1:XFD1048576", "A:A", "1:1048576", "A:XFD", "A1:A1048576", "B2:A1", "A1:XFE2"];
export const FORMULAS = [
  "LET(f,LAMBDA(f,f(f)),f(f))",
  "MAKEARRAY(9000,9000,LAMBDA(r,c,r*c))",
  'REPT("x",999999999)',
  "SEQUENCE(1048576,16384)",
  "REDUCE(0,SEQUENCE(1000000),LAMBDA(a,b,a+b))",
  "OFFSET(A1,0,0,1048576,16384)",
  "SUM(A:XFD)",
  'INDIRECT("A"&amp;ROW())',
  "A2",
  "SUM(A1:A9)",
  "1/0+",
  "))((",
  "'nowhere'!A1",
  "[1]Sheet1!A1",
  "MMULT(SEQUENCE(2000,2000),SEQUENCE(2000,2000))",
  "CANFALL.SC.CAN(A1:ZZ100000)",
  'TEXTJOIN(",",TRUE,A1:XFD9999)',
];
export const NUMBERS = ["1e999", "-1e400", "NaN", "0x14", "1,5", "", " ", "--1", "1e", "∞", "2958466", "-1", "1e308"];
export const ENTITIES = ["&bomb;", "&#0;", "&#xFFFF;", "&amp", "&lt;&#x1F;", "&nbsp;"];

export const without = (name: string): Parts => {
  const { [name]: _, ...rest } = foreignParts();
  return rest;
};
