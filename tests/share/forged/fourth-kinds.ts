import type { CellLook, ForgedFile } from "./forged-file";
import type { Forgery } from "./kinds";
import { CHART, forgeries, type Kind, look, type Make, OFFICE, sheet } from "./makes";

const STYLES = "xl/styles.xml";

const border = (sides: string): CellLook => ({
  border: `<border>${sides}<diagonal/></border>`,
});
const side = (name: string, style: string) => `<${name} style="${style}"><color rgb="FF000000"/></${name}>`;
const BLACK = '<fill><patternFill patternType="solid"><fgColor rgb="FF000000"/></patternFill></fill>';

/** Gives an unused cell beside the figures a look and takes the cell itself away: only the number of the look stays. */
function styleOf(file: ForgedFile, change: CellLook): string {
  const own = /s="\d+"/.exec(file.tag("Results", "A1"))![0];
  file.look("Results", "A1", change);
  const style = /s="(\d+)"/.exec(file.tag("Results", "A1"))![1]!;
  file.cell("Results", "A1", (tag) => tag.replace(/s="\d+"/, own));
  return style;
}

/** The look of a cell that leaves something to a named style in which it is white. */
function leftToStyle(name: string, missing: RegExp): Make {
  return (file) => {
    const [on, at] = file.place(name);
    file.look(on, at, {
      font: (font) => font.replace(/<color[^>]*\/>/, "").replace(/(<sz [^>]*\/>)/, '$1<color rgb="FFFFFFFF"/>'),
    });
    const fonts = Number(
      /fontId="(\d+)"[^>]*>(?:<alignment[^>]*\/>)?<\/xf><\/cellXfs>/.exec(file.parts.get(STYLES)!)![1],
    );
    file.change(
      STYLES,
      "</cellStyleXfs>",
      `<xf numFmtId="0" fontId="${fonts}" fillId="0" borderId="0"/></cellStyleXfs>`,
    );
    const styles = file.parts
      .get(STYLES)!
      .match(/<cellStyleXfs[^>]*>([\s\S]*?)<\/cellStyleXfs>/)![1]!
      .match(/<xf /g)!.length;
    file.change(STYLES, /<cellStyleXfs count="\d+"/, "<cellStyleXfs");
    file.change(STYLES, /<xf ([^>]*)>((?:<alignment[^>]*\/>)?<\/xf><\/cellXfs>)/, `<xf $1 xfId="${styles - 1}">$2`);
    file.change(
      STYLES,
      /<xf ([^>]*)xfId="\d+" ([^>]*xfId="\d+">)((?:<alignment[^>]*\/>)?<\/xf><\/cellXfs>)/,
      "<xf $1$2$3",
    );
    file.change(
      STYLES,
      new RegExp(`(<xf [^>]*)${missing.source}([^>]*>(?:<alignment[^>]*/>)?</xf></cellXfs>)`),
      "$1$2",
    );
  };
}

const twoTexts =
  (texts: string): Make =>
  (file) =>
    file.cell("Results", "A1", (tag) => `<c r="A1" ${/s="\d+"/.exec(tag)![0]} t="inlineStr"><is>${texts}</is></c>`);

const LOOKS: readonly Kind[] = [
  [
    "a thick line left of a number, which reads as a 1",
    look("Used_CU", border(`${side("left", "thick")}<right/><top/><bottom/>`)),
  ],
  [
    "thick lines above a number and below, close to it",
    look("Used_CU", border(`<left/><right/>${side("top", "thick")}${side("bottom", "double")}`)),
  ],
  ["a day in the long form of each machine", look("Test_Date", { format: "[$-F800]yyyy\\-mm\\-dd" })],
  ["a time in the form of each machine", look("Test_Start", { format: "[$-F400]h:mm" })],
  ["a day by the years of another calendar", look("Test_Date", { format: "[$-41E]yyyy\\-mm\\-dd" })],
  ["a font that is left to a named style", leftToStyle("Used_CU", /fontId="\d+" /)],
  [
    "the colour of a column behind cells that are not listed",
    (file) => {
      const style = styleOf(file, { fill: BLACK });
      file.onSheet("Results", /(<col min="2"[^>]*\/>)/, `$1<col min="3" max="3" width="9" style="${style}"/>`);
    },
  ],
  [
    "the colour of all columns behind",
    (file) => {
      const style = styleOf(file, { fill: BLACK });
      file.onSheet(
        "Results",
        /<col min="6" [^>]*\/><\/cols>|<\/cols>/,
        `<col min="6" max="16384" width="34" style="${style}"/></cols>`,
      );
    },
  ],
  [
    "text of the colour of a rule's fill",
    look("Limit_CU_Low", {
      font: (font) => font.replace(/<color[^>]*\/>/, "").replace(/(<sz [^>]*\/>)/, '$1<color rgb="FFF6E8C3"/>'),
    }),
  ],
  [
    "a look whose flags say that it is not used",
    (file) => {
      file.look(...file.place("Used_CU"), { format: "&quot;92.0&quot;" });
      file.change(
        STYLES,
        /applyNumberFormat="1"([^>]*>(?:<alignment[^>]*\/>)?<\/xf><\/cellXfs>)/,
        'applyNumberFormat="0"$1',
      );
    },
  ],
  ["a percentage of a thousandth", look("Used_CU", { format: "0.0&quot;‰&quot;" })],
  ["a sign that joins the digit before it", look("Used_CU", { format: "0.0&quot;\u0336&quot;" })],
  ["digits struck by signs that join", look("Used_CU", { format: "0&quot;\u20e0&quot;.0" })],
  ["a format that shows a fraction", look("Used_SC_Can", { format: "# ?/?" })],
  ["a format with a power of ten", look("Used_MAR", { format: "0.0E+0" })],
];

