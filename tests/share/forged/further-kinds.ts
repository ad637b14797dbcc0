import type { CellLook } from "./forged-file";
import type { Forgery } from "./kinds";
import { book, both, COMPATIBLE, forgeries, type Kind, look, type Make, part, sheet } from "./makes";

const lookAt =
  (name: string, address: string, change: CellLook): Make =>
  (file) =>
    file.look(name, address, change);
const dxf = (from: string | RegExp, to: string) => part("xl/styles.xml", from, to);
const theme = (dark: string): Make =>
  both(
    part("xl/theme/theme1.xml", /<a:dk1>[\s\S]*?<\/a:dk1>/, `<a:dk1>${dark}</a:dk1>`),
    look("Used_CU", { font: coloured('<color theme="1"/>') }),
  );
const coloured = (xml: string) => (font: string) =>
  font.replace(/<color[^>]*\/>/, "").replace(/(<sz [^>]*\/>)/, `$1${xml}`);
const footer = (words: string) => sheet("Results", "&amp;CCanfall", `&amp;C${words}Canfall`);
const BLACK = '<fill><patternFill patternType="solid"><fgColor rgb="FF000000"/></patternFill></fill>';

const LOOKS: readonly Kind[] = [
  ["a format on a reading inside the table of cans", lookAt("Cans", "H8", { format: "&quot;44&quot;" })],
  [
    "white text on a reading inside the table of cans",
    lookAt("Cans", "H8", { font: coloured('<color rgb="FFFFFFFF"/>') }),
  ],
  ["a format with blanks that the column cannot hold", look("Used_CU", { format: `0.0&quot;${" ".repeat(60)}&quot;` })],
  ["a format with gaps that the column cannot hold", look("Used_CU", { format: `0.0${"_W".repeat(40)}` })],
  [
    "a day in the order of each country",
    both(look("Test_Date", { format: "0" }), dxf(/(<xf [^>]*)numFmtId="9\d\d"/, '$1numFmtId="14"')),
  ],
  [
    "a colour given twice, of which programs read one",
    look("Used_CU", { font: coloured('<color rgb="FF000000" theme="0"/>') }),
  ],
  ["a colour that is automatic and white", look("Used_CU", { font: coloured('<color auto="1" theme="0"/>') })],
  [
    "the theme's dark colour made light by a change",
    theme('<a:srgbClr val="000000"><a:lumOff val="100000"/></a:srgbClr>'),
  ],
  ["the theme's dark colour by hue", theme('<a:hslClr hue="0" sat="0" lum="100000"/>')],
  ["the theme's dark colour as the system's marked text", theme('<a:sysClr val="highlightText" lastClr="000000"/>')],
  [
    "an ink-coloured cell beside, under a text that runs on",
    (file) => {
      file.onSheet("Start", "</sheetData>", '<row r="901"/></sheetData>');
      file.look("Results", "C5", { fill: BLACK });
    },
  ],
  ["a merged block of empty cells beside", sheet("Results", "</mergeCells>", '<mergeCell ref="G2:H2"/></mergeCells>')],
  [
    "an empty text beside",
    sheet("Cost", /<c r="H12"[^>]*\/>|(?=<\/row><row r="13")/, '<c r="H12" t="str"><v></v></c>'),
  ],
];

const RULES: readonly Kind[] = [
  [
    "a conditional format of the map with a pattern in it",
    dxf(
      /(<dxf><font>(?:(?!<\/dxf>).)*?)<patternFill patternType="solid">/,
      '$1<patternFill patternType="darkGray"><fgColor rgb="FF000000"/>',
    ),
  ],
  [
    "a conditional format with colours that run over",
    dxf(
      /(<dxf>(?:(?!<\/dxf>).)*?)<fill><patternFill[^>]*>.*?<\/patternFill><\/fill>/,
      '$1<fill><gradientFill><stop position="0"><color rgb="FF000000"/></stop><stop position="1"><color rgb="FF000000"/></stop></gradientFill></fill>',
    ),
  ],
  ["a conditional format that makes text tiny", dxf(/<dxf><font>/g, '<dxf><font><sz val="1"/>')],
  ["a conditional format in a font of signs", dxf(/<dxf><font>/g, '<dxf><font><name val="Wingdings"/>')],
  ["a conditional format that raises text", dxf(/<dxf><font>/g, '<dxf><font><vertAlign val="superscript"/>')],
  [
    "a conditional format that turns text",
    dxf(/<dxf>(<font>.*?<\/font>)(<fill>.*?<\/fill>)/g, '<dxf>$1$2<alignment textRotation="90"/>'),
  ],
  [
    "rules of the map in another order",
    (file) => {
      file.onSheet("Report", 'priority="1"', 'priority="900"');
      file.onSheet("Report", 'priority="2"', 'priority="1"');
    },
  ],
  [
    "rules of the map that look at the row above",
    sheet(
      "Report",
      /<conditionalFormatting sqref="E12:X41"><cfRule type="expression" dxfId="51"/,
      '<conditionalFormatting sqref="E11:X41"><cfRule type="expression" dxfId="51"',
    ),
  ],
  [
    "a rule of the map in two blocks, of which one looks elsewhere",
    sheet(
      "Report",
      /<conditionalFormatting sqref="E12:X41">(<cfRule type="expression" dxfId="51".*?<\/conditionalFormatting>)/,
      '<conditionalFormatting sqref="E12">$1<conditionalFormatting sqref="F12:X12 E13:X41">$1',
    ),
  ],
  ["a rule that stops those behind it", sheet("Report", /priority="2"/, 'priority="2" stopIfTrue="1"')],
];

