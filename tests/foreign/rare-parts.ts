import { strFromU8, strToU8 } from "fflate";
import { foreignParts, OFFICE } from "./foreign-parts";

const MS = "http://schemas.microsoft.com/office";
const X14 = `${MS}/spreadsheetml/2009/9/main`;
const SHEET = "xl/worksheets/sheet2.xml";
const RELATIONS = "xl/worksheets/_rels/sheet2.xml.rels";

const relation = (id: string, type: string, target: string) =>
  `<Relationship Id="${id}" Type="${type.startsWith("http") ? type : `${OFFICE}/${type}`}" Target="${target}"/>`;

const TEXTS: Record<string, string> = {
  "xl/ctrlProps/ctrlProp1.xml": `<formControlPr xmlns="${X14}" objectType="CheckBox" fmlaLink="Secret!$A$1"/>`,
  "xl/slicers/slicer1.xml": `<slicers xmlns="${X14}"><slicer name="Block" cache="Slicer_Block" rowHeight="241300"/></slicers>`,
  "xl/richData/rdrichvalue.xml": `<rvData xmlns="${MS}/spreadsheetml/2017/richdata" count="0"/>`,
  "xl/ink/ink1.xml": '<inkml:ink xmlns:inkml="http://www.w3.org/2003/InkML"/>',
  "xl/webextensions/taskpanes.xml": `<wetp:taskpanes xmlns:wetp="${MS}/webextensions/taskpanes/2010/11"/>`,
  // as spreadsheet programs write the text of a button: no strict xml
  "xl/drawings/vmlDrawing2.vml":
    '<xml xmlns:v="urn:schemas-microsoft-com:vml"><v:shape id="_x0000_s1026"><v:textbox><br></v:textbox></v:shape></xml>',
};

const BYTES: Record<string, Uint8Array> = {
  "xl/embeddings/oleObject1.bin": Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0),
  "xl/printerSettings/printerSettings1.bin": Uint8Array.of(0, 1, 2),
};

const MORE = [
  relation("rId2", "ctrlProp", "../ctrlProps/ctrlProp1.xml"),
  relation("rId3", "oleObject", "../embeddings/oleObject1.bin"),
  relation("rId4", "printerSettings", "../printerSettings/printerSettings1.bin"),
  relation("rId5", `${MS}/2007/relationships/slicer`, "../slicers/slicer1.xml"),
  relation("rId6", "vmlDrawing", "../drawings/vmlDrawing2.vml"),
].join("");

const BEHIND_CELLS =
  '<protectedRanges><protectedRange sqref="A1:A3 C4" name="Typed" securityDescriptor="O:WDG:WDD:(A;;CC;;;WD)"/></protectedRanges>' +
  '<scenarios current="0"><scenario name="wet" locked="1" count="1" user="auditor"><inputCells r="A1" val="5"/></scenario></scenarios>' +
  '<customSheetViews><customSheetView guid="{11111111-2222-3333-4444-555555555555}" scale="50"><selection activeCell="B2" sqref="B2"/></customSheetView></customSheetViews>' +
  '<phoneticPr fontId="1" type="Hiragana"/><pageSetup paperSize="9" r:id="rId4"/><ignoredErrors><ignoredError sqref="C1:C10" numberStoredAsText="1"/></ignoredErrors>' +
  '<legacyDrawing r:id="rId6"/><oleObjects><oleObject progId="Word.Document.12" shapeId="1025" r:id="rId3"/></oleObjects><controls><control shapeId="1026" r:id="rId2" name="Check 1"/></controls>' +
  `<extLst><ext uri="{A8765BA9-456A-4dab-B4F3-ACF838C121DE}" xmlns:x14="${X14}"><x14:slicerList><x14:slicer r:id="rId5"/></x14:slicerList></ext></extLst>`;

/** The same workbook with form controls, slicers, embedded objects, ink, scenarios and other rare things. */
export function rareParts(): Record<string, Uint8Array> {
  const parts = foreignParts();
  const changed = (part: string, from: string, to: string) => {
    const before = strFromU8(parts[part]!);
    if (!before.includes(from)) throw new Error(`${part} holds no ${from}`);
    parts[part] = strToU8(before.replace(from, () => to));
  };
  changed(SHEET, "<worksheet ", `<worksheet xmlns:r="${OFFICE}" `);
  changed(SHEET, "</sheetData>", `</sheetData>${BEHIND_CELLS}`);
  changed(SHEET, '<row r="1">', '<row r="1" ph="1">');
  changed(RELATIONS, "</Relationships>", `${MORE}</Relationships>`);
  const bin = '<Default Extension="bin" ContentType="application/octet-stream"/>';
  changed("[Content_Types].xml", "<Override", `${bin}<Override`);
  const texts = Object.entries(TEXTS).map(([part, text]) => [part, strToU8(text)]);
  return { ...parts, ...Object.fromEntries(texts), ...BYTES };
}