const SHEETS: readonly Kind[] = [
  [
    "sounds shown above a row",
    (file) => {
      file.onSheet("Results", /<row r="1"/, '<row ph="1" r="1"');
    },
  ],
  ["sounds shown above a column", sheet("Results", '<col min="1" max="1"', '<col phonetic="1" min="1" max="1"')],
  ["zoomed to 10 % in the usual view", sheet("Results", "<sheetView ", '<sheetView zoomScaleNormal="10" ')],
  [
    "printed at 26 %",
    (file) => {
      file.onSheet("Results", /<pageSetUpPr[^>]*\/>/, "");
      file.onSheet("Results", /<pageSetup /, '<pageSetup scale="26" ');
    },
  ],
  ["a label of two texts in one", twoTexts("<t>Res</t><t>ults</t>")],
  [
    "a shared text of two texts in one",
    (file) =>
      file.change("xl/sharedStrings.xml", /<si><t([^>]*)>(\w{3})(\w+)<\/t><\/si>/, "<si><t$1>$2</t><t>$3</t></si>"),
  ],
  ["a text and a piece of text in one", twoTexts("<t>Res</t><r><t>ults</t></r>")],
  [
    "a part given again as a piece",
    (file) =>
      file.parts.set(
        `${file.part("Results")}/[0].piece`,
        file.parts.get(file.part("Results"))!.replace("<sheetView ", '<sheetView showFormulas="1" '),
      ),
  ],
  [
    "a rule that shows words by a format",
    sheet(
      "Results",
      "<printOptions",
      '<conditionalFormatting sqref="B12"><cfRule type="containsText" operator="containsText" text="6" dxfId="0" priority="900"><formula>TRUE</formula></cfRule></conditionalFormatting><printOptions',
    ),
  ],
  [
    "a sheet shown as a chart's pages",
    sheet("Results", "<sheetView ", '<sheetView showWhiteSpace="0" view="pageLayout" zoomScale="12" '),
  ],
  [
    "rows with levels of an outline, folded away",
    sheet("Results", /<row r="12"/, '<row outlineLevel="1" collapsed="1" r="12"'),
  ],
  [
    "words in a printed title of each page",
    (file) =>
      file.inBook(
        "</definedNames>",
        '<definedName name="_xlnm.Print_Titles" localSheetId="4">Results!$30:$31</definedName></definedNames>',
      ),
  ],
];

const DRAWN: readonly Kind[] = [
  [
    "labels of a chart from other cells",
    (file) =>
      file.change(
        CHART,
        /<c:ser>/,
        '<c:ser><c:extLst><c:ext uri="{02D57815-91ED-43cb-92C2-25804820EDAC}" xmlns:c15="http://schemas.microsoft.com/office/drawing/2012/chart"><c15:datalabelsRange><c15:f>Results!$A$1:$A$5</c15:f></c15:datalabelsRange></c:ext></c:extLst>',
      ),
  ],
  [
    "colours of a chart from a theme of its own",
    (file) => {
      file.related(
        CHART,
        "rId77",
        `${OFFICE}/themeOverride`,
        "../theme/themeOverride1.xml",
        '<a:themeOverride xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"/>',
      );
    },
  ],
  [
    "a chart with a picture related",
    (file) => file.related(CHART, "rId78", `${OFFICE}/image`, "../media/image9.png", ""),
  ],
];

/** A fourth round, tried on 29 November 2026. */
export const FOURTH_KINDS: readonly Forgery[] = forgeries([...LOOKS, ...SHEETS, ...DRAWN]);