const SHEETS: readonly Kind[] = [
  [
    "a column hidden for some programs only",
    sheet(
      "Results",
      "</cols>",
      `<mc:AlternateContent xmlns:mc="${COMPATIBLE}"><mc:Choice Requires="x14ac"><col min="2" max="2" width="0" hidden="1"/></mc:Choice></mc:AlternateContent></cols>`,
    ),
  ],
  [
    "a view inside a part of another namespace",
    sheet(
      "Results",
      /<sheetViews>(.*?)<\/sheetViews>/,
      `<sheetViews xmlns:z="urn:z" xmlns:mc2="${COMPATIBLE}" mc2:Ignorable="z" mc2:ProcessContent="z:w"><z:w><sheetView workbookViewId="0" showFormulas="1"/></z:w>$1</sheetViews>`,
    ),
  ],
  [
    "a page for each column",
    sheet(
      "Results",
      "</headerFooter>",
      `</headerFooter><colBreaks count="5" manualBreakCount="5">${[1, 2, 3, 4, 5].map((id) => `<brk id="${id}" max="1048575" man="1"/>`).join("")}</colBreaks>`,
    ),
  ],
  ["margins of two inches on all sides", sheet("Results", 'left="0.5" right="0.5"', 'left="2" right="2"')],
  ["a column a fifth narrower", sheet("Results", 'min="2" max="2" width="21"', 'min="2" max="2" width="17"')],
  [
    "a sheet given the content of another kind",
    part(
      "[Content_Types].xml",
      /(PartName="\/xl\/worksheets\/sheet5\.xml" ContentType="[^"]*)worksheet\+xml/,
      "$1chartsheet+xml",
    ),
  ],
  ["a part that says it is in another encoding", sheet("Results", 'encoding="UTF-8"', 'encoding="UTF-16"')],
  ["columns measured by the font of the normal style", dxf(/(<cellStyleXfs[^>]*><xf numFmtId="0" fontId=")0"/, '$19"')],
  ["a rule for a million rows", sheet("Report", 'sqref="E12:X41"', 'sqref="A1:XFD1048576"')],
  ["printed on an envelope", sheet("Report", 'paperSize="9"', 'paperSize="38"')],
  ["the foot of pages moved over the figures", sheet("Results", 'footer="0.3"', 'footer="6"')],
  ["the foot of pages pushed up by empty lines", footer("\n".repeat(50))],
  ["the foot of pages in a font of signs", footer("&amp;&quot;Wingdings,Regular&quot;")],
  ["the foot of pages in huge letters", footer("&amp;200")],
  ["tabs of sheets squeezed away", book("<sheets>", '<bookViews><workbookView tabRatio="0"/></bookViews><sheets>')],
  [
    "a window far off the screen",
    book("<sheets>", '<bookViews><workbookView xWindow="-90000" yWindow="-90000"/></bookViews><sheets>'),
  ],
  ["a row so tall that others are pushed away", sheet("Results", /<row r="8"/, '<row ht="409" customHeight="1" r="8"')],
  ["an error title on typing", sheet("Results", 'errorTitle="Please check"', 'errorTitle="Approved: CU 92.0"')],
];

/** A third round: looks, rules of looks, and sheets. */
export const FURTHER_KINDS: readonly Forgery[] = forgeries([...LOOKS, ...RULES, ...SHEETS]);
