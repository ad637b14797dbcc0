import { strFromU8, strToU8, zipSync } from "fflate";
import { foreignParts, OFFICE } from "../foreign-parts";
import type { Kind } from "./kinds";
import { BOOK, before, cell, changed, type Draw, type Parts, pick, RELATIONS, SHEET, STYLES } from "./pieces";

const TABLE = "xl/tables/table1.xml";
const LINKS = "_rels/.rels";
const MS = "http://schemas.microsoft.com/office";
/** Names that a program may mistake for something of its own. */
const OWN_NAMES = ["__proto__", "constructor", "toString", "hasOwnProperty", "NaN", "TRUE", "A1", "R1C1", "length"];
const FORMATS = [
  "[",
  "0;;;;;;;;",
  "[&lt;",
  "[$-999999999]0",
  "@@@@",
  "General General",
  "0".repeat(5000),
  "[h",
  "#,,,,,,,,,0",
  "&quot;",
];
const OF_TABLES = [
  "Nobody[[#This Row],[x]]",
  "Heads[",
  "Heads[[[",
  "Heads[]]",
  "SUM(Heads[#All]",
  "Heads[[#Totals],[Flow]:[Nobody]]",
  "[@Flow]",
  "Heads[Flow] Heads[Head]",
];

const parts = (make: (draw: Draw) => Parts) => (draw: Draw) => zipSync(make(draw));

/** Rows behind the last one of the sheet. */
const rows = (texts: readonly string[]) =>
  before("</sheetData>", texts.map((text, i) => `<row r="${100 + i}">${text}</row>`).join(""));

/** Rows of formulas, each of them written for its row. */
const formulas = (count: number, formula: (row: number) => string) =>
  rows(Array.from({ length: count }, (_, i) => `<c r="A${100 + i}"><f>${formula(100 + i)}</f><v>1</v></c>`));

function added(part: string, text: string, [from, to]: [from: string, to: string], links = RELATIONS): Parts {
  return { ...changed(links, from, to), [part]: strToU8(text) };
}

const relation = (type: string, target: string): [string, string] => [
  "</Relationships>",
  `<Relationship Id="rId99" Type="${type}" Target="${target}"/></Relationships>`,
];

