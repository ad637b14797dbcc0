import type { CellLook } from "./forged-file";
import type { Forgery } from "./kinds";
import {
  accusingNobody,
  addedSheet,
  book,
  both,
  forgeries,
  type Kind,
  look,
  type Make,
  OFFICE,
  part,
  sheet,
} from "./makes";

const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";
const STRICT = "http://purl.oclc.org/ooxml/spreadsheetml/main";
const STYLES = "xl/styles.xml";
const CORE = "docProps/core.xml";

const lookAt =
  (name: string, address: string, change: CellLook): Make =>
  (file) =>
    file.look(name, address, change);
const cell =
  (name: string, address: string, change: (tag: string) => string): Make =>
  (file) =>
    file.cell(name, address, change);
const longer =
  (more: string): ((tag: string) => string) =>
  (tag) =>
    tag.replace("</v>", () => `${more}</v>`);
const font = (xml: string): CellLook => ({ font: (own) => own.replace("</font>", `${xml}</font>`) });
const named = (name: string): CellLook => ({
  font: (own) => own.replace(/<name [^>]*\/>/, `<name val="${name}"/>`),
});
/** Changes the look that was put last on the list. */
const lastLook = (from: RegExp, to: string): Make => {
  const last = new RegExp(`${from.source}((?:(?!<xf ).)*</cellXfs>)`);
  return (file) => file.change(STYLES, last, to);
};

const CELLS: readonly Kind[] = [
  [
    "a word of the workbook in place of a figure that is not given",
    cell("Pots", "G12", (tag) => tag.replace(/<v>[^<]*/, "<v>within")),
  ],
  ["a text pushed out of its cell by empty lines behind it", cell("Results", "A2", longer("\n".repeat(9)))],
  ["a label pushed out of its cell by empty lines", (file) => file.text("Results", "A1", `Results${"\n".repeat(9)}`)],
  ["a format that puts words into an empty answer", lookAt("Cost", "H87", { format: "0;0;0;&quot;all good&quot;@" })],
  [
    "words by a format far beside the cells",
    both(
      sheet("Results", "</row>", '<c r="H1" s="0" t="str"><v></v></c></row>'),
      lookAt("Results", "H1", { format: "@&quot; approved&quot;" }),
    ),
  ],
  [
    "a button of a pivot table over a figure",
    both(look("Used_CU", { align: 'horizontal="right"' }), lastLook(/<xf ([^>]*>)/, '<xf pivotButton="1" $1$2')),
  ],
  [
    "formulas hidden from the line above the sheet",
    both(
      look("Used_CU", { align: 'horizontal="right"' }),
      lastLook(/<xf ([^>]*>)(<alignment [^>]*>)<\/xf>/, '<xf $1$2<protection hidden="1"/></xf>$3'),
    ),
  ],
  ["letters drawn hollow", look("Used_CU", font("<outline/>"))],
  ["letters drawn with a shadow", look("Used_CU", font("<shadow/>"))],
  ["a list of fonts, of which the second is of signs", look("Used_CU", named("Menlo;Marlett"))],
  ["a font whose lines are taller than its row", look("Used_CU", named("Cambria Math"))],
  ["digits of another script by the name of a language", look("Used_CU", { format: "[$-th-TH,D00]0.0" })],
  ["a day by the calendar of a named language", look("Test_Date", { format: "[$-ar-SA]yyyy\\-mm\\-dd" })],
  ["a day in the form of each machine, by its name", look("Test_Date", { format: "[$-x-sysdate]yyyy\\-mm\\-dd" })],
  ["white text by the number of a colour in a format", look("Used_CU", { format: "[Color2]0.0" })],
  ["a nought shown as FALSE", cell("Cost", "C41", (tag) => tag.replace("<c ", '<c t="b" '))],
  ["a picture in place of an answer that is empty", cell("Cost", "H87", (tag) => tag.replace("<c ", '<c vm="1" '))],
  [
    "a thick line laid on by a conditional format",
    (file) => {
      const thick = '<border><left style="thick"><color rgb="FF000000"/></left></border>';
      file.change(STYLES, /(<dxf>(?:(?!<\/dxf>).)*?<\/fill>)(<\/dxf>)/g, `$1${thick}$2`);
    },
  ],
];

