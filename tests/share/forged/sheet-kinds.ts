import type { ForgedFile } from "./forged-file";
import type { Forgery } from "./kinds";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const DRAWN =
  'xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"';
const MAIN = "xl/workbook.xml";
type Make = (file: ForgedFile) => void;
type Kind = readonly [string, Make];

const sheet =
  (name: string, from: string | RegExp, to: string): Make =>
  (file) =>
    file.onSheet(name, from, to);
const view = (attributes: string) => sheet("Results", "<sheetView ", `<sheetView ${attributes} `);
const properties = (attributes: string) => sheet("Results", "<sheetPr>", `<sheetPr ${attributes}>`);
const book =
  (from: string | RegExp, to: string): Make =>
  (file) =>
    file.inBook(from, to);
const chart =
  (from: string | RegExp, to: string): Make =>
  (file) =>
    file.change("xl/charts/chart1.xml", from, to);

function drawing(name: string, anchor: string, more: (file: ForgedFile) => void = () => {}): Make {
  return (file) => {
    file.onSheet(name, "</headerFooter>", `</headerFooter><drawing xmlns:r="${OFFICE}" r:id="rId79"/>`);
    const part = `<xdr:wsDr ${DRAWN}>${anchor}</xdr:wsDr>`;
    file.related(file.part(name), "rId79", `${OFFICE}/drawing`, "../drawings/drawing79.xml", part);
    more(file);
  };
}

const from = (column: number, row: number, offset = 0) =>
  `<xdr:from><xdr:col>${column}</xdr:col><xdr:colOff>${offset}</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>${offset}</xdr:rowOff></xdr:from>`;
const to = (column: number, row: number) => from(column, row).replaceAll("from>", "to>");
const two = (inside: string, begin: string, end: string) =>
  `<xdr:twoCellAnchor>${begin}${end}${inside}<xdr:clientData/></xdr:twoCellAnchor>`;
const PICTURE = "<xdr:pic/>";
const TEXT_BOX = "<xdr:sp><xdr:txBody><a:p><a:r><a:t>92.0</a:t></a:r></a:p></xdr:txBody></xdr:sp>";

function vml(content: string): Make {
  return (file) => {
    file.onSheet("Results", "</headerFooter>", `</headerFooter><legacyDrawing xmlns:r="${OFFICE}" r:id="rId95"/>`);
    const xml = `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:x="urn:schemas-microsoft-com:office:excel">${content}</xml>`;
    file.related(file.part("Results"), "rId95", `${OFFICE}/vmlDrawing`, "../drawings/vmlDrawing9.vml", xml);
  };
}

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

