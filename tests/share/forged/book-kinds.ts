import type { ForgedFile } from "./forged-file";
import type { Forgery } from "./kinds";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const MAIN = "xl/workbook.xml";
const RELS = "xl/_rels/workbook.xml.rels";

const at = (name: string, make: (file: ForgedFile, sheet: string, address: string) => void) => (file: ForgedFile) =>
  make(file, ...file.place(name));

const formulaIn = (name: string, formula: string) =>
  at(name, (file, sheet, address) =>
    file.cell(sheet, address, (tag) => tag.replace(/<f>[^<]*<\/f>/, () => `<f>${formula}</f>`)),
  );

const formulaKind = (name: string, attributes: string) =>
  at(name, (file, sheet, address) => file.cell(sheet, address, (tag) => tag.replace("<f>", `<f ${attributes}>`)));

const carried = (kind: string, part: string) => (file: ForgedFile) =>
  file.related(MAIN, "rId90", `${OFFICE}/${kind}`, part, "<x/>");

const BOOK: readonly (readonly [string, (file: ForgedFile) => void])[] = [
  ["days counted from 1904", (file) => file.inBook("<workbookPr ", '<workbookPr date1904="1" ')],
  ["precision as displayed", (file) => file.inBook("<calcPr ", '<calcPr fullPrecision="0" ')],
  [
    "tabs of sheets not shown",
    (file) => file.inBook("<sheets>", '<bookViews><workbookView showSheetTabs="0"/></bookViews><sheets>'),
  ],
  [
    "a window out of sight",
    (file) => file.inBook("<sheets>", '<bookViews><workbookView visibility="hidden"/></bookViews><sheets>'),
  ],
  [
    "views of its own",
    (file) =>
      file.inBook(
        "</workbook>",
        '<customWorkbookViews><customWorkbookView name="x"/></customWorkbookViews></workbook>',
      ),
  ],
  ["a link to another file", carried("externalLink", "externalLinks/externalLink1.xml")],
  ["a query", carried("connections", "connections.xml")],
  ["live data", carried("volatileDependencies", "volatileDependencies.xml")],
  [
    "macros",
    (file) =>
      file.related(
        MAIN,
        "rId91",
        "http://schemas.microsoft.com/office/2006/relationships/vbaProject",
        "vbaProject.bin",
        "x",
      ),
  ],
  [
    "a sheet of macros",
    (file) => {
      file.related(MAIN, "rId92", `${OFFICE}/xlMacrosheet`, "macrosheets/sheet1.xml", "<x/>");
      file.inBook("</sheets>", '<sheet name="Auto" sheetId="99" r:id="rId92"/></sheets>');
    },
  ],
  [
    "a name that runs on opening",
    (file) =>
      file.inBook("</definedNames>", '<definedName name="_xlnm.Auto_Open">Results!$A$1</definedName></definedNames>'),
  ],
  [
    "a name into another file",
    (file) =>
      file.inBook("</definedNames>", '<definedName name="Elsewhere">[1]Sheet1!$A$1</definedName></definedNames>'),
  ],
  [
    "a name of ours for one sheet only",
    (file) =>
      file.inBook(
        "</definedNames>",
        '<definedName name="Used_CU" localSheetId="4">Results!$A$1</definedName></definedNames>',
      ),
  ],
  [
    "a name of ours twice",
    (file) => file.inBook("</definedNames>", '<definedName name="used_cu">Results!$A$1</definedName></definedNames>'),
  ],
  ["a name of ours elsewhere", (file) => file.inBook(/(<definedName name="Used_CU">)[^<]*/, "$1Results!$$A$$1")],
  [
    "an attribute of another namespace for a sheet's part",
    (file) => {
      file.inBook(/ r:id="(rId\d+)"/, ' xmlns:z="urn:z" z:id="$1"');
    },
  ],
  [
    "a relationship whose type only ends in the right word",
    (file) => file.change(RELS, /Type="[^"]*\/worksheet"/, 'Type="urn:x/worksheet"'),
  ],
  ["two main parts", (file) => file.related("", "rId93", `${OFFICE}/officeDocument`, "xl/other.xml", "<x/>")],
  [
    "two tables of shared texts",
    (file) => file.related(MAIN, "rId94", `${OFFICE}/sharedStrings`, "sharedStrings2.xml", "<sst/>"),
  ],
  [
    "sheets that only some programs read",
    (file) =>
      file.inBook(
        "</workbook>",
        '<mc:AlternateContent xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"><mc:Choice Requires="x15"><definedNames/></mc:Choice></mc:AlternateContent></workbook>',
      ),
  ],
  [
    "cells that only some programs read",
    (file) =>
      file.onSheet(
        "Results",
        "<sheetData>",
        '<sheetData><mc:AlternateContent xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"><mc:Fallback/></mc:AlternateContent>',
      ),
  ],
  [
    "two values in a cell",
    at("Used_CU", (file, sheet, address) => file.cell(sheet, address, (tag) => tag.replace("</v>", "</v><v>92</v>"))),
  ],
  [
    "a value of another namespace",
    at("Used_CU", (file, sheet, address) =>
      file.cell(sheet, address, (tag) => tag.replace("<v>", '<v xmlns="urn:x">')),
    ),
  ],
  ["a number in another notation", at("Used_CU", (file, sheet, address) => file.value(sheet, address, "0x5C"))],
  ["a formula as an array", formulaKind("Used_CU", 't="array" ref="B1:B60"')],
  ["a formula as a data table", formulaKind("Used_CU", 't="dataTable" ref="B7:B7"')],
  ["a formula that fetches from the web", formulaIn("Used_CU", 'WEBSERVICE("https://example.invalid")')],
  ["a formula that asks another program", formulaIn("Used_CU", "cmd|'/c calc'!A0")],
  ["a formula with the figure typed in", formulaIn("Used_CU", "92")],
  [
    "a formula with another bound",
    at("Verdict_CU", (file, sheet, address) => file.cell(sheet, address, (tag) => tag.replace(/&gt;/, "&lt;"))),
  ],
  [
    "a formula typed over",
    at("Used_CU", (file, sheet, address) => file.cell(sheet, address, (tag) => tag.replace(/<f>.*<\/f>/, ""))),
  ],
  ["a figure", at("Used_CU", (file, sheet, address) => file.value(sheet, address, 92))],
  ["a run time", at("Result_Run_Time_min", (file, sheet, address) => file.value(sheet, address, 60))],
  ["a reading", at("Cans_Readings", (file, sheet, address) => file.value(sheet, address, 41))],
  ["the day of the test", at("Test_Date", (file, sheet, address) => file.value(sheet, address, 46000))],
  ["the site", at("Site_Name", (file, sheet, address) => file.text(sheet, address, "Another Nursery"))],
  [
    "a letter of the site that looks the same",
    at("Site_Name", (file, sheet, address) => file.text(sheet, address, "Ex\u0430mple Nursery")),
  ],
  ["a label", (file) => file.text("Results", "A1", "Results, approved")],
  [
    "a limit",
    at("Limit_CU_Text", (file, sheet, address) =>
      file.cell(sheet, address, (tag) => tag.replace(/<f>.*<\/f>/, "").replace(/<v>[^<]*/, "<v>at least 50")),
    ),
  ],
  [
    "the code on the report",
    at("Copy_Code", (file, sheet, address) => file.text(sheet, address, "Code of this copy: 0000 0000 0000 0000.")),
  ],
  [
    "pieces of text with looks of their own",
    at("Site_Name", (file, sheet, address) =>
      file.cell(
        sheet,
        address,
        () =>
          `<c r="${address}" t="inlineStr"><is><r><rPr><color rgb="FFFFFFFF"/></rPr><t>Example</t></r><r><t> Nursery</t></r></is></c>`,
      ),
    ),
  ],
  [
    "a picture in place of a value",
    at("Used_CU", (file, sheet, address) => file.cell(sheet, address, (tag) => tag.replace("<c ", '<c vm="1" '))),
  ],
  [
    "a note that is always open",
    (file) => {
      file.onSheet("Results", "</headerFooter>", `</headerFooter><legacyDrawing xmlns:r="${OFFICE}" r:id="rId95"/>`);
      file.related(
        file.part("Results"),
        "rId95",
        `${OFFICE}/vmlDrawing`,
        "../drawings/vmlDrawing9.vml",
        '<xml xmlns:x="urn:schemas-microsoft-com:office:excel"><x:ClientData ObjectType="Note"><x:Visible/></x:ClientData></xml>',
      );
    },
  ],
  [
    "form controls",
    (file) => {
      file.onSheet("Results", "</headerFooter>", `</headerFooter><legacyDrawing xmlns:r="${OFFICE}" r:id="rId95"/>`);
      file.related(
        file.part("Results"),
        "rId95",
        `${OFFICE}/vmlDrawing`,
        "../drawings/vmlDrawing9.vml",
        '<xml xmlns:x="urn:schemas-microsoft-com:office:excel"><x:ClientData ObjectType="Button"/></xml>',
      );
    },
  ],
  [
    "a chart of other cells",
    (file) =>
      file.change("xl/charts/chart1.xml", /<c:f>[^<]*<\/c:f>(?=<c:numRef|<c:numCache)?/, "<c:f>Cost!$A$1:$A$3</c:f>"),
  ],
  [
    "a chart with another title",
    (file) => file.change("xl/charts/chart1.xml", /<a:t>[^<]*<\/a:t>/, "<a:t>Approved</a:t>"),
  ],
  [
    "a chart on another scale",
    (file) => file.change("xl/charts/chart1.xml", "<c:scaling>", '<c:scaling><c:logBase val="10"/>'),
  ],
  [
    "conditional formats taken away",
    (file) => file.onSheet("Report", /<conditionalFormatting[\s\S]*<\/conditionalFormatting>/, ""),
  ],
  [
    "a conditional format in another colour",
    (file) => file.change("xl/styles.xml", /<bgColor rgb="FF[0-9A-F]{6}"\/>/, '<bgColor rgb="FF123456"/>'),
  ],
];

