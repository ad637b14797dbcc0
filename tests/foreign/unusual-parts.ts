import { strToU8 } from "fflate";
import { OFFICE } from "./foreign-parts";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const DRAW = "http://schemas.openxmlformats.org/drawingml/2006";

const rels = (...all: [id: string, type: string, target: string][]) =>
  `<Relationships xmlns="${PACKAGE}/relationships">${all
    .map(([id, type, target]) => `<Relationship Id="${id}" Type="${OFFICE}/${type}" Target="${target}"/>`)
    .join("")}</Relationships>`;

const ROWS = [
  '<x:row r="1"><x:c r="A1" t="inlineStr"><x:is><x:t>Caught</x:t><x:rPh sb="0" eb="1"><x:t>sound</x:t></x:rPh></x:is></x:c></x:row>',
  '<x:row><x:c><x:v>10</x:v></x:c><x:c r="B2"><x:f t="shared" ref="B2:B4" si="0">A2*$A$3</x:f><x:v>200</x:v></x:c><x:c t="d"><x:v>2026-01-02T00:00:00</x:v></x:c></x:row>',
  '<x:row r="3"><x:c r="A3"><x:v>20</x:v></x:c><x:c r="B3"><x:f t="shared" si="0"/><x:v>400</x:v></x:c></x:row>',
  '<x:row r="4"><x:c r="A4"><x:v>30</x:v></x:c><x:c r="B4"><x:f t="shared" si="0"/><x:v>600</x:v></x:c><x:c r="C4" t="str"><x:f><![CDATA[IF(A2<11,"a & b","c")]]></x:f><x:v>a &amp; b</x:v></x:c><x:c r="D4"><x:f t="dataTable" ref="D4:D5" dt2D="0" dtr="0" r1="A3"/><x:v>1</x:v></x:c></x:row>',
  '<x:row r="5"><x:c r="D5"><x:v>2</x:v></x:c><x:c r="E5"><x:f t="array" ref="E5:E6">A2:A4*2</x:f><x:v>20</x:v></x:c></x:row>',
  '<x:row r="6"><x:c r="E6"><x:v>40</x:v></x:c></x:row>',
];
const BEHIND =
  '<x:autoFilter ref="A1:C4"><x:filterColumn colId="1"><x:filters><x:filter val="200"/></x:filters></x:filterColumn></x:autoFilter>' +
  '<x:dataConsolidate><x:dataRefs count="1"><x:dataRef ref="A3:A4" sheet="Main"/></x:dataRefs></x:dataConsolidate>' +
  '<x:conditionalFormatting sqref="A2:A4"><x:cfRule type="colorScale" priority="1"><x:colorScale><x:cfvo type="formula" val="$A$3"/><x:cfvo type="max"/><x:color rgb="FFFF0000"/><x:color rgb="FF00FF00"/></x:colorScale></x:cfRule></x:conditionalFormatting>' +
  '<x:dataValidations count="1"><x:dataValidation type="whole" operator="greaterThan" showErrorMessage="1" sqref="A2:A4"><x:formula1>Two!$A$1</x:formula1></x:dataValidation></x:dataValidations><x:hyperlinks><x:hyperlink ref="B4" location="A3" display="go"/></x:hyperlinks><x:cellWatches><x:cellWatch r="A3"/></x:cellWatches><x:drawing r:id="d"/><x:legacyDrawing r:id="v"/>';

const CHART = `<c:chartSpace xmlns:c="${DRAW}/chart"><c:chart><c:plotArea><c:barChart><c:ser><c:val><c:numRef><c:f>Main!$A$2:$A$4</c:f></c:numRef></c:val><c:extLst><c:ext uri="{02D57815-91ED-43cb-92C2-25804820EDAC}" xmlns:c15="http://schemas.microsoft.com/office/drawing/2012/chart"><c15:fullRef><c15:sqref>Main!$A$2:$A$5</c15:sqref></c15:fullRef></c:ext></c:extLst></c:ser></c:barChart></c:plotArea></c:chart></c:chartSpace>`;

const TYPES: [part: string, type: string][] = [
  ["book.xml", `${KIND}.sheet.main+xml`],
  ["cells/one.xml", `${KIND}.worksheet+xml`],
  ["cells/two.xml", `${KIND}.worksheet+xml`],
  ["look.xml", `${KIND}.styles+xml`],
];

const TEXTS: Record<string, string> = {
  "[Content_Types].xml": `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${TYPES.map(([part, type]) => `<Override PartName="/${part}" ContentType="${type}"/>`).join("")}</Types>`,
  "_rels/.rels": rels(["a", "officeDocument", "/book.xml"]),
  "book.xml": `<x:workbook xmlns:x="${MAIN}" xmlns:r="${OFFICE}"><x:sheets><x:sheet name="Main" sheetId="1" r:id="s1"/><x:sheet name="Two" sheetId="2" r:id="s2"/></x:sheets><x:definedNames><x:definedName name="Here">Main!$A$3</x:definedName></x:definedNames></x:workbook>`,
  "_rels/book.xml.rels": rels(
    ["s1", "worksheet", "cells/one.xml"],
    ["s2", "worksheet", "/cells/two.xml"],
    ["l", "styles", "./look.xml"],
  ),
  "cells/one.xml": `<x:worksheet xmlns:x="${MAIN}" xmlns:r="${OFFICE}"><!-- by hand --><x:sheetData>${ROWS.join("")}</x:sheetData>${BEHIND}</x:worksheet>`,
  "cells/_rels/one.xml.rels": rels(["d", "drawing", "../drawn/a.xml"], ["v", "vmlDrawing", "../drawn/old.vml"]),
  "cells/two.xml": `<x:worksheet xmlns:x="${MAIN}"><x:sheetData><x:row><x:c><x:f>SUM(Main!A2:A4)</x:f><x:v>60</x:v></x:c><x:c><x:f>SUM(Main:Two!B9)</x:f><x:v>0</x:v></x:c></x:row></x:sheetData></x:worksheet>`,
  "look.xml": `<x:styleSheet xmlns:x="${MAIN}"><x:fonts><x:font><x:sz val="11"/><x:name val="Calibri"/></x:font></x:fonts><x:fills><x:fill><x:patternFill/></x:fill></x:fills><x:borders><x:border/></x:borders><x:cellXfs><x:xf/></x:cellXfs></x:styleSheet>`,
  "drawn/a.xml": `<xdr:wsDr xmlns:xdr="${DRAW}/spreadsheetDrawing"><xdr:twoCellAnchor><xdr:from><xdr:col>5</xdr:col><xdr:row>2</xdr:row></xdr:from><xdr:to><xdr:col>9</xdr:col><xdr:row>9</xdr:row></xdr:to><xdr:sp textlink="Main!$A$3"/></xdr:twoCellAnchor></xdr:wsDr>`,
  "drawn/_rels/a.xml.rels": rels(["c", "chart", "graph.xml"]),
  "drawn/graph.xml": CHART,
  "drawn/old.vml":
    '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:x="urn:schemas-microsoft-com:office:excel"><v:shape><x:ClientData ObjectType="Checkbox"><x:FmlaLink>$A$3</x:FmlaLink></x:ClientData></v:shape></xml>',
};

/**
 * A workbook as its standard allows and few programs write: tags with a prefix, parts under names of their own, rows and
 * cells without an address, a date as text, a table of what-ifs, no theme.
 */
export const unusualParts = (): Record<string, Uint8Array> =>
  Object.fromEntries(Object.entries(TEXTS).map(([part, text]) => [part, strToU8(text)]));