const SHEETS: readonly Kind[] = [
  [
    "a row listed twice, the first time hidden",
    sheet("Results", /<row r="12" /, '<row r="12" hidden="1"/><row r="12" '),
  ],
  [
    "columns of a hair by the width that others follow",
    (file) => {
      file.onSheet("Heads", /<sheetFormatPr /, '<sheetFormatPr baseColWidth="0" ');
      file.onSheet("Heads", /<col [^>]* width="[1-9]"[^>]*\/>/g, "");
    },
  ],
  ["columns in the namespace of another form of the file", sheet("Results", "<cols>", `<cols xmlns="${STRICT}">`)],
  [
    "a line far beside the cells, for which pages shrink",
    both(
      sheet("Results", "</row>", '<c r="ZZ1" s="0"/></row>'),
      lookAt("Results", "ZZ1", { border: '<border><left style="hair"/><right/><top/><bottom/><diagonal/></border>' }),
    ),
  ],
  [
    "white paper far below, for which the page shrinks",
    both(
      sheet("Results", "</sheetData>", '<row r="9000"><c r="A9000" s="0"/></row></sheetData>'),
      lookAt("Results", "A9000", {
        fill: '<fill><patternFill patternType="solid"><fgColor rgb="FFFFFFFF"/></patternFill></fill>',
      }),
    ),
  ],
  ["a check that only warns", sheet("Results", 'errorStyle="stop"', 'errorStyle="warning"')],
  ["a check that says nothing", sheet("Results", 'showErrorMessage="1" ', "")],
  [
    "a sheet of one's own with the labels of the figures",
    (file) => {
      const texts = [...file.parts.get("xl/sharedStrings.xml")!.matchAll(/<si><t[^>]*>([^<]{12,60})<\/t>/g)]
        .map(([, text]) => text!)
        .slice(0, 160)
        .filter((_, index) => index % 8 === 0);
      const rows = texts.map(
        (text, i) =>
          `<row r="${i + 4}"><c r="C${i + 4}" t="inlineStr"><is><t>${text}</t></is></c><c r="D${i + 4}"><v>92</v></c></row>`,
      );
      addedSheet("Summary", `<sheetData>${rows.join("")}</sheetData>`)(file);
    },
  ],
];

const FILES: readonly Kind[] = [
  ["days of another calendar by a setting of the file", book("<workbookPr ", '<workbookPr dateCompatibility="0" ')],
  [
    "a window of a few points",
    book("<sheets>", '<bookViews><workbookView windowWidth="300" windowHeight="300"/></bookViews><sheets>'),
  ],
  [
    "a window that cannot be scrolled",
    book("<sheets>", '<bookViews><workbookView showHorizontalScroll="0" showVerticalScroll="0"/></bookViews><sheets>'),
  ],
  [
    "a name that fetches from the web",
    book(
      "</definedNames>",
      '<definedName name="Fetched">WEBSERVICE("https://example.invalid")</definedName></definedNames>',
    ),
  ],
  ["a name of ours that moves with the cell that asks", book(/(<definedName name="Used_CU">Results!)\$B\$/, "$1B")],
  [
    "a rule on a sheet of one's own that fetches from the web",
    addedSheet(
      "My notes",
      '<sheetData/><dataValidations><dataValidation type="custom" sqref="A1"><formula1>WEBSERVICE("https://example.invalid")</formula1></dataValidation></dataValidations>',
    ),
  ],
  [
    "a picture that is fetched when the file is opened",
    (file) => {
      addedSheet("Photos", `<sheetData/><drawing xmlns:r="${OFFICE}" r:id="rId1"/>`)(file);
      const drawing = '<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"/>';
      file.related("xl/worksheets/sheet96.xml", "rId1", `${OFFICE}/drawing`, "../drawings/drawing96.xml", drawing);
      file.related("xl/drawings/drawing96.xml", "rId1", `${OFFICE}/image`, "https://example.invalid/1.png", "", true);
    },
  ],
  ["looks in the namespace of another form of the file", part(STYLES, "<fonts ", `<fonts xmlns="${STRICT}" `)],
  [
    "the code of another copy in the file's properties",
    part(CORE, "<dc:title></dc:title>", "<dc:title>Canfall 0123 4567 89ab cdef</dc:title>"),
  ],
];

const NAMED: readonly Kind[] = [
  ["words in the file's properties", part(CORE, "<dc:title></dc:title>", "<dc:title>Approved: CU 92.0</dc:title>")],
  [
    "a file marked as final",
    (file) =>
      file.related(
        "",
        "rId77",
        `${OFFICE}/custom-properties`,
        "docProps/custom.xml",
        '<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/custom-properties" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes"><property fmtid="{D5CDD505-2E9C-101B-9397-08002B2CF9AE}" pid="2" name="_MarkAsFinal"><vt:bool>true</vt:bool></property></Properties>',
      ),
  ],
  [
    "words in the question whether to open it for reading",
    book(
      "<workbookPr ",
      '<fileSharing readOnlyRecommended="1" userName="The authority, which approved it"/><workbookPr ',
    ),
  ],
  [
    "a signature that nobody checked",
    (file) => file.related("", "rId78", `${PACKAGE}/digital-signature/origin`, "_xmlsignatures/origin.sigs", ""),
  ],
  ["columns on pages of their own, no longer fitted to one", sheet("Report", ' fitToPage="1"', "")],
  ["columns called by numbers", book("<calcPr ", '<calcPr refMode="R1C1" ')],
];

/** A fifth round, tried on 29 November 2026. */
export const FIFTH_KINDS: readonly Forgery[] = [
  ...forgeries([...CELLS, ...SHEETS, ...FILES]),
  ...accusingNobody(NAMED),
];
