import { strToU8 } from "fflate";
import { OFFICE } from "../foreign-parts";
import { BOOK, type Parts, SHEET } from "./pieces";
import {
  ALL,
  altered,
  type Change,
  cellAt,
  check,
  checks,
  columns,
  everyColumn,
  format,
  formats,
  formulas,
  NEARLY_ALL,
  pictureBetween,
  times,
} from "./wide-pieces";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const NEWER = "http://schemas.microsoft.com/office/spreadsheetml/2009/9/main";
const NEWER_PLACE = "http://schemas.microsoft.com/office/excel/2006/main";
const TABLE = "xl/tables/table1.xml";

const tableOf = (ref: string): Change => [TABLE, /ref="A11:B12"/g, `ref="${ref}"`];
const name = (text: string, called = "Everything"): Change => [
  BOOK,
  "<definedNames>",
  `<definedNames><definedName name="${called}">${text}</definedName>`,
];
const printArea = (text: string): Change => [BOOK, "'Bed 7'!$A$1:$D$12", text];
const added = (uri: string, text: string): Change => [
  SHEET,
  "<extLst>",
  `<extLst><ext uri="{${uri}}" xmlns:x14="${NEWER}">${text}</ext>`,
];

function tables(...refs: string[]): Parts {
  const parts = altered(
    [SHEET, /<tablePart .*\/>(?=<\/tableParts>)/, times(refs.length, (i) => `<tablePart r:id="t${i}"/>`)],
    [
      "xl/worksheets/_rels/sheet1.xml.rels",
      "</Relationships>",
      `${times(refs.length, (i) => `<Relationship Id="t${i}" Type="${OFFICE}/table" Target="../tables/table${i + 1}.xml"/>`)}</Relationships>`,
    ],
  );
  refs.forEach((ref, i) => {
    parts[`xl/tables/table${i + 1}.xml`] = strToU8(
      `<table xmlns="${MAIN}" id="${i + 1}" name="T${i}" displayName="T${i}" ref="${ref}"><autoFilter ref="${ref}"/><tableColumns count="2"><tableColumn id="1" name="Head"/><tableColumn id="2" name="Flow"/></tableColumns></table>`,
    );
  });
  return parts;
}

const allAtOnce: Change[] = [
  tableOf(ALL),
  formats(format(ALL) + format(NEARLY_ALL)),
  checks(check(ALL)),
  columns('<col min="1" max="16384" width="9" style="3"/>'),
  name("'Bed 7'!$1:$1048576"),
  pictureBetween([0, 0], [16383, 1048575]),
  ["xl/comments1.xml", 'ref="A3"', 'ref="XFD1048576"'],
];

export type WideKind = [wrong: string, outcome: "opens" | "refused", parts: () => Parts];