/** Damage to what files of newer programs hold, and to what the desk keeps of formulas that it can't calculate. */
export const NEWER_KINDS: Kind[] = [
  ["a formula of a table that is none", parts((draw) => cell(`<c r="A2"><f>${pick(draw, OF_TABLES)}</f><v>7</v></c>`))],
  [
    "a table of no columns or name",
    parts((draw) =>
      changed(TABLE, pick(draw, [/<tableColumns.*<\/tableColumns>/, / name="Heads"/, /displayName="[^"]*"/]), ""),
    ),
  ],
  [
    "a table with columns of one name",
    parts((draw) => changed(TABLE, 'name="Flow"', `name="${pick(draw, ["Head", "", "a]b", "[", "x".repeat(300)])}"`)),
  ],
  [
    "a figure of another kind than its formula",
    parts((draw) =>
      cell(
        `<c r="A2" t="${pick(draw, ["e", "str", "b", "n"])}"><f>Heads[Flow]</f><v>${pick(draw, ["#WHAT!", "1", "0"])}</v></c>`,
      ),
    ),
  ],
  [
    "an array without the mark that it names",
    parts((draw) =>
      cell(
        `<c r="A2" cm="${pick(draw, ["9", "-1", "x"])}"><f t="array" ref="A2:${pick(draw, ["A9", "C2", "A2"])}">_xlfn.NOBODY(A9)</f><v>1</v></c>`,
      ),
    ),
  ],
  [
    "formulas in a large circle",
    parts((draw) => {
      const count = 100 + draw(1500);
      return formulas(count, (row) => `A${row === 100 ? 99 + count : row - 1}+1`);
    }),
  ],
  [
    "formulas in many circles",
    parts((draw) => formulas(50 + draw(300), (row) => `A${row}+${pick(draw, ["A2", "A101", "1"])}`)),
  ],
  [
    "a long chain of formulas",
    parts((draw) => formulas(500 + draw(3000), (row) => (row === 100 ? "1" : `A${row - 1}+1`))),
  ],
  [
    "names that call each other",
    parts((draw) =>
      changed(
        BOOK,
        ">2.34<",
        `>${pick(draw, ["Two+Price", "SUM(Price)", "IF(1,Price,Other)", "_xlfn.LAMBDA(_xlpm.x,Price(_xlpm.x))"])}<`,
      ),
    ),
  ],
  [
    "a signature that leads nowhere or back",
    parts((draw) =>
      added(
        "_xmlsignatures/origin.sigs",
        pick(draw, ["", "<a"]),
        relation(
          "http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin",
          pick(draw, ["_xmlsignatures/origin.sigs", "gone.sigs", "xl/workbook.xml", "_rels/.rels"]),
        ),
        LINKS,
      ),
    ),
  ],
  [
    "relations in a circle",
    parts((draw) =>
      added(
        "xl/worksheets/_rels/sheet2.xml.rels",
        `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${relation(`${OFFICE}/${pick(draw, ["drawing", "table", "worksheet", "pivotTable"])}`, pick(draw, ["sheet2.xml", "sheet1.xml", "../workbook.xml"]))[1]}`,
        ["</Relationships>", "</Relationships>"],
      ),
    ),
  ],
  [
    "a slicer's cache that is none",
    parts((draw) =>
      added(
        "xl/slicerCaches/c.xml",
        pick(draw, [
          "<a/>",
          `<slicerCacheDefinition xmlns="${MS}/spreadsheetml/2009/9/main"><pivotTables><pivotTable tabId="x"/></pivotTables></slicerCacheDefinition>`,
        ]),
        relation(`${MS}/2007/relationships/slicerCache`, "slicerCaches/c.xml"),
      ),
    ),
  ],
  [
    "a formula shared with the whole sheet",
    parts((draw) =>
      changed(
        SHEET,
        'ref="B2:B4" si="0"',
        `ref="${pick(draw, ["A1:XFD1048576", "A0", "", "B4:B2"])}" si="${pick(draw, ["0", "-1", "x"])}"`,
      ),
    ),
  ],
  [
    "shared texts out of order",
    parts((draw) =>
      changed(
        "xl/sharedStrings.xml",
        "<si><t>Head</t></si>",
        pick(draw, ["<si/>", "<si><r/></si>", "<si><t/><t/></si>", "<si><si/></si>", "<t>x</t>"]),
      ),
    ),
  ],
  [
    "bars and signs of bad numbers",
    parts((draw) =>
      changed(
        SHEET,
        '<cfvo type="percent" val="33"/>',
        `<cfvo type="${pick(draw, ["percent", "num", "formula", "x"])}" val="${pick(draw, ["NaN", "-1e99", "))((", ""])}"/>`,
      ),
    ),
  ],
  [
    "a conditional format of a look that is not there",
    parts((draw) => changed(SHEET, 'dxfId="0"', `dxfId="${pick(draw, ["99999", "-1", "x", ""])}"`)),
  ],
  [
    "a number format that is none",
    parts((draw) => changed(STYLES, /formatCode="[^"]*"/, `formatCode="${pick(draw, FORMATS)}"`)),
  ],
  [
    "a sheet or name called as something of a program",
    parts((draw) => changed(BOOK, pick(draw, [/name="Secret"/, /name="Price"/]), `name="${pick(draw, OWN_NAMES)}"`)),
  ],
  [
    "no sheet that is shown",
    parts((draw) =>
      changed(BOOK, /<sheet (?=name="[BC])/g, `<sheet state="${pick(draw, ["hidden", "veryHidden", "x"])}" `),
    ),
  ],
  [
    "a text or a group without end",
    parts((draw) =>
      draw(2) === 0
        ? cell(`<c r="A2" t="str"><v>${"x".repeat(40_000 + draw(100_000))}</v></c>`)
        : changed(SHEET, /outlineLevel="1"/g, `outlineLevel="${pick(draw, ["99", "-1", "x"])}"`),
    ),
  ],
  [
    "days and circles counted in a way that is none",
    parts((draw) => {
      const part = foreignParts();
      const text = strFromU8(part[BOOK]!)
        .replace("<workbookPr ", `<workbookPr date1904="${pick(draw, ["maybe", "2", ""])}" `)
        .replace(
          'iterateCount="7"',
          `iterateCount="${pick(draw, ["1e9", "-1", "x"])}" fullCalcOnLoad="${pick(draw, ["1", "x"])}"`,
        );
      return { ...part, [BOOK]: strToU8(text) };
    }),
  ],
];
