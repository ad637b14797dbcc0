import { strToU8, zipSync } from "fflate";
import { CONTENT_TYPES_SPACE, PACKAGE_RELATIONS, RELATIONS, SPREADSHEET, XML_HEAD } from "../parts/namespaces";

const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const RELS_TYPE = "application/vnd.openxmlformats-package.relationships+xml";

const STYLES =
  '<fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>' +
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>';

const PARTS: Record<string, string> = {
  "[Content_Types].xml":
    `<Types xmlns="${CONTENT_TYPES_SPACE}"><Default Extension="rels" ContentType="${RELS_TYPE}"/>` +
    '<Default Extension="xml" ContentType="application/xml"/>' +
    `<Override PartName="/xl/workbook.xml" ContentType="${KIND}.sheet.main+xml"/>` +
    `<Override PartName="/xl/styles.xml" ContentType="${KIND}.styles+xml"/></Types>`,
  "_rels/.rels": `<Relationships xmlns="${PACKAGE_RELATIONS}"><Relationship Id="rId1" Type="${RELATIONS}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  "xl/workbook.xml": `<workbook xmlns="${SPREADSHEET}" xmlns:r="${RELATIONS}"><sheets/></workbook>`,
  "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${PACKAGE_RELATIONS}"><Relationship Id="rId1" Type="${RELATIONS}/styles" Target="styles.xml"/></Relationships>`,
  "xl/styles.xml": `<styleSheet xmlns="${SPREADSHEET}">${STYLES}</styleSheet>`,
};

/** A workbook file without a sheet. */
export const blankFile = (): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(PARTS).map(([part, text]) => [part, strToU8(XML_HEAD + text)])));
