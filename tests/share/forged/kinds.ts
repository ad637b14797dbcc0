import type { CellLook, ForgedFile } from "./forged-file";

/** A way to forge a copy. */
export interface Forgery {
  kind: string;
  make: (file: ForgedFile) => void;
  /** It is named, and accuses nobody. */
  named?: true;
  /** Changes the packed file. */
  packed?: (file: Uint8Array) => Uint8Array;
}

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const colour = (xml: string) => (font: string) =>
  font.replace(/<color[^>]*\/>/, "").replace(/(<sz [^>]*\/>)/, `$1${xml}`);
const within = (xml: string) => (font: string) =>
  font.replace("<font>", `<font>${xml}`).replace("<font/>", `<font>${xml}</font>`);
const solid = (rgb: string) => `<fill><patternFill patternType="solid"><fgColor rgb="${rgb}"/></patternFill></fill>`;

const LOOKS: readonly (readonly [string, CellLook])[] = [
  ["a format that says another number", { format: "&quot;92.0&quot;" }],
  ["a format that shows nothing", { format: ";;;" }],
  ["a format that counts in thousands", { format: "0.0," }],
  ["a format that shows the number as a share", { format: "0.0%" }],
  [
    "a format whose words take the place of a number",
    { format: "&quot;within&quot;;&quot;within&quot;;&quot;within&quot;;@" },
  ],
  ["a format that colours white", { format: "[White]0.0;[White]-0.0;[White]0;[White]@" }],
  ["a format with another sign in front", { format: "&quot;9&quot;0.0;&quot;9&quot;-0;0;&quot;not &quot;@" }],
  ["white text", { font: colour('<color rgb="FFFFFFFF"/>'), fill: solid("FFFFFFFF") }],
  ["white text by the theme", { font: colour('<color theme="0"/>'), fill: solid("FFFFFFFF") }],
  ["nearly white text", { font: colour('<color rgb="FFF4F4F4"/>'), fill: solid("FFFFFFFF") }],
  ["text tinted to nothing", { font: colour('<color theme="1" tint="0.97"/>'), fill: solid("FFFFFFFF") }],
  ["white text by number", { font: colour('<color indexed="9"/>'), fill: solid("FFFFFFFF") }],
  ["a fill of the text's colour", { font: colour('<color rgb="FF000000"/>'), fill: solid("FF000000") }],
  ["tiny text", { font: (font) => font.replace(/<sz [^>]*\/>/, '<sz val="1"/>') }],
  ["huge text", { font: (font) => font.replace(/<sz [^>]*\/>/, '<sz val="72"/>') }],
  ["text struck out", { font: within("<strike/>") }],
  ["raised text", { font: (font) => font.replace("</font>", '<vertAlign val="superscript"/></font>') }],
  ["a font of signs", { font: (font) => font.replace(/<name [^>]*\/>/, '<name val="Wingdings"/>') }],
  ["turned text", { align: 'textRotation="90"' }],
  ["text moved out of sight", { align: 'horizontal="left" indent="40"' }],
  ["filling alignment", { align: 'horizontal="fill"' }],
  [
    "a line across",
    {
      border:
        '<border diagonalUp="1" diagonalDown="1"><left/><right/><top/><bottom/><diagonal style="thick"><color rgb="FF000000"/></diagonal></border>',
    },
  ],
  [
    "a pattern behind",
    { fill: '<fill><patternFill patternType="darkGray"><fgColor rgb="FF000000"/></patternFill></fill>' },
  ],
  [
    "a run of colours behind",
    {
      fill: '<fill><gradientFill><stop position="0"><color rgb="FF000000"/></stop><stop position="1"><color rgb="FF000000"/></stop></gradientFill></fill>',
    },
  ],
];

const FIGURES = ["Used_CU", "Result_Run_Time_min", "Used_SC_Can"];

