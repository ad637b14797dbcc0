import type { Forgery } from "./kinds";
import { book, both, colour, font, forgeries, type Kind, look, lookAt, part, rowOf, sheet } from "./makes";

const STYLES = "xl/styles.xml";

const NOTATIONS: readonly Kind[] = [
  ["a row hidden by a flag of 2", sheet("Results", /<row r="12" /, '<row r="12" hidden="2" ')],
  ["a row hidden by a flag in one letter", sheet("Results", /<row r="12" /, '<row r="12" hidden="t" ')],
  [
    "a column hidden by a flag of two digits",
    sheet("Results", '<col min="2" max="2" width="21"', '<col min="2" max="2" width="21" hidden="01"'),
  ],
  ["zeros not shown by a flag of three letters", sheet("Results", "<sheetView ", '<sheetView showZeros="off" ')],
  ["zeros not shown by a flag of two digits", sheet("Results", "<sheetView ", '<sheetView showZeros="00" ')],
  ["a number with letters behind it as the height of a row", rowOf("Results", 12, 'ht="1x"')],
  ["a number with letters behind it as the size of a text", look("Used_CU", font(/<sz [^>]*\/>/, '<sz val="1x"/>'))],
  ["a number with letters behind it as a theme's colour", look("Used_CU", colour('theme="0x"'))],
  ["a number with letters behind it as a tint", look("Used_CU", colour('rgb="FF000000" tint="0.99x"'))],
  ["a colour with letters behind it", look("Used_CU", colour('rgb="FFFFFFx000000"'))],
  ["a strike by a flag of 2", look("Used_CU", font("</font>", '<strike val="2"/></font>'))],
  [
    "a column of a hair whose number has letters behind it",
    sheet("Results", '<col min="2" max="2" width="21"', '<col min="2x" max="2x" width="0.1"'),
  ],
  ["days from 1904 by a flag of 2", book("<workbookPr ", '<workbookPr date1904="2" ')],
  [
    "a format listed again with a nought before its number",
    (file) => {
      const id = /numFmtId="(\d+)" formatCode="0.0"/.exec(file.parts.get(STYLES)!)![1]!;
      file.change(STYLES, "</numFmts>", `<numFmt numFmtId="0${id}" formatCode="&quot;92.0&quot;"/></numFmts>`);
    },
  ],
  [
    "printed at 10 % by a number with letters behind it",
    both(
      sheet("Results", 'fitToPage="1"', 'fitToPage="0"'),
      sheet("Results", "<pageSetup ", '<pageSetup scale="10x" '),
    ),
  ],
  [
    "the rows of a sheet hidden where they are not listed, by a flag of 2",
    sheet("Results", "<sheetFormatPr ", '<sheetFormatPr zeroHeight="2" '),
  ],
];

const CELLS: readonly Kind[] = [
  ["a limit as a number, by a formula with a list of values", (file) => file.value("Limits", "E49", 70)],
  ["a nought that is left out", (file) => file.cell("Cost", "F99", (tag) => tag.replace(/<v>0<\/v>/, ""))],
  [
    "a long text in a line of its own broken into lines that its row has no room for",
    lookAt("Report", "A1", { align: 'wrapText="1"' }),
  ],
  [
    "a sentence moved to the right, out of the sheet's left edge",
    lookAt("Results", "A1", { align: 'horizontal="right"' }),
  ],
  [
    "a label at the end of its cell, so that its head is cut off",
    lookAt("Results", "A12", { align: 'horizontal="right"' }),
  ],
  [
    "a thick line on the cell beside a figure",
    both(
      sheet("Results", /(<row r="8"[^>]*>.*?)<\/row>/, '$1<c r="G8" s="0"/></row>'),
      lookAt("Results", "G8", { border: '<border><left style="thick"/><right/><top/><bottom/><diagonal/></border>' }),
    ),
  ],
  [
    "a line across an empty cell over which a text runs",
    both(
      sheet("Results", /(<row r="1" .*?)<\/row>/, '$1<c r="G1" s="0"/></row>'),
      lookAt("Results", "G1", {
        border: '<border diagonalUp="1"><left/><right/><top/><bottom/><diagonal style="thick"/></border>',
      }),
    ),
  ],
  [
    "a thick line on a covered cell of merged ones",
    lookAt("Results", "F2", {
      border: '<border><left style="thick"/><right style="thick"/><top/><bottom/><diagonal/></border>',
    }),
  ],
  [
    "black behind a row by a flag in words",
    (file) => {
      file.change(
        STYLES,
        "</fills>",
        '<fill><patternFill patternType="solid"><fgColor rgb="FF000000"/></patternFill></fill></fills>',
      );
      const count = /<fills[\s\S]*<\/fills>/.exec(file.parts.get(STYLES)!)![0].match(/<fill>/g)!.length - 1;
      file.change(
        STYLES,
        "</cellXfs>",
        `<xf numFmtId="0" fontId="0" fillId="${count}" borderId="0" xfId="0"/></cellXfs>`,
      );
      const style = /<cellXfs[\s\S]*<\/cellXfs>/.exec(file.parts.get(STYLES)!)![0].match(/<xf /g)!.length - 1;
      file.change(STYLES, /<(fonts|fills|borders|cellXfs|numFmts) count="\d+"/, "<$1");
      file.onSheet("Results", '<row r="8"', `<row r="8" s="${style}" customFormat="true"`);
    },
  ],
  ["letters drawn hollow by a conditional format", part(STYLES, /<dxf><font>/g, "<dxf><font><outline/>")],
  ["a shadow by a conditional format", part(STYLES, /<dxf><font>/g, "<dxf><font><shadow/>")],
  ["conditional formats with one order number", sheet("Report", /priority="\d+"/g, 'priority="1"')],
  [
    "a number format of each country with a code of its own",
    (file) => {
      const [name, address] = file.place("Used_CU");
      file.look(name, address, { format: "0.0" });
      file.change(STYLES, /numFmtId="9\d\d"( applyNumberFormat="1"[^>]*>(?:(?!<xf ).)*<\/cellXfs>)/, 'numFmtId="37"$1');
      file.change(STYLES, "</numFmts>", '<numFmt numFmtId="37" formatCode="0.0"/></numFmts>');
    },
  ],
  [
    "a font whose theme has signs for some countries",
    part("xl/theme/theme1.xml", /<a:font script="Jpan"[^>]*\/>/g, '<a:font script="Jpan" typeface="Wingdings"/>'),
  ],
];

/** A sixth round, tried on 29 November 2026: how looks and settings are written, and cells. */
export const SIXTH_KINDS: readonly Forgery[] = forgeries([...NOTATIONS, ...CELLS]);
