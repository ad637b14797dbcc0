import { strFromU8, strToU8 } from "fflate";
import { foreignParts } from "./foreign-parts";

const SHEET = "xl/worksheets/sheet2.xml";

/** Formulas of the sheet Secret from row 2 on, each with what its own program gave; the table Heads has the flow 2. */
const LINES: [formula: string, value: string][][] = [
  [
    ["SUM(Heads[Flow])", "2"],
    ["IFERROR(Heads[[#Totals],[Flow]],7)", "3"],
    ["IFERROR(A2,-1)", "2"],
    ["COUNT(A2:B2)", "2"],
  ],
  [
    ['GETPIVOTDATA("Sum",$C$3)', "9"],
    ['IFERROR(GETPIVOTDATA("Sum",$C$3),0)', "9"],
    ["IFERROR([1]Sheet1!$A$1,0)", "4"],
    ["IFERROR(_xll.PIPE(A1),0)", "63"],
  ],
  [
    ["A1+B4*0.1", "5.5555"],
    ["A4", "5.5555"],
    ["SUM((A1,A1))", "10"],
    ["SUM('Bed 7'!A2:A4*2)", "180"],
  ],
  [
    ["IFERROR(Beside,0)", "8"],
    ["_xlfn.SINGLE(A1:A9)", "5"],
    ["SUM('Bed 7:Secret'!A2)", "22"],
    ["_xlfn.LET(_xlpm.n,A1,_xlpm.n+1)", "6"],
  ],
];

const cell = ([formula, value]: [string, string], row: number, column: number) => {
  const kind = formula.endsWith("*2)") ? ` t="array" ref="D${row}"` : "";
  return `<c r="${"ABCD"[column]}${row}"><f${kind}>${formula}</f><v>${value}</v></c>`;
};

/**
 * The workbook with formulas that no grid in a page can calculate: of a table's columns, a pivot table, another file, an
 * add-in, a name that is none of a place, in a circle, over several sheets; and those that read them.
 */
export function beyondParts(): Record<string, Uint8Array> {
  const parts = foreignParts();
  const rows = LINES.map((line, i) => `<row r="${i + 2}">${line.map((one, j) => cell(one, i + 2, j)).join("")}</row>`);
  const changed = (part: string, from: string, to: string) => {
    parts[part] = strToU8(strFromU8(parts[part]!).replace(from, () => to));
  };
  changed(SHEET, "</sheetData>", `${rows.join("")}</sheetData>`);
  changed("xl/workbook.xml", "</definedNames>", '<definedName name="Beside">Secret!B1</definedName></definedNames>');
  return parts;
}