const looks = LOOKS.flatMap(([what, look]) =>
  FIGURES.map(
    (name): Forgery => ({
      kind: `${what}, on ${name}`,
      make: (file) => file.look(...file.place(name), look),
    }),
  ),
);

const onRow = (row: number, attributes: string) => (file: ForgedFile, sheet: string) =>
  file.onSheet(
    sheet,
    new RegExp(`<row r="${row}"(?: [a-z:]+="[^"]*")*?(?= ?/?>)`, "i"),
    `<row r="${row}" ${attributes}`,
  );
const onColumn = (attributes: string) => (file: ForgedFile, sheet: string) =>
  file.onSheet(sheet, /<cols>.*<\/cols>/, `<cols><col min="1" max="30" ${attributes}/></cols>`);

const HIDDEN: readonly (readonly [string, (file: ForgedFile, sheet: string) => void])[] = [
  ["a hidden row", onRow(8, 'hidden="1"')],
  ["a tiny row", onRow(8, 'ht="1" customHeight="1"')],
  ["a row in a group", onRow(8, 'outlineLevel="1"')],
  ["a hidden column", onColumn('width="0" hidden="1" customWidth="1"')],
  ["a tiny column", onColumn('width="0.5" customWidth="1"')],
  ["a column in a group", onColumn('width="20" customWidth="1" outlineLevel="1" collapsed="1"')],
  [
    "a filter",
    (file, sheet) =>
      file.behind(
        sheet,
        "sheetProtection",
        '<autoFilter ref="A4:B20"><filterColumn colId="0"><filters><filter val="x"/></filters></filterColumn></autoFilter>',
      ),
  ],
  [
    "cells merged over figures",
    (file, sheet) => file.onSheet(sheet, "</mergeCells>", '<mergeCell ref="B8:C9"/></mergeCells>'),
  ],
  ["formulas shown", (file, sheet) => file.onSheet(sheet, "<sheetView ", '<sheetView showFormulas="1" ')],
  ["zeros not shown", (file, sheet) => file.onSheet(sheet, "<sheetView ", '<sheetView showZeros="0" ')],
  ["shown from right to left", (file, sheet) => file.onSheet(sheet, "<sheetView ", '<sheetView rightToLeft="1" ')],
  ["shown at 10 %", (file, sheet) => file.onSheet(sheet, "<sheetView ", '<sheetView zoomScale="10" ')],
  [
    "frozen below the figures",
    (file, sheet) =>
      file.onSheet(
        sheet,
        /<sheetView [^>]*\/>/,
        '<sheetView topLeftCell="A30" workbookViewId="0"><pane ySplit="2" topLeftCell="A40" state="frozen"/></sheetView>',
      ),
  ],
  [
    "printed at 10 %",
    (file, sheet) => {
      file.onSheet(sheet, 'fitToPage="1"', 'fitToPage="0"');
      file.onSheet(sheet, "<pageSetup ", '<pageSetup scale="10" ');
    },
  ],
  [
    "words in the header",
    (file, sheet) =>
      file.onSheet(sheet, "<headerFooter>", "<headerFooter><oddHeader>&amp;CApproved: CU 92.0</oddHeader>"),
  ],
  ["words in the footer", (file, sheet) => file.onSheet(sheet, "&amp;CCanfall", "&amp;CCU 92.0 Canfall")],
  ["another code at the foot", (file, sheet) => file.onSheet(sheet, /Canfall [0-9a-f]{4}/, "Canfall 0000")],
  [
    "a conditional format that is always on",
    (file, sheet) => {
      file.change("xl/styles.xml", "</dxfs>", '<dxf><font><color rgb="FFFFFFFF"/></font></dxf></dxfs>');
      file.onSheet(
        sheet,
        "<printOptions",
        '<conditionalFormatting sqref="B5:C20"><cfRule type="expression" dxfId="0" priority="1"><formula>TRUE</formula></cfRule></conditionalFormatting><printOptions',
      );
    },
  ],
  [
    "bars laid over figures",
    (file, sheet) =>
      file.onSheet(
        sheet,
        "<printOptions",
        '<conditionalFormatting sqref="B5:C20"><cfRule type="dataBar" priority="1"><dataBar><cfvo type="min"/><cfvo type="max"/><color rgb="FF000000"/></dataBar></cfRule></conditionalFormatting><printOptions',
      ),
  ],
  [
    "a text box over figures",
    (file, sheet) =>
      drawing(
        file,
        sheet,
        '<xdr:sp><xdr:nvSpPr><xdr:cNvPr id="2" name="x"/><xdr:cNvSpPr/></xdr:nvSpPr><xdr:spPr/><xdr:txBody><a:p><a:r><a:t>92.0</a:t></a:r></a:p></xdr:txBody></xdr:sp>',
      ),
  ],
  ["a picture over figures", (file, sheet) => drawing(file, sheet, "<xdr:pic/>")],
  [
    "a note on choosing a cell",
    (file, sheet) =>
      file.onSheet(
        sheet,
        "<printOptions",
        '<dataValidations><dataValidation type="any" showInputMessage="1" promptTitle="CU" prompt="92.0" sqref="B8"/></dataValidations><printOptions',
      ),
  ],
  [
    "a picture behind",
    (file, sheet) => {
      file.onSheet(sheet, "</headerFooter>", `</headerFooter><picture xmlns:r="${OFFICE}" r:id="rId77"/>`);
      file.related(file.part(sheet), "rId77", `${OFFICE}/image`, "../media/x.png", "x");
    },
  ],
  [
    "an embedded object",
    (file, sheet) => {
      file.onSheet(
        sheet,
        "</headerFooter>",
        `</headerFooter><oleObjects><oleObject progId="Word" shapeId="1" xmlns:r="${OFFICE}" r:id="rId78"/></oleObjects>`,
      );
      file.related(file.part(sheet), "rId78", `${OFFICE}/oleObject`, "../embeddings/x.bin", "x");
    },
  ],
  [
    "text in an empty cell",
    (file, sheet) =>
      file.onSheet(
        sheet,
        "</sheetData>",
        '<row r="900"><c r="B900" t="inlineStr"><is><t>CU 92.0</t></is></c></row></sheetData>',
      ),
  ],
  ["a hidden sheet", (file, sheet) => file.inBook(`<sheet name="${sheet}"`, `<sheet state="hidden" name="${sheet}"`)],
  [
    "a very hidden sheet",
    (file, sheet) => file.inBook(`<sheet name="${sheet}"`, `<sheet state="veryHidden" name="${sheet}"`),
  ],
  [
    "only a part printed",
    (file, sheet) =>
      file.inBook(
        "</definedNames>",
        `<definedName name="_xlnm.Print_Area" localSheetId="4">${sheet}!$A$1:$B$3</definedName></definedNames>`,
      ),
  ],
];

function drawing(file: ForgedFile, sheet: string, inside: string): void {
  const anchor = `<xdr:twoCellAnchor><xdr:from><xdr:col>1</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>5</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>3</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>9</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to>${inside}<xdr:clientData/></xdr:twoCellAnchor>`;
  const part = `<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main">${anchor}</xdr:wsDr>`;
  file.onSheet(sheet, "</headerFooter>", `</headerFooter><drawing xmlns:r="${OFFICE}" r:id="rId79"/>`);
  file.related(file.part(sheet), "rId79", `${OFFICE}/drawing`, "../drawings/drawing79.xml", part);
}

const hidden = HIDDEN.flatMap(([what, make]) =>
  ["Results", "Report"].map((sheet): Forgery => ({ kind: `${what}, on ${sheet}`, make: (file) => make(file, sheet) })),
).filter(({ kind }) => kind !== "only a part printed, on Report");

export const LOOK_KINDS: readonly Forgery[] = [...looks, ...hidden];
