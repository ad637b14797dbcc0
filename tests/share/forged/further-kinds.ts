import type { CellLook, ForgedFile } from "./forged-file";
import type { Forgery } from "./kinds";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const COMPATIBLE = "http://schemas.openxmlformats.org/markup-compatibility/2006";
const MAIN = "xl/workbook.xml";
const CHART = "xl/charts/chart1.xml";
const DRAWING = "xl/drawings/drawing1.xml";
type Make = (file: ForgedFile) => void;
type Kind = readonly [string, Make];

const both =
  (...makes: Make[]): Make =>
  (file) => {
    for (const make of makes) make(file);
  };
const sheet =
  (name: string, from: string | RegExp, to: string): Make =>
  (file) =>
    file.onSheet(name, from, to);
const book =
  (from: string | RegExp, to: string): Make =>
  (file) =>
    file.inBook(from, to);
const part =
  (name: string, from: string | RegExp, to: string): Make =>
  (file) =>
    file.change(name, from, to);
const look =
  (name: string, change: CellLook): Make =>
  (file) =>
    file.look(...file.place(name), change);
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

const SHOWN = 'style="position:absolute;margin-left:0;margin-top:0;width:900pt;height:900pt"';
function note(shape: string): Make {
  return (file) => {
    file.onSheet("Results", "</headerFooter>", `</headerFooter><legacyDrawing xmlns:r="${OFFICE}" r:id="rId95"/>`);
    const xml = `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:x="urn:schemas-microsoft-com:office:excel">${shape}</xml>`;
    file.related(file.part("Results"), "rId95", `${OFFICE}/vmlDrawing`, "../drawings/vmlDrawing9.vml", xml);
    file.related(
      file.part("Results"),
      "rId96",
      `${OFFICE}/comments`,
      "../comments9.xml",
      '<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors><author>x</author></authors><commentList><comment ref="B12" authorId="0"><text><t>CU 92.0</t></text></comment></commentList></comments>',
    );
  };
}

const DRAWN: readonly Kind[] = [
  [
    "a note that some programs show, since its style hides it nowhere",
    note(
      `<v:shape ${SHOWN}><x:ClientData ObjectType="Note"><x:Row>11</x:Row><x:Column>1</x:Column></x:ClientData></v:shape>`,
    ),
  ],
  [
    "a drawing whose part is written in capitals",
    (file) => {
      file.onSheet("Results", "</headerFooter>", `</headerFooter><drawing xmlns:r="${OFFICE}" r:id="rId79"/>`);
      file.related(
        file.part("Results"),
        "rId79",
        `${OFFICE}/drawing`,
        "../drawings/drawing79.xml",
        `<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"><xdr:absoluteAnchor><xdr:pos x="0" y="0"/><xdr:ext cx="9000000" cy="9000000"/><xdr:pic/><xdr:clientData/></xdr:absoluteAnchor></xdr:wsDr>`,
      );
      const rels = file.part("Results").replace("worksheets/", "worksheets/_rels/").concat(".rels");
      file.change(rels, "drawing79.xml", "Drawing79.xml");
    },
  ],
  [
    "a text box in a group with the chart",
    part(
      DRAWING,
      /<xdr:graphicFrame[\s\S]*?<\/xdr:graphicFrame>/,
      "<xdr:grpSp>$&<xdr:sp><xdr:txBody><a:p><a:r><a:t>92.0</a:t></a:r></a:p></xdr:txBody></xdr:sp></xdr:grpSp>",
    ),
  ],
  ["a chart of another kind", part(CHART, /<(\/?)c:barChart>/g, "<$1c:areaChart>")],
  ["a chart in shares of the whole", part(CHART, 'val="stacked"', 'val="percentStacked"')],
  [
    "a column of the chart that is not drawn",
    part(CHART, "<c:cat>", '<c:dPt><c:idx val="1"/><c:spPr><a:noFill/></c:spPr></c:dPt><c:cat>'),
  ],
  [
    "a series of the chart drawn as a line only",
    part(
      CHART,
      /<c:spPr><a:solidFill>(<a:srgbClr val="003C30"\/>)<\/a:solidFill><\/c:spPr>/,
      "<c:spPr><a:noFill/><a:ln><a:solidFill>$1</a:solidFill></a:ln></c:spPr>",
    ),
  ],
  [
    "a picture behind the chart's columns",
    part(CHART, "</c:plotArea>", '<c:spPr><a:blipFill><a:blip r:embed="rId9"/></a:blipFill></c:spPr></c:plotArea>'),
  ],
  [
    "a chart whose columns begin at another number",
    part(CHART, '<c:crosses val="autoZero"/>', '<c:crossesAt val="2000"/>'),
  ],
  [
    "a chart in thousands",
    part(CHART, /(<c:crossBetween [^>]*>)/, '$1<c:dispUnits><c:builtInUnit val="thousands"/></c:dispUnits>'),
  ],
  ["a chart without its key", part(CHART, /<c:legend>.*<\/c:legend>/, "")],
  [
    "a chart with white words",
    part(
      CHART,
      '<a:rPr sz="1200" b="1"/>',
      '<a:rPr sz="1200" b="1"><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill></a:rPr>',
    ),
  ],
  ["a chart with tiny words", part(CHART, 'sz="1200"', 'sz="100"')],
  [
    "a chart on black",
    part(CHART, "</c:plotArea>", '<c:spPr><a:solidFill><a:srgbClr val="000000"/></a:solidFill></c:spPr></c:plotArea>'),
  ],
  ["an axis of the chart not shown", part(CHART, /<c:delete val="0"\/>/, '<c:delete val="1"/>')],
  [
    "a chart that leaves out a series in some programs",
    part(
      CHART,
      "</c:barChart>",
      '<c:extLst><c:ext uri="{02D57815-91ED-43cb-92C2-25804820EDAC}" xmlns:c15="http://schemas.microsoft.com/office/drawing/2012/chart"><c15:filteredBarSeries/></c:ext></c:extLst></c:barChart>',
    ),
  ],
];

