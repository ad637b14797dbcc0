import type { ForgedFile } from "./forged-file";
import type { Forgery } from "./kinds";
import { accusingNobody, addedSheet, at, forgeries, type Kind, MAIN, OFFICE } from "./makes";

const RELS = "xl/_rels/workbook.xml.rels";

const formulaIn = (name: string, formula: string) =>
  at(name, (file, sheet, address) =>
    file.cell(sheet, address, (tag) => tag.replace(/<f>[^<]*<\/f>/, () => `<f>${formula}</f>`)),
  );

const formulaKind = (name: string, attributes: string) =>
  at(name, (file, sheet, address) => file.cell(sheet, address, (tag) => tag.replace("<f>", `<f ${attributes}>`)));

const carried = (kind: string, part: string) => (file: ForgedFile) =>
  file.related(MAIN, "rId90", `${OFFICE}/${kind}`, part, "<x/>");

const BOOK: readonly Kind[] = [
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

const LIKE: readonly (readonly [string, string])[] = [
  ["a sheet with a Cyrillic letter", "R\u0435port"],
  ["a sheet with a blank behind its name", "Report "],
  ["a second sheet of the name", "Results (2)"],
  ["a sheet with a sign that cannot be seen", "Re\u200bport"],
  ["a sheet named as the last one", "Final report"],
];

const NAMED: readonly Kind[] = [
  ["manual calculation", (file) => file.inBook("<calcPr ", '<calcPr calcMode="manual" ')],
  ["formulas that may refer to themselves", (file) => file.inBook("<calcPr ", '<calcPr iterate="1" ')],
  ["a sheet of one's own", addedSheet("My notes", "<sheetData/>")],
];

export const BOOK_KINDS: readonly Forgery[] = [
  ...forgeries(BOOK),
  ...forgeries(LIKE.map(([kind, name]): Kind => [kind, addedSheet(name, "<sheetData/>")])),
  ...accusingNobody(NAMED),
];
