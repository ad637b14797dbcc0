import { fromBase64 } from "../../src/hosts/base64";

export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const MS = "http://schemas.microsoft.com/office";
const DRAW = "http://schemas.openxmlformats.org/drawingml/2006";
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n';
const KIND = "application/vnd.openxmlformats-officedocument";
const DOT = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

const rels = (...all: [id: string, type: string, target: string, mode?: string][]): string => {
  const lines = all.map(
    ([id, type, target, mode]) =>
      `<Relationship Id="${id}" Type="${type.startsWith("http") ? type : `${OFFICE}/${type}`}" Target="${target}"${mode ? ` TargetMode="${mode}"` : ""}/>`,
  );
  return `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${lines.join("")}</Relationships>`;
};

const chart = (title: string) =>
  `<c:chartSpace xmlns:c="${DRAW}/chart" xmlns:a="${DRAW}/main"><c:chart><c:title><c:tx><c:rich><a:bodyPr/><a:p><a:r><a:t>${title}</a:t></a:r></a:p></c:rich></c:tx></c:title>` +
  '<c:plotArea><c:layout/><c:barChart><c:barDir val="col"/><c:grouping val="clustered"/><c:ser><c:idx val="0"/><c:order val="0"/>' +
  '<c:val><c:numRef><c:f>\'Bed 7\'!$A$2:$A$4</c:f></c:numRef></c:val></c:ser><c:axId val="1"/><c:axId val="2"/></c:barChart>' +
  '<c:catAx><c:axId val="1"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="b"/><c:crossAx val="2"/></c:catAx>' +
  '<c:valAx><c:axId val="2"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="l"/><c:crossAx val="1"/></c:valAx>' +
  "</c:plotArea></c:chart></c:chartSpace>";

const at = (tag: string, row: number, column: number) =>
  `<xdr:${tag}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${tag}>`;
const anchor = (inside: string, row: number) =>
  `<xdr:twoCellAnchor>${at("from", row, 6)}${at("to", row + 4, 9)}${inside}<xdr:clientData/></xdr:twoCellAnchor>`;
const drawn = (id: string, name: string) =>
  `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="2" name="${name}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>` +
  `<a:graphic><a:graphicData uri="${DRAW}/chart"><c:chart xmlns:c="${DRAW}/chart" r:id="${id}"/></a:graphicData></a:graphic></xdr:graphicFrame>`;
const DRAWING =
  `<xdr:wsDr xmlns:xdr="${DRAW}/spreadsheetDrawing" xmlns:a="${DRAW}/main" xmlns:r="${OFFICE}">` +
  anchor(drawn("rId1", "Relative"), 1) +
  anchor(drawn("rId2", "Absolute"), 8) +
  anchor(
    '<xdr:sp macro="" textlink=""><xdr:nvSpPr><xdr:cNvPr id="4" name="Text box 1"/><xdr:cNvSpPr txBox="1"/></xdr:nvSpPr><xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext cx="100" cy="100"/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr><xdr:txBody><a:bodyPr/><a:p><a:r><a:t>Beside the riser</a:t></a:r></a:p></xdr:txBody></xdr:sp>',
    15,
  ) +
  anchor(
    '<xdr:pic><xdr:nvPicPr><xdr:cNvPr id="5" name="Photo" descr="The bed &amp; its risers"/><xdr:cNvPicPr/></xdr:nvPicPr><xdr:blipFill><a:blip r:embed="rId3"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:xfrm rot="600000"><a:off x="0" y="0"/><a:ext cx="100" cy="100"/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic>',
    22,
  ) +
  "</xdr:wsDr>";