const DRAWINGS: readonly Kind[] = [
  [
    "a picture that reaches over figures from beside them",
    drawing(
      "Results",
      `<xdr:oneCellAnchor>${from(20, 60, -90_000_000)}<xdr:ext cx="9000000" cy="9000000"/>${PICTURE}<xdr:clientData/></xdr:oneCellAnchor>`,
    ),
  ],
  [
    "a picture with its place by points",
    drawing(
      "Results",
      `<xdr:absoluteAnchor><xdr:pos x="0" y="0"/><xdr:ext cx="9000000" cy="9000000"/>${PICTURE}<xdr:clientData/></xdr:absoluteAnchor>`,
    ),
  ],
  ["a picture over the empty cells of a report", drawing("Report", two(PICTURE, from(0, 0), to(10, 3)))],
  [
    "a group of shapes beside, with a text box",
    drawing("Results", two(`<xdr:grpSp>${PICTURE}${TEXT_BOX}</xdr:grpSp>`, from(1, 10), to(2, 12))),
  ],
  ["ink over figures", drawing("Results", two('<xdr:contentPart r:id="rId1" xmlns:r="x"/>', from(1, 10), to(2, 12)))],
  [
    "a picture over the chart",
    (file) => {
      const anchor = /<xdr:from>[\s\S]*?<\/xdr:to>/.exec(file.parts.get("xl/drawings/drawing1.xml")!)![0];
      file.change(
        "xl/drawings/drawing1.xml",
        "</xdr:wsDr>",
        `<xdr:twoCellAnchor>${anchor}<xdr:pic/><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>`,
      );
    },
  ],
  [
    "the chart moved over figures",
    (file) => file.change("xl/drawings/drawing1.xml", /<xdr:from>[\s\S]*?<\/xdr:to>/, `${from(0, 2)}${to(7, 30)}`),
  ],
  [
    "the chart made tiny",
    (file) => {
      const begin = /<xdr:from>[\s\S]*?<\/xdr:from>/.exec(file.parts.get("xl/drawings/drawing1.xml")!)![0];
      file.change("xl/drawings/drawing1.xml", /<xdr:to>[\s\S]*?<\/xdr:to>/, begin.replaceAll("from>", "to>"));
    },
  ],
  [
    "a chart with labels typed by hand",
    chart(
      "<c:cat>",
      '<c:dLbls><c:dLbl><c:idx val="0"/><c:tx><c:rich><a:p xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"><a:r><a:t>92.0</a:t></a:r></a:p></c:rich></c:tx></c:dLbl></c:dLbls><c:cat>',
    ),
  ],
  [
    "a chart whose axis has another format",
    chart(/<c:axPos val="l"\/>/, '<c:axPos val="l"/><c:numFmt formatCode="&quot;0&quot;" sourceLinked="0"/>'),
  ],
  [
    "a chart with numbers of its own",
    chart(
      /<c:val>[\s\S]*?<\/c:val>/,
      '<c:val><c:numLit><c:ptCount val="1"/><c:pt idx="0"><c:v>1</c:v></c:pt></c:numLit></c:val>',
    ),
  ],
  ["a chart in one colour", chart(/<a:srgbClr val="80CDC1"\/>/, '<a:srgbClr val="FFFFFF"/>')],
  ["a chart with a line laid over", chart("<c:cat>", "<c:trendline/><c:cat>")],
  [
    "a chart with shapes drawn in it",
    (file) => {
      file.change(
        "xl/charts/chart1.xml",
        "</c:chartSpace>",
        `<c:userShapes xmlns:r="${OFFICE}" r:id="rId1"/></c:chartSpace>`,
      );
      file.related("xl/charts/chart1.xml", "rId1", `${OFFICE}/chartUserShapes`, "../drawings/drawing44.xml", "<x/>");
    },
  ],
  [
    "a shape of an old program over cells",
    vml(
      '<v:rect style="position:absolute;left:0;top:0;width:900pt;height:900pt"><v:textbox>CU 92.0</v:textbox></v:rect>',
    ),
  ],
  [
    "a note shown by its style",
    vml(
      '<v:shape style="position:absolute;visibility:visible"><x:ClientData ObjectType="Note"><x:Row>11</x:Row></x:ClientData></v:shape>',
    ),
  ],
  [
    "a picture in the header",
    (file) => {
      file.onSheet("Results", "<oddFooter>", "<oddHeader>&amp;C&amp;G</oddHeader><oddFooter>");
      file.onSheet("Results", "</headerFooter>", `</headerFooter><legacyDrawingHF xmlns:r="${OFFICE}" r:id="rId69"/>`);
      file.related(file.part("Results"), "rId69", `${OFFICE}/vmlDrawing`, "../drawings/vmlDrawing3.vml", "<xml/>");
    },
  ],
];

const carried =
  (type: string, target: string, at = MAIN): Make =>
  (file) =>
    file.related(at, "rId88", type, target, "<x/>");
const sheetCalled =
  (name: string, kind = "worksheet"): Make =>
  (file) => {
    const root = kind === "worksheet" ? "worksheet" : "chartsheet";
    const xml = `<${root} xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">${kind === "worksheet" ? "<sheetData/>" : ""}</${root}>`;
    file.related(MAIN, "rId96", `${OFFICE}/${kind}`, `${kind}s/sheet96.xml`, xml);
    file.inBook("</sheets>", `<sheet name="${name}" sheetId="96" r:id="rId96"/></sheets>`);
  };

