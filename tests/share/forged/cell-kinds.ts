import type { CellLook, ForgedFile } from "./forged-file";
import type { Forgery } from "./kinds";

const MAP_SQUARE = "F20";
const solid = (rgb: string) => `<fill><patternFill patternType="solid"><fgColor rgb="${rgb}"/></patternFill></fill>`;
const within = (xml: string) => (font: string) => font.replace("</font>", `${xml}</font>`);

const on = (name: string, look: CellLook) => (file: ForgedFile) => file.look(...file.place(name), look);
const cell = (name: string, change: (tag: string, address: string) => string) => (file: ForgedFile) => {
  const [sheet, address] = file.place(name);
  file.cell(sheet, address, (tag) => change(tag, address));
};
const styles = (from: string | RegExp, to: string) => (file: ForgedFile) => file.change("xl/styles.xml", from, to);
const theme = (from: string | RegExp, to: string) => (file: ForgedFile) => file.change("xl/theme/theme1.xml", from, to);
const both =
  (...makes: ((file: ForgedFile) => void)[]) =>
  (file: ForgedFile) => {
    for (const make of makes) make(file);
  };

const FORMATS: readonly (readonly [string, (file: ForgedFile) => void])[] = [
  ["a format that fills its cell with a digit", on("Used_CU", { format: "0.0*9" })],
  ["a format of digits of another script", on("Used_CU", { format: "[$-D000000]0.0" })],
  ["a format with numerals of another language", on("Used_CU", { format: "[DBNum1]0.0" })],
  ["a format that depends on the value", on("Used_CU", { format: "[&lt;95]&quot;92.0&quot;;0.0" })],
  ["a format with one digit more behind", on("Used_CU", { format: "0.0\\9" })],
  ["a format that turns the order of signs", on("Used_CU", { format: "&quot;\u202e&quot;0.0" })],
  ["a format with a unit", on("Used_CU", { format: "0.0&quot; mm&quot;" })],
  ["a format in hundreds", on("Used_CU", { format: "0%" })],
  ["a format of currency", on("Used_MAR", { format: "[$€-2] 0.0" })],
  ["a format with days", on("Result_Run_Time_min", { format: "h:mm" })],
  ["a format as a fraction", on("Used_CU", { format: "# ?/?" })],
  ["a format with powers of ten", on("Used_CU", { format: "0E+0" })],
  [
    "a format by a number that each country reads its own way",
    both(on("Used_CU", { format: "0.00" }), styles(/(<xf [^>]*)numFmtId="9\d\d"/, '$1numFmtId="44"')),
  ],
  [
    "a known format given another meaning",
    both(
      styles("</numFmts>", '<numFmt numFmtId="2" formatCode="&quot;92.0&quot;"/></numFmts>'),
      on("Used_CU", { format: "0.0" }),
      styles(/(<xf [^>]*)numFmtId="9\d\d"/, '$1numFmtId="2"'),
    ),
  ],
  ["a format listed twice", styles("</numFmts>", '<numFmt numFmtId="167" formatCode="&quot;92.0&quot;"/></numFmts>')],
  [
    "text shown by the format of numbers",
    cell("Used_CU", (tag) => tag.replace(/<v>[^<]*/, "<v>92.0").replace("<c ", '<c t="str" ')),
  ],
];