const sheetLike = (name: string, rows: string) => (file: ForgedFile) => {
  const xml = `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData></worksheet>`;
  file.related(MAIN, "rId96", `${OFFICE}/worksheet`, "worksheets/sheet96.xml", xml);
  file.inBook("</sheets>", `<sheet name="${name}" sheetId="96" r:id="rId96"/></sheets>`);
};
const LIKE: readonly (readonly [string, string])[] = [
  ["a sheet with a Cyrillic letter", "R\u0435port"],
  ["a sheet with a blank behind its name", "Report "],
  ["a second sheet of the name", "Results (2)"],
  ["a sheet with a sign that cannot be seen", "Re\u200bport"],
  ["a sheet named as the last one", "Final report"],
];

const onEvidence = (label: string, column: string, value: string | number) => (file: ForgedFile) => {
  const xml = file.parts.get(file.part("Evidence"))!;
  const row = new RegExp(`<c r="A(\\d+)"[^>]*><is><t[^>]*>${label.replace(/[[\]()]/g, "\\$&")}`).exec(xml)![1]!;
  if (typeof value === "number") file.value("Evidence", `${column}${row}`, value);
  else file.text("Evidence", `${column}${row}`, value);
};
const EVIDENCE: readonly (readonly [string, (file: ForgedFile) => void])[] = [
  ["a figure on Evidence", onEvidence("CU (Christiansen)", "D", 92)],
  ["a limit on Evidence", onEvidence("CU (Christiansen)", "E", "at least 50")],
  ["a definition on Evidence", onEvidence("CU (Christiansen)", "B", "something else")],
  ["the hash", onEvidence("SHA-256", "B", "0".repeat(64))],
  ["the code on Evidence", onEvidence("Code of this copy", "B", "0000 0000 0000 0000")],
  ["the day of the copy in words", onEvidence("Day of the copy", "C", "2020-01-01")],
  ["the version on Evidence", onEvidence("Made with Canfall", "B", "9.9")],
  ["a heading on Evidence", (file) => file.text("Evidence", "A2", "Approved by the authority.")],
  ["a reading on the list alone", onEvidence("Cans_Readings", "D", 41)],
  [
    "a line that takes a figure out of the check",
    (file) => {
      const [sheet, address] = file.place("Used_CU");
      const text = file.parts.get(file.part("Evidence"))!;
      const row = /<c r="A(\d+)"[^>]*><is><t[^>]*>none: all formulas are native ones/.exec(text)![1]!;
      file.onSheet(
        "Evidence",
        new RegExp(`<row r="${row}"[\\s\\S]*?</row>`),
        `<row r="${row}"><c r="A${row}" t="inlineStr"><is><t>${sheet}!${address}</t></is></c><c r="B${row}" t="inlineStr"><is><t>CANFALL.CU.CHRISTIANSEN(Cans_Readings)</t></is></c><c r="D${row}"><v>92</v></c></row>`,
      );
      file.inBook(
        "</definedNames>",
        `<definedName name="Evidence_Formulas">Evidence!$A$${row}:$F$${row}</definedName></definedNames>`,
      );
      file.value(sheet, address, 92);
    },
  ],
  [
    "white text on Evidence",
    (file) =>
      file.look("Evidence", "A3", { font: (font) => font.replace(/(<sz [^>]*\/>)/, '$1<color rgb="FFFFFFFF"/>') }),
  ],
  ["a hidden row on Evidence", (file) => file.onSheet("Evidence", '<row r="3"', '<row hidden="1" r="3"')],
  [
    "text beside Evidence",
    (file) =>
      file.onSheet(
        "Evidence",
        "</sheetData>",
        '<row r="2000"><c r="H2000" t="inlineStr"><is><t>Approved</t></is></c></row></sheetData>',
      ),
  ],
];

const NAMED: readonly (readonly [string, (file: ForgedFile) => void])[] = [
  ["manual calculation", (file) => file.inBook("<calcPr ", '<calcPr calcMode="manual" ')],
  ["formulas that may refer to themselves", (file) => file.inBook("<calcPr ", '<calcPr iterate="1" ')],
  ["a sheet of one's own", sheetLike("My notes", "")],
];

export const BOOK_KINDS: readonly Forgery[] = [
  ...[...BOOK, ...EVIDENCE].map(([kind, make]): Forgery => ({ kind, make })),
  ...LIKE.map(([kind, name]): Forgery => ({ kind, make: sheetLike(name, "") })),
  ...NAMED.map(([kind, make]): Forgery => ({ kind, make, named: true })),
];