/** Files in which something covers whole sheets. */
export const WIDE: readonly WideKind[] = [
  ["a table over the whole sheet", "opens", () => altered(tableOf(ALL))],
  ["tables over whole columns", "opens", () => tables("A1:B1048576", "C1:D1048576", "E1:F1048576")],
  ["tables that overlap", "opens", () => tables("A11:B12", "B11:C14", ALL, "A11:B12")],
  [
    "a table whose header is a formula",
    "opens",
    () => altered([SHEET, '<c r="A11" t="s"><v>2</v></c>', '<c r="A11" t="str"><f>"He"&amp;"ad"</f><v>Head</v></c>']),
  ],
  [
    "a table of more columns than its place",
    "opens",
    () =>
      altered([
        TABLE,
        /<tableColumns.*<\/tableColumns>/,
        `<tableColumns count="16384">${times(16384, (i) => `<tableColumn id="${i + 1}" name="c${i}"/>`)}</tableColumns>`,
      ]),
  ],
  ["a table of fewer columns than its place", "opens", () => altered(tableOf("A11:XFD12"))],
  [
    "a filter over the whole sheet",
    "opens",
    () =>
      altered(
        [
          SHEET,
          "<protectedRanges",
          `<autoFilter ref="${ALL}"><filterColumn colId="16383"><filters><filter val="7"/></filters></filterColumn><sortState ref="${ALL}"><sortCondition ref="${ALL}"/></sortState></autoFilter><protectedRanges`,
        ],
        name("'Bed 7'!$A$1:$XFD$1048576", "_xlnm._FilterDatabase"),
      ),
  ],
  [
    "a name of every cell",
    "opens",
    () =>
      altered(
        name("'Bed 7'!$A$1:$XFD$1048576"),
        formulas(50, () => "SUM(Everything)"),
      ),
  ],
  ["a format over nearly the whole sheet", "opens", () => altered(formats(format(NEARLY_ALL)))],
  [
    "a format over the whole of a sheet with a far cell",
    "refused",
    () => altered(formats(format(ALL)), cellAt("XFD900")),
  ],
  ["formats of every column", "opens", () => altered(formats(format(everyColumn)))],
  [
    "a thousand formats over the whole sheet",
    "opens",
    () => altered(formats(times(1000, (i) => format(ALL, `A1&gt;${i}`, i + 9)))),
  ],
  ["a format that sums the whole sheet", "opens", () => altered(formats(format(ALL, `SUM($A:$XFD)&gt;A1`)))],
  ["a check over nearly the whole sheet", "opens", () => altered(checks(check(NEARLY_ALL)))],
  ["a check over the whole of a sheet with a far cell", "refused", () => altered(checks(check(ALL)), cellAt("XFD90"))],
  ["checks of every column", "opens", () => altered(checks(check(everyColumn)))],
  ["a thousand checks over the whole sheet", "refused", () => altered(checks(times(1000, (i) => check(ALL, i))))],
  [
    "a check of twenty thousand places",
    "refused",
    () => altered(checks(check(times(20000, (i) => `F${i * 3 + 1}`, " "))), cellAt("F60000")),
  ],
  ["every column with a style", "opens", () => altered(columns('<col min="1" max="16384" width="9" style="3"/>'))],
  [
    "every column one by one",
    "opens",
    () =>
      altered(
        columns(times(16384, (i) => `<col min="${i + 1}" max="${i + 1}" width="${5 + (i % 9)}" style="${i % 6}"/>`)),
      ),
  ],
  [
    "every column again and again",
    "refused",
    () => altered(columns(times(20000, () => '<col min="1" max="16384" width="9" hidden="1"/>'))),
  ],
  ["every column hidden", "opens", () => altered(columns('<col min="1" max="16384" width="9" hidden="1"/>'))],
  [
    "a pivot table over the whole sheet",
    "opens",
    () => altered(["xl/pivotTables/pivotTable1.xml", 'ref="C3:D6"', `ref="${ALL}"`]),
  ],
  ["a print area of the whole sheet", "opens", () => altered(printArea("'Bed 7'!$A$1:$XFD$1048576"))],
  [
    "a print area of thousands of places",
    "opens",
    () => altered(printArea(times(9000, (i) => `'Bed 7'!$A$${i * 2 + 1}`, ","))),
  ],
  [
    "ignored errors over the whole sheet",
    "opens",
    () =>
      altered([
        SHEET,
        "<drawing",
        `<ignoredErrors><ignoredError sqref="${ALL}" numberStoredAsText="1"/></ignoredErrors><drawing`,
      ]),
  ],
  [
    "a protected range of the whole sheet",
    "opens",
    () => altered([SHEET, 'sqref="A2:A4" name="Readings"', `sqref="${ALL}" name="Readings"`]),
  ],
  ["a link over the whole sheet", "opens", () => altered([SHEET, 'ref="C1" location', `ref="${ALL}" location`])],
  [
    "sparklines of the whole sheet",
    "opens",
    () => altered([SHEET, "<xm:sqref>D1</xm:sqref>", `<xm:sqref>${ALL}</xm:sqref>`]),
  ],
  [
    "a newer check over the whole sheet",
    "opens",
    () =>
      altered(
        added(
          "CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF",
          `<x14:dataValidations xmlns:xm="${NEWER_PLACE}" count="1"><x14:dataValidation type="list" allowBlank="1"><x14:formula1><xm:f>'Bed 7'!$A:$XFD</xm:f></x14:formula1><xm:sqref>${ALL}</xm:sqref></x14:dataValidation></x14:dataValidations>`,
        ),
      ),
  ],
  [
    "a newer format over the whole sheet",
    "opens",
    () =>
      altered(
        added(
          "78C0D931-6437-407d-A8EE-F0AAD7539E65",
          `<x14:conditionalFormattings><x14:conditionalFormatting xmlns:xm="${NEWER_PLACE}"><x14:cfRule type="expression" priority="9" id="{1}"><xm:f>A1&gt;25</xm:f><x14:dxf><font><b/></font></x14:dxf></x14:cfRule><xm:sqref>${ALL}</xm:sqref></x14:conditionalFormatting></x14:conditionalFormattings>`,
        ),
      ),
  ],
  [
    "all of that at once",
    "opens",
    () =>
      altered(
        ...allAtOnce,
        formulas(20, () => "SUM(Everything)"),
      ),
  ],
  ["all of that at once and a far cell", "refused", () => altered(...allAtOnce, cellAt("XFD1048576"))],
];