const sheetOf =
  (name: string, rows: string): Make =>
  (file) => {
    const xml = `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData></worksheet>`;
    file.related(MAIN, "rId96", `${OFFICE}/worksheet`, "worksheets/sheet96.xml", xml);
    file.inBook("</sheets>", `<sheet name="${name}" sheetId="96" r:id="rId96"/></sheets>`);
  };

const FILES: readonly Kind[] = [
  [
    "a report again, one row down and under another name",
    (file) => {
      const xml = file.parts.get(file.part("Report"))!;
      const rows = /<sheetData>([\s\S]*)<\/sheetData>/.exec(xml)![1]!;
      const down = rows
        .replace(/ s="\d+"/g, "")
        .replace(/<f[^>]*>[^<]*<\/f>|<f[^>]*\/>/g, "")
        .replace(/<row r="(\d+)"/g, (_, row) => `<row r="${Number(row) + 1}"`)
        .replace(/<c r="([A-Z]+)(\d+)"/g, (_, column, row) => `<c r="${column}${Number(row) + 1}"`);
      sheetOf("For the authority", down)(file);
    },
  ],
  [
    "names in a part that only some programs read",
    book(
      "</workbook>",
      `<z:w xmlns:z="urn:z" xmlns:mc2="${COMPATIBLE}" mc2:Ignorable="z" mc2:ProcessContent="z:w"><definedNames><definedName name="Used_CU">Results!$A$1</definedName></definedNames></z:w></workbook>`,
    ),
  ],
  [
    "a shared text inside a part of another namespace",
    part("xl/sharedStrings.xml", /<si><t([^>]*)>([^<]*)<\/t><\/si>/, '<si><z:w xmlns:z="urn:z"><t$1>$2</t></z:w></si>'),
  ],
  [
    "a shared text in an unknown part",
    part("xl/sharedStrings.xml", /<si><t([^>]*)>([^<]*)<\/t><\/si>/, "<si><w><t$1>$2</t></w></si>"),
  ],
  [
    "a text of a cell in an unknown part",
    (file) => {
      const [name, address] = file.place("Site_Name");
      file.cell(name, address, (tag) =>
        tag.replace(/t="s"><v>\d+<\/v>/, 't="inlineStr"><is><w><t>Example Nursery (invented)</t></w></is>'),
      );
    },
  ],
];

const NAMED: readonly Kind[] = [
  [
    "a page number that starts elsewhere",
    sheet("Results", "<pageSetup ", '<pageSetup firstPageNumber="92" useFirstPageNumber="1" '),
  ],
  [
    "a chart that is not shown",
    part(DRAWING, /<xdr:cNvPr ([^>]*)name="Chart 1"/, '<xdr:cNvPr $1 hidden="1" name="Chart 1"'),
  ],
];

export const FURTHER_KINDS: readonly Forgery[] = [
  ...[...LOOKS, ...RULES, ...SHEETS, ...DRAWN, ...FILES].map(([kind, make]): Forgery => ({ kind, make })),
  ...NAMED.map(([kind, make]): Forgery => ({ kind, make, named: true })),
];