const FILES: readonly Kind[] = [
  ["objects not shown", book("<workbookPr ", '<workbookPr showObjects="none" ')],
  [
    "a second window that shows other",
    book(
      "<sheets>",
      '<bookViews><workbookView/><workbookView visibility="hidden" showSheetTabs="0"/></bookViews><sheets>',
    ),
  ],
  [
    "a task pane of an add-in",
    carried(
      "http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes",
      "xl/webextensions/taskpanes.xml",
      "",
    ),
  ],
  [
    "a part of an unknown kind",
    carried("http://schemas.microsoft.com/office/2035/relationships/overlay", "overlay.xml"),
  ],
  [
    "a slicer's data",
    carried("http://schemas.microsoft.com/office/2007/relationships/slicerCache", "slicerCaches/slicerCache1.xml"),
  ],
  [
    "a ribbon of its own",
    carried("http://schemas.microsoft.com/office/2007/relationships/ui/extensibility", "customUI/customUI14.xml", ""),
  ],
  ["a sheet of the same name", sheetCalled("Results")],
  ["a sheet of the same name in capitals", sheetCalled("RESULTS")],
  ["a sheet with one letter less", sheetCalled("Result")],
  ["a sheet with an accent", sheetCalled("R\u00e9sults")],
  ["a sheet with two letters exchanged", sheetCalled("Reprot")],
  ["a sheet with a letter doubled", sheetCalled("Repport")],
  ["a chart for a sheet, named as ours", sheetCalled("Report 1", "chartsheet")],
  [
    "a name of ours for one sheet of its own",
    (file) => {
      sheetCalled("Mine")(file);
      file.inBook(
        "</definedNames>",
        '<definedName name="Used_CU" localSheetId="15">Mine!$A$1</definedName></definedNames>',
      );
    },
  ],
  [
    "two sheets on one part",
    (file) => {
      const id = /<sheet name="Results"[^>]*r:id="(rId\d+)"/.exec(file.parts.get(MAIN)!)![1]!;
      file.inBook("</sheets>", `<sheet name="Second" sheetId="96" r:id="${id}"/></sheets>`);
    },
  ],
  [
    "a print area of every second row",
    book(
      "</definedNames>",
      '<definedName name="_xlnm.Print_Area" localSheetId="4">Results!$A$1:$F$3,Results!$A$30:$F$47</definedName></definedNames>',
    ),
  ],
  [
    "rows repeated on each page",
    book(
      "</definedNames>",
      '<definedName name="_xlnm.Print_Titles" localSheetId="4">Results!$1:$40</definedName></definedNames>',
    ),
  ],
  [
    "a built-in name as a plain one",
    book(
      "</definedNames>",
      '<definedName name="Print_Area" localSheetId="4">Results!$A$1:$B$3</definedName></definedNames>',
    ),
  ],
];

const NAMED: readonly Kind[] = [
  ["printed with notes", sheet("Results", "<pageSetup ", '<pageSetup cellComments="asDisplayed" ')],
  ["a chart with other numbers kept", chart(/(<c:numCache>[\s\S]*?<c:v>)[^<]*/, "$11234567")],
  ["protection taken off", sheet("Results", /<sheetProtection [^>]*>/, "")],
  ["formats allowed by the protection", sheet("Results", "<sheetProtection ", '<sheetProtection formatCells="0" ')],
  [
    "a picture of the file for folders",
    carried(
      "http://schemas.openxmlformats.org/package/2006/relationships/metadata/thumbnail",
      "docProps/thumbnail.jpeg",
      "",
    ),
  ],
  ["data of another program", carried(`${OFFICE}/customXml`, "../customXml/item1.xml")],
  ["a photo beside the cells", drawing("Results", two(PICTURE, from(20, 60), to(24, 70)))],
];

export const SHEET_KINDS: readonly Forgery[] = [
  ...[...SHEETS, ...DRAWINGS, ...FILES].map(([kind, make]): Forgery => ({ kind, make })),
  ...NAMED.map(([kind, make]): Forgery => ({ kind, make, named: true })),
];