const SHEET =
  `<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}" xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006" mc:Ignorable="x14ac" xmlns:x14ac="${MS}/spreadsheetml/2009/9/ac">` +
  '<sheetPr codeName="Bed7"><tabColor theme="4" tint="0.4"/><outlinePr summaryBelow="0"/></sheetPr><dimension ref="A1:E12"/>' +
  '<sheetViews><sheetView tabSelected="1" zoomScale="85" workbookViewId="0"><selection activeCell="C3" sqref="C3"/></sheetView></sheetViews>' +
  '<sheetFormatPr defaultRowHeight="15" x14ac:dyDescent="0.25" outlineLevelRow="1"/>' +
  '<cols><col min="1" max="3" width="14.5" style="2" customWidth="1"/><col min="5" max="5" width="9" hidden="1"/></cols><sheetData>' +
  '<row r="1" spans="1:5" x14ac:dyDescent="0.25"><c r="A1" s="3" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" s="4"/></row>\r\n' +
  '<row r="2"><c r="A2"><v>20</v></c><c r="B2"><f t="shared" ref="B2:B4" si="0">A2*2</f><v>40</v></c><c r="C2" s="5"><v>0.125</v></c></row>' +
  '<row r="3"><c r="A3"><v>30</v></c><c r="B3"><f t="shared" si="0"/><v>60</v></c></row>' +
  '<row r="4"><c r="A4"><v>40</v></c><c r="B4"><f t="shared" si="0"/><v>80</v></c><c r="D4"><f>SUM(A2:A4)</f></c></row>' +
  '<row r="6" hidden="1" outlineLevel="1"/><row r="7" hidden="1" outlineLevel="1"/><row r="8" collapsed="1"/>' +
  '<row r="10" s="5" customFormat="1" ht="22.5" customHeight="1"><c r="A10" s="5" t="inlineStr"><is><r><rPr><b/></rPr><t>Rich</t></r><r><t xml:space="preserve"> text</t></r></is></c></row>' +
  '<row r="11"><c r="A11" t="s"><v>2</v></c><c r="B11" t="s"><v>3</v></c></row><row r="12"><c r="A12"><v>1</v></c><c r="B12"><v>2</v></c></row></sheetData>' +
  '<sheetProtection algorithmName="SHA-512" hashValue="q83vEjRWeJCrze8SNFZ4kKvN7xI0VniQq83vEjRWeJCrze8SNFZ4kKvN7xI0VniQq83vEjRWeJCrze8SNFZ4kA==" saltValue="EjRWeJCrze8SNFZ4kKvN7w==" spinCount="100000" sheet="1" objects="1" formatCells="0"/>' +
  '<protectedRanges><protectedRange password="CF1A" sqref="A2:A4" name="Readings"/></protectedRanges>' +
  '<conditionalFormatting sqref="A2:A4"><cfRule type="cellIs" dxfId="0" priority="2" stopIfTrue="1" operator="lessThan"><formula>25</formula></cfRule><cfRule type="iconSet" priority="1"><iconSet iconSet="3TrafficLights1"><cfvo type="percent" val="0"/><cfvo type="percent" val="33"/><cfvo type="percent" val="67"/></iconSet></cfRule></conditionalFormatting>' +
  '<conditionalFormatting sqref="C1:C1048576"><cfRule type="expression" dxfId="1" priority="3"><formula>ISBLANK($A1)</formula></cfRule></conditionalFormatting>' +
  '<dataValidations count="2"><dataValidation type="decimal" operator="greaterThanOrEqual" allowBlank="1" showErrorMessage="1" sqref="A1:A1048576"><formula1>0</formula1></dataValidation><dataValidation type="list" allowBlank="1" sqref="A1:XFD1"><formula1>"x,y"</formula1></dataValidation></dataValidations>' +
  '<hyperlinks><hyperlink ref="B1" r:id="rId5" tooltip="Where it is from"/><hyperlink ref="C1" location="\'Bed 7\'!A2" display="here"/></hyperlinks>' +
  '<pageMargins left="0.5" right="0.5" top="0.5" bottom="0.5" header="0.3" footer="0.3"/><pageSetup paperSize="9" scale="77" orientation="landscape"/><headerFooter differentOddEven="1"><oddFooter>&amp;LBed&amp;RPage &amp;P</oddFooter><evenFooter>&amp;CEven</evenFooter></headerFooter>' +
  '<rowBreaks count="1" manualBreakCount="1"><brk id="5" max="16383" man="1"/></rowBreaks>' +
  '<drawing r:id="rId1"/><legacyDrawing r:id="rId2"/><tableParts count="1"><tablePart r:id="rId4"/></tableParts>' +
  `<extLst><ext uri="{05C60535-1F16-4fd2-B633-F4F36F0B64E0}" xmlns:x14="${MS}/spreadsheetml/2009/9/main"><x14:sparklineGroups xmlns:xm="${MS}/excel/2006/main"><x14:sparklineGroup displayEmptyCellsAs="gap"><x14:colorSeries rgb="FF376092"/><x14:sparklines><x14:sparkline><xm:f>'Bed 7'!A2:A4</xm:f><xm:sqref>D1</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></ext></extLst></worksheet>`;