const FONTS: readonly (readonly [string, (file: ForgedFile) => void])[] = [
  [
    "a font of another script",
    on("Used_CU", { font: (font) => font.replace(/<name [^>]*\/>/, '<name val="MT Extra"/>') }),
  ],
  [
    "a font that nobody has",
    on("Used_CU", { font: (font) => font.replace(/<name [^>]*\/>/, '<name val="Digits Swapped"/>') }),
  ],
  [
    "a font made one and a half times as large",
    on("Used_CU", { font: (font) => font.replace(/<sz [^>]*\/>/, '<sz val="24"/>') }),
  ],
  ["two sizes in one font", on("Used_CU", { font: within('<sz val="1"/>') })],
  ["two colours in one font", on("Used_CU", { font: within('<color rgb="FFFFFFFF"/>') })],
  [
    "the theme's font changed to one of signs",
    both(
      theme(/(<a:minorFont>\s*<a:latin typeface=")[^"]*/, "$1Wingdings"),
      on("Used_CU", { font: within('<scheme val="minor"/>') }),
    ),
  ],
  [
    "the theme's dark colour changed to white",
    both(
      theme(/<a:dk1>[\s\S]*?<\/a:dk1>/, '<a:dk1><a:srgbClr val="FFFFFF"/></a:dk1>'),
      on("Used_CU", {
        font: (font) => font.replace(/<color[^>]*\/>/, "").replace(/(<sz [^>]*\/>)/, '$1<color theme="1"/>'),
      }),
    ),
  ],
  [
    "the theme's text of the window changed to white",
    both(
      theme(/<a:dk1>[\s\S]*?<\/a:dk1>/, '<a:dk1><a:sysClr val="window" lastClr="000000"/></a:dk1>'),
      on("Used_CU", {
        font: (font) => font.replace(/<color[^>]*\/>/, "").replace(/(<sz [^>]*\/>)/, '$1<color theme="1"/>'),
      }),
    ),
  ],
  [
    "a table of colours of its own",
    both(
      styles(
        "</styleSheet>",
        `<colors><indexedColors>${'<rgbColor rgb="FFFFFFFF"/>'.repeat(64)}</indexedColors></colors></styleSheet>`,
      ),
      on("Used_CU", {
        font: (font) => font.replace(/<color[^>]*\/>/, "").replace(/(<sz [^>]*\/>)/, '$1<color indexed="8"/>'),
      }),
    ),
  ],
  ["the usual font made tiny, and columns with it", styles(/<font><sz val="11"\/>/, '<font><sz val="1"/>')],
  ["a fill without its colour", on("Used_CU", { fill: '<fill><patternFill patternType="solid"/></fill>' })],
  [
    "a fill of the system's ink",
    on("Used_CU", { fill: '<fill><patternFill patternType="solid"><fgColor indexed="64"/></patternFill></fill>' }),
  ],
  [
    "a light text on a light fill",
    on("Used_CU", {
      font: (font) => font.replace(/<color[^>]*\/>/, "").replace(/(<sz [^>]*\/>)/, '$1<color rgb="FFBBBBBB"/>'),
      fill: solid("FFDDDDDD"),
    }),
  ],
  [
    "text that only some programs read",
    styles(
      "<fonts ",
      '<mc:AlternateContent xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"><mc:Fallback><fonts/></mc:Fallback></mc:AlternateContent><fonts ',
    ),
  ],
  ["a look that the file does not list", cell("Used_CU", (tag) => tag.replace(/s="\d+"/, 's="9999"'))],
  ["hidden by its style", on("Used_CU", { align: 'horizontal="justify" readingOrder="2"' })],
  ["text moved up out of its row", on("Used_CU", { align: 'horizontal="right" indent="12"' })],
  ["text stacked", on("Used_CU", { align: 'textRotation="255"' })],
  ["a square of the map in another colour", (file) => file.look("Coverage", MAP_SQUARE, { fill: solid("FF01665E") })],
  ["a verdict in green", on("Verdict_CU", { fill: solid("FF00FF00") })],
  [
    "a table of fonts twice",
    styles("</fonts>", '</fonts><fonts><font><sz val="1"/><name val="Calibri"/></font></fonts>'),
  ],
  [
    "a table of looks twice",
    styles(
      "</cellXfs>",
      '</cellXfs><cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>',
    ),
  ],
];

const CELLS: readonly (readonly [string, (file: ForgedFile) => void])[] = [
  ["a cell twice", cell("Used_CU", (tag) => `${tag}${tag.replace(/<v>[^<]*/, "<v>92")}`)],
  ["a cell in a row of another number", cell("Used_CU", (tag, address) => tag.replace(`r="${address}"`, 'r="B900"'))],
  [
    "a row twice",
    (file) => file.onSheet("Results", "</sheetData>", '<row r="12"><c r="B12"><v>92</v></c></row></sheetData>'),
  ],
  [
    "a figure as text with its formula",
    cell("Used_CU", (tag) => tag.replace("<c ", '<c t="str" ').replace(/<v>[^<]*/, "<v>83.0")),
  ],
  [
    "an error with other words",
    cell("Used_CU", (tag) => tag.replace("<c ", '<c t="e" ').replace(/<v>[^<]*/, "<v>92.0")),
  ],
  [
    "an error with other words, in a sentence",
    cell("Verdict_CU", (tag) => tag.replace('t="str"', 't="e"').replace(/<v>[^<]*/, "<v>good")),
  ],
  [
    "a day in place of a number",
    cell("Used_CU", (tag) => tag.replace("<c ", '<c t="d" ').replace(/<v>[^<]*/, "<v>2026-11-10")),
  ],
  ["an inline text without its kind", cell("Used_CU", (tag) => tag.replace("</c>", "<is><t>92.0</t></is></c>"))],
  ["a rich value in place of a figure", cell("Used_CU", (tag) => tag.replace("<c ", '<c vm="1" cm="1" '))],
  ["readings aloud above a figure", cell("Used_CU", (tag) => tag.replace("<c ", '<c ph="1" '))],
  [
    "readings aloud above a text",
    (file) =>
      file.cell(...file.place("Site_Name"), (tag) =>
        tag.replace(
          /t="s"><v>\d+<\/v>/,
          't="inlineStr"><is><t>Example Nursery</t><rPh sb="0" eb="1"><t>approved</t></rPh></is>',
        ),
      ),
  ],
  ["a figure of fifteen nines", cell("Used_CU", (tag) => tag.replace(/<v>([^<.]*)[^<]*/, "<v>$1.999999999"))],
  ["a verdict", cell("Verdict_CU", (tag) => tag.replace(/<v>[^<]*/, "<v>good"))],
  [
    "a cause that nobody read",
    (file) => file.text("Working", file.place("Cause_Text")[1], "Nothing is wrong with this bed."),
  ],
];

export const CELL_KINDS: readonly Forgery[] = [...FORMATS, ...FONTS, ...CELLS].map(([kind, make]) => ({ kind, make }));
