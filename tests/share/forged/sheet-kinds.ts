import type { Forgery } from "./kinds";
import { forgeries, type Kind, OFFICE, sheet } from "./makes";

const view = (attributes: string) => sheet("Results", "<sheetView ", `<sheetView ${attributes} `);
const properties = (attributes: string) => sheet("Results", "<sheetPr>", `<sheetPr ${attributes}>`);

const SHEETS: readonly Kind[] = [
  ["pages shown at 10 % in the layout of pages", view('view="pageLayout" zoomScalePageLayoutView="10"')],
  ["pages shown at 10 % between their breaks", view('view="pageBreakPreview" zoomScaleSheetLayoutView="10"')],
  [
    "a second view of the sheet",
    sheet("Results", "</sheetViews>", '<sheetView workbookViewId="0" showFormulas="1"/></sheetViews>'),
  ],
  ["calculated as another program did", properties('transitionEvaluation="1"')],
  ["conditional formats that no longer follow", properties('enableFormatConditionsCalculation="0"')],
  [
    "rows that are hidden unless listed",
    (file) => {
      file.onSheet("Results", "<sheetFormatPr ", '<sheetFormatPr zeroHeight="1" ');
      file.onSheet("Results", /<row r="12"/, '<row hidden="1" r="12"');
    },
  ],
  [
    "rows a hair high by default",
    sheet("Results", /<sheetFormatPr [^>]*>/, '<sheetFormatPr defaultRowHeight="0.5" customHeight="1"/>'),
  ],
  ["a tall row cut to one line", sheet("Results", '<row r="2" ht="30"', '<row r="2" ht="15"')],
  ["a column too narrow for its numbers", sheet("Results", 'min="2" max="2" width="21"', 'min="2" max="2" width="2"')],
  ["a column half as wide", sheet("Results", 'min="6" max="6" width="34"', 'min="6" max="6" width="22"')],
  [
    "columns a hair wide by default",
    (file) => {
      file.onSheet("Results", /<cols>.*<\/cols>/, "");
      file.onSheet("Results", "<sheetFormatPr ", '<sheetFormatPr defaultColWidth="0.3" ');
    },
  ],
  ["columns listed twice", sheet("Results", "</cols>", '<col min="2" max="2" width="0.1" customWidth="1"/></cols>')],
  ["a text merged away", sheet("Results", '<mergeCell ref="A7:E7"/>', '<mergeCell ref="A6:E7"/>')],
  [
    "a page for each row",
    sheet(
      "Results",
      "</headerFooter>",
      `</headerFooter><rowBreaks count="40" manualBreakCount="40">${Array.from({ length: 40 }, (_, i) => `<brk id="${i + 1}" max="16383" man="1"/>`).join("")}</rowBreaks>`,
    ),
  ],
  ["the code taken from the foot of pages", sheet("Results", /<headerFooter>.*<\/headerFooter>/, "")],
  ["the code at the foot in white", sheet("Results", "&amp;CCanfall", "&amp;C&amp;KFFFFFFCanfall")],
  ["the code at the foot tiny", sheet("Results", "&amp;CCanfall", "&amp;C&amp;1Canfall")],
  [
    "another foot on even pages",
    sheet("Results", "<headerFooter>", '<headerFooter differentOddEven="1"><evenFooter>&amp;CApproved</evenFooter>'),
  ],
  ["another foot on the first page", sheet("Results", /<headerFooter>/, '<headerFooter differentFirst="1">')],
  ["margins of a page's width", sheet("Results", 'left="0.5"', 'left="7"')],
  ["printed in draft", sheet("Results", "<pageSetup ", '<pageSetup draft="1" ')],
  ["printed on tiny paper", sheet("Results", 'paperSize="9"', 'paperSize="9" paperWidth="20mm" paperHeight="20mm"')],
  [
    "a check that takes anything",
    sheet(
      "Results",
      'type="decimal" allowBlank="1" showErrorMessage="1" errorStyle="stop" errorTitle="Please check" error="A number from 0.5 to 1 ."',
      'type="decimal" allowBlank="1" showErrorMessage="1" errorStyle="warning" errorTitle="Approved" error="CU 92.0"',
    ),
  ],
  ["a check with another bound", sheet("Results", "<formula1>0.5</formula1>", "<formula1>0</formula1>")],
  [
    "a check over a figure",
    sheet(
      "Results",
      "</dataValidations>",
      '<dataValidation type="list" sqref="B12"><formula1>"92.0"</formula1></dataValidation></dataValidations>',
    ),
  ],
  [
    "a link with words",
    sheet(
      "Results",
      "<printOptions",
      `<hyperlinks><hyperlink ref="B12" location="Results!A1" tooltip="CU 92.0"/></hyperlinks><printOptions`,
    ),
  ],
  [
    "a link out of the file with words",
    (file) => {
      file.onSheet(
        "Results",
        "<printOptions",
        `<hyperlinks><hyperlink ref="B12" r:id="rId66" tooltip="CU 92.0"/></hyperlinks><printOptions`,
      );
      file.related(file.part("Results"), "rId66", `${OFFICE}/hyperlink`, "https://example.invalid/", "", true);
    },
  ],
  [
    "a conditional format of another program",
    sheet(
      "Results",
      "</headerFooter>",
      '</headerFooter><extLst><ext uri="{78C0D931-6437-407d-A8EE-F0AAD7539E65}" xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"><x14:conditionalFormattings/></ext></extLst>',
    ),
  ],
  [
    "lines in cells",
    sheet(
      "Report",
      "</headerFooter>",
      '</headerFooter><extLst><ext uri="{05C60535-1F16-4fd2-B633-F4F36F0B64E0}" xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"><x14:sparklineGroups/></ext></extLst>',
    ),
  ],
  [
    "a table with headers",
    (file) => {
      file.onSheet("Results", "</headerFooter>", '</headerFooter><tableParts count="1"/>');
      file.related(file.part("Results"), "rId67", `${OFFICE}/table`, "../tables/table1.xml", "<table/>");
    },
  ],
  [
    "a part of another namespace before the cells",
    sheet("Results", "<sheetData>", '<sheetData xmlns="urn:x"><row r="1"/></sheetData><sheetData>'),
  ],
  [
    "two tables of cells",
    sheet("Results", "</sheetData>", '</sheetData><sheetData><row r="12"><c r="B12"><v>92</v></c></row></sheetData>'),
  ],
  [
    "a conditional format that drops its fill",
    (file) => file.change("xl/styles.xml", /(<dxf>[\s\S]*?)<fill>[\s\S]*?<\/fill>/, "$1"),
  ],
];

/** Sheets that show, print or check other than ours. */
export const SHEET_KINDS: readonly Forgery[] = forgeries(SHEETS);