const STYLES =
  `<styleSheet xmlns="${MAIN}"><numFmts count="1"><numFmt numFmtId="170" formatCode="0.0&quot; mL&quot;"/></numFmts>` +
  '<fonts count="3"><font><sz val="11"/><color theme="1"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font><font><b/><sz val="15"/><color theme="3"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font><font><strike/><sz val="10"/><name val="Georgia"/></font></fonts>' +
  '<fills count="4"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill><fill><gradientFill degree="90"><stop position="0"><color rgb="FFFFFFFF"/></stop><stop position="1"><color theme="4"/></stop></gradientFill></fill><fill><patternFill patternType="lightUp"><fgColor rgb="FFFF0000"/></patternFill></fill></fills>' +
  '<borders count="2"><border><left/><right/><top/><bottom/><diagonal/></border><border diagonalUp="1"><left/><right/><top/><bottom style="thick"><color theme="4"/></bottom><diagonal style="thin"><color auto="1"/></diagonal></border></borders>' +
  '<cellStyleXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/><xf numFmtId="0" fontId="1" fillId="0" borderId="1" applyFont="1"/></cellStyleXfs>' +
  '<cellXfs count="6"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="170" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0" applyProtection="1"><protection locked="0"/></xf><xf numFmtId="0" fontId="1" fillId="2" borderId="1" xfId="1"/><xf numFmtId="0" fontId="2" fillId="3" borderId="0" xfId="0" quotePrefix="1"/><xf numFmtId="10" fontId="2" fillId="0" borderId="1" xfId="0"><alignment textRotation="45" indent="1"/><protection locked="0" hidden="1"/></xf></cellXfs>' +
  '<cellStyles count="2"><cellStyle name="Normal" xfId="0" builtinId="0"/><cellStyle name="Nursery heading" xfId="1"/></cellStyles>' +
  '<dxfs count="2"><dxf><fill><patternFill><bgColor rgb="FFFFC7CE"/></patternFill></fill></dxf><dxf><font><color rgb="FF006100"/></font></dxf></dxfs><tableStyles count="0" defaultTableStyle="TableStyleMedium2"/></styleSheet>';

const WORKBOOK =
  `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><fileVersion appName="xl" lastEdited="7"/><workbookPr defaultThemeVersion="166925" codeName="Book"/><workbookProtection lockStructure="0"/><bookViews><workbookView xWindow="0" yWindow="0" windowWidth="20000" windowHeight="9000" activeTab="0"/></bookViews>` +
  '<sheets><sheet name="Bed 7" sheetId="3" r:id="rId1"/><sheet name="Chart" sheetId="5" r:id="rId2"/><sheet name="Secret" sheetId="4" state="veryHidden" r:id="rId3"/></sheets>' +
  '<externalReferences><externalReference r:id="rId8"/></externalReferences>' +
  '<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">\'Bed 7\'!$A$1:$D$12</definedName><definedName name="_xlnm.Print_Titles" localSheetId="0">\'Bed 7\'!$1:$1</definedName><definedName name="All_of_A">\'Bed 7\'!$A:$A</definedName><definedName name="Here" localSheetId="2">Secret!$A$1</definedName><definedName name="Price" comment="a constant">2.34</definedName><definedName name="Readings">\'Bed 7\'!$A$2:$A$4</definedName><definedName name="Two">\'Bed 7\'!$A$2,\'Bed 7\'!$A$4</definedName></definedNames>' +
  '<calcPr calcId="191029" iterate="1" iterateCount="7"/><pivotCaches><pivotCache cacheId="9" r:id="rId9"/></pivotCaches></workbook>';

const xmlParts: Record<string, string> = {
  "_rels/.rels": rels(
    ["rId1", "officeDocument", "xl/workbook.xml"],
    [
      "rId2",
      "http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties",
      "docProps/core.xml",
    ],
    ["rId3", "custom-properties", "docProps/custom.xml"],
  ),
  "docProps/core.xml":
    '<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><dc:title>Block 7</dc:title><dcterms:created xsi:type="dcterms:W3CDTF">2026-01-02T03:04:05Z</dcterms:created></cp:coreProperties>',
  "docProps/custom.xml": `<Properties xmlns="${OFFICE.replace("relationships", "custom-properties")}" xmlns:vt="${OFFICE.replace("relationships", "docPropsVTypes")}"><property fmtid="{D5CDD505-2E9C-101B-9397-08002B2CF9AE}" pid="2" name="Licence"><vt:lpwstr>W 12</vt:lpwstr></property></Properties>`,
  "xl/workbook.xml": WORKBOOK,
  "xl/_rels/workbook.xml.rels": rels(
    ["rId1", "worksheet", "/xl/worksheets/sheet1.xml"],
    ["rId2", "chartsheet", "chartsheets/sheet1.xml"],
    ["rId3", "worksheet", "worksheets/sheet2.xml"],
    ["rId4", "styles", "styles.xml"],
    ["rId5", "sharedStrings", "sharedStrings.xml"],
    ["rId6", "calcChain", "calcChain.xml"],
    ["rId7", "connections", "connections.xml"],
    ["rId8", "externalLink", "externalLinks/externalLink1.xml"],
    ["rId9", "pivotCacheDefinition", "pivotCache/pivotCacheDefinition1.xml"],
    ["rId10", "customXml", "../customXml/item1.xml"],
    ["rId11", "http://schemas.microsoft.com/office/2017/10/relationships/person", "persons/person.xml"],
  ),
  "xl/worksheets/sheet1.xml": SHEET,
  "xl/worksheets/_rels/sheet1.xml.rels": rels(
    ["rId1", "drawing", "/xl/drawings/drawing1.xml"],
    ["rId2", "vmlDrawing", "../drawings/vmlDrawing1.vml"],
    ["rId3", "comments", "../comments1.xml"],
    ["rId4", "table", "../tables/table1.xml"],
    ["rId5", "hyperlink", "https://example.invalid/bed", "External"],
    [
      "rId6",
      "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment",
      "../threadedComments/threadedComment1.xml",
    ],
  ),
  "xl/worksheets/sheet2.xml": `<worksheet xmlns="${MAIN}"><sheetData><row r="1"><c r="A1"><v>5</v></c></row></sheetData></worksheet>`,
  "xl/worksheets/_rels/sheet2.xml.rels": rels(["rId1", "pivotTable", "../pivotTables/pivotTable1.xml"]),
  "xl/chartsheets/sheet1.xml": `<chartsheet xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheetViews><sheetView workbookViewId="0"/></sheetViews><drawing r:id="rId1"/></chartsheet>`,
  "xl/chartsheets/_rels/sheet1.xml.rels": rels(["rId1", "drawing", "../drawings/drawing2.xml"]),
  "xl/drawings/drawing1.xml": DRAWING,
  "xl/drawings/_rels/drawing1.xml.rels": rels(
    ["rId1", "chart", "../charts/chart1.xml"],
    ["rId2", "chart", "/xl/charts/chart2.xml"],
    ["rId3", "image", "../media/image1.png"],
  ),
  "xl/drawings/drawing2.xml": `<xdr:wsDr xmlns:xdr="${DRAW}/spreadsheetDrawing" xmlns:a="${DRAW}/main" xmlns:r="${OFFICE}"><xdr:absoluteAnchor><xdr:pos x="0" y="0"/><xdr:ext cx="9000000" cy="6000000"/>${drawn("rId1", "Whole")}<xdr:clientData/></xdr:absoluteAnchor></xdr:wsDr>`,
  "xl/drawings/_rels/drawing2.xml.rels": rels(["rId1", "chart", "../charts/chart3.xml"]),
  "xl/charts/chart1.xml": chart("Relative"),
  "xl/charts/chart2.xml": chart("Absolute"),
  "xl/charts/chart3.xml": chart("Whole sheet"),
  "xl/drawings/vmlDrawing1.vml":
    '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><v:shape type="#_x0000_t202" style="visibility:hidden"><x:ClientData ObjectType="Note"><x:Anchor>1, 15, 2, 2, 3, 31, 6, 1</x:Anchor><x:Row>2</x:Row><x:Column>0</x:Column></x:ClientData></v:shape></xml>',
  "xl/comments1.xml": `<comments xmlns="${MAIN}"><authors><author>tc={11111111-2222-3333-4444-555555555555}</author></authors><commentList><comment ref="A3" authorId="0"><text><t>beside the riser</t></text></comment></commentList></comments>`,
  "xl/threadedComments/threadedComment1.xml": `<ThreadedComments xmlns="${MS}/spreadsheetml/2018/threadedcomments"><threadedComment ref="A3" dT="2026-01-02T03:04:05.00" personId="{99999999-2222-3333-4444-555555555555}" id="{11111111-2222-3333-4444-555555555555}"><text>beside the riser</text></threadedComment></ThreadedComments>`,
  "xl/persons/person.xml": `<personList xmlns="${MS}/spreadsheetml/2018/threadedcomments"><person displayName="Auditor" id="{99999999-2222-3333-4444-555555555555}" userId="a" providerId="None"/></personList>`,
  "xl/tables/table1.xml": `<table xmlns="${MAIN}" id="1" name="Heads" displayName="Heads" ref="A11:B12" totalsRowShown="0"><autoFilter ref="A11:B12"/><tableColumns count="2"><tableColumn id="1" name="Head"/><tableColumn id="2" name="Flow"/></tableColumns><tableStyleInfo name="TableStyleLight1" showRowStripes="1"/></table>`,
  "xl/pivotTables/pivotTable1.xml": `<pivotTableDefinition xmlns="${MAIN}" name="Pivot" cacheId="9" dataCaption="Values"><location ref="C3:D6" firstHeaderRow="1" firstDataRow="1" firstDataCol="1"/><pivotFields count="2"><pivotField axis="axisRow" showAll="0"><items count="2"><item x="0"/><item t="default"/></items></pivotField><pivotField dataField="1" showAll="0"/></pivotFields><rowFields count="1"><field x="0"/></rowFields><dataFields count="1"><dataField name="Sum" fld="1"/></dataFields></pivotTableDefinition>`,
  "xl/pivotTables/_rels/pivotTable1.xml.rels": rels([
    "rId1",
    "pivotCacheDefinition",
    "../pivotCache/pivotCacheDefinition1.xml",
  ]),
  "xl/pivotCache/pivotCacheDefinition1.xml": `<pivotCacheDefinition xmlns="${MAIN}" xmlns:r="${OFFICE}" r:id="rId1" refreshOnLoad="1" recordCount="1"><cacheSource type="worksheet"><worksheetSource ref="A11:B12" sheet="Bed 7"/></cacheSource><cacheFields count="2"><cacheField name="Head"><sharedItems containsSemiMixedTypes="0" containsString="0" containsNumber="1" minValue="1" maxValue="1" count="1"><n v="1"/></sharedItems></cacheField><cacheField name="Flow"><sharedItems containsSemiMixedTypes="0" containsString="0" containsNumber="1" minValue="2" maxValue="2"/></cacheField></cacheFields></pivotCacheDefinition>`,
  "xl/pivotCache/_rels/pivotCacheDefinition1.xml.rels": rels(["rId1", "pivotCacheRecords", "pivotCacheRecords1.xml"]),
  "xl/pivotCache/pivotCacheRecords1.xml": `<pivotCacheRecords xmlns="${MAIN}" count="1"><r><x v="0"/><n v="2"/></r></pivotCacheRecords>`,
  "xl/styles.xml": STYLES,
  "xl/sharedStrings.xml": `<sst xmlns="${MAIN}" count="4" uniqueCount="4"><si><t>Caught</t></si><si><r><t>Twice </t></r><r><rPr><b/><sz val="11"/></rPr><t>bold</t></r></si><si><t>Head</t></si><si><t>Flow</t></si></sst>`,
  "xl/calcChain.xml": `<calcChain xmlns="${MAIN}"><c r="B2" i="3"/><c r="B3" i="3"/><c r="B4" i="3"/><c r="D4" i="3"/></calcChain>`,
  "xl/connections.xml": `<connections xmlns="${MAIN}"><connection id="1" name="Weather" type="6" refreshedVersion="6" background="1" saveData="1"><textPr sourceFile="weather.csv"/></connection></connections>`,
  "xl/externalLinks/externalLink1.xml": `<externalLink xmlns="${MAIN}"><externalBook xmlns:r="${OFFICE}" r:id="rId1"><sheetNames><sheetName val="Sheet1"/></sheetNames></externalBook></externalLink>`,
  "xl/externalLinks/_rels/externalLink1.xml.rels": rels(["rId1", "externalLinkPath", "other.xlsx", "External"]),
  "customXml/item1.xml": '<nursery xmlns="urn:example:nursery"><block>7</block></nursery>',
};

const TYPES: Record<string, string> = {
  "docProps/core.xml": "application/vnd.openxmlformats-package.core-properties+xml",
  "docProps/custom.xml": `${KIND}.custom-properties+xml`,
  "xl/workbook.xml": `${KIND}.spreadsheetml.sheet.main+xml`,
  "xl/persons/person.xml": "application/vnd.ms-excel.person+xml",
  "xl/threadedComments/threadedComment1.xml": "application/vnd.ms-excel.threadedcomments+xml",
  "xl/chartsheets/sheet1.xml": `${KIND}.spreadsheetml.chartsheet+xml`,
};
const KINDS: [start: string, kind: string][] = [
  ["xl/worksheets/sheet", "spreadsheetml.worksheet"],
  ["xl/drawings/drawing", "drawing"],
  ["xl/charts/", "drawingml.chart"],
  ["xl/tables/", "spreadsheetml.table"],
  ["xl/comments", "spreadsheetml.comments"],
  ["xl/pivotTables/", "spreadsheetml.pivotTable"],
  ["xl/pivotCache/pivotCacheDefinition", "spreadsheetml.pivotCacheDefinition"],
  ["xl/pivotCache/pivotCacheRecords", "spreadsheetml.pivotCacheRecords"],
  ["xl/styles", "spreadsheetml.styles"],
  ["xl/sharedStrings", "spreadsheetml.sharedStrings"],
  ["xl/calcChain", "spreadsheetml.calcChain"],
  ["xl/connections", "spreadsheetml.connections"],
  ["xl/externalLinks/", "spreadsheetml.externalLink"],
];

function contentTypes(): string {
  const overrides = Object.keys(xmlParts).flatMap((part) => {
    const kind = KINDS.find(([start]) => part.startsWith(start) && part.endsWith(".xml"))?.[1];
    const type = TYPES[part] ?? (kind && `${KIND}.${kind}+xml`);
    return type ? [`<Override PartName="/${part}" ContentType="${type}"/>`] : [];
  });
  const usual = [
    ["rels", "application/vnd.openxmlformats-package.relationships+xml"],
    ["xml", "application/xml"],
    ["png", "image/png"],
    ["vml", `${KIND}.vmlDrawing`],
  ].map(([extension, type]) => `<Default Extension="${extension}" ContentType="${type}"/>`);
  return `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${usual.join("")}${overrides.join("")}</Types>`;
}

/** Parts of a workbook with much that the desk does not show, as texts; the picture as bytes. */
export function foreignParts(): Record<string, Uint8Array> {
  const texts = { "[Content_Types].xml": contentTypes(), ...xmlParts };
  const parts = Object.entries(texts).map(([part, text]) => [part, new TextEncoder().encode(HEAD + text)] as const);
  return { ...Object.fromEntries(parts), "xl/media/image1.png": fromBase64(DOT) };
}
