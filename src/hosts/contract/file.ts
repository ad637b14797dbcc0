import { strToU8, zipSync } from "fflate";

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml";

const sheetPart = (rows: string[], after = ""): string => {
  const lines = rows.map((cell, i) => `<row r="${i + 1}"><c r="A${i + 1}">${cell}</c></row>`);
  return `<worksheet xmlns="${MAIN}"><sheetData>${lines.join("")}</sheetData>${after}</worksheet>`;
};

const relationships = (targets: [type: string, target: string][]): string => {
  const all = targets.map(
    ([type, target], i) => `<Relationship Id="rId${i + 1}" Type="${OFFICE}/${type}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${PACKAGE}/relationships">${all.join("")}</Relationships>`;
};

/**
 * A small workbook file: sheet `readings` with three catches in A1:A3 and a name for them; sheet `results`, protected,
 * with their sum in A1 by address and in A2 by name. Names of sheets hold no characters that XML or a formula would quote but spaces.
 */
export function contractFile(readings: string, results: string, name: string): Uint8Array {
  const parts: Record<string, string> = {
    "[Content_Types].xml":
      `<Types xmlns="${PACKAGE}/content-types">` +
      '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
      `<Override PartName="/xl/workbook.xml" ContentType="${KIND}.sheet.main+xml"/>` +
      [1, 2]
        .map((i) => `<Override PartName="/xl/worksheets/sheet${i}.xml" ContentType="${KIND}.worksheet+xml"/>`)
        .join("") +
      "</Types>",
    "_rels/.rels": relationships([["officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml":
      `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>` +
      `<sheet name="${readings}" sheetId="1" r:id="rId1"/><sheet name="${results}" sheetId="2" r:id="rId2"/></sheets>` +
      `<definedNames><definedName name="${name}">'${readings}'!$A$1:$A$3</definedName></definedNames></workbook>`,
    "xl/_rels/workbook.xml.rels": relationships([
      ["worksheet", "worksheets/sheet1.xml"],
      ["worksheet", "worksheets/sheet2.xml"],
    ]),
    "xl/worksheets/sheet1.xml": sheetPart(["<v>20</v>", "<v>30</v>", "<v>40</v>"]),
    "xl/worksheets/sheet2.xml": sheetPart(
      [`<f>SUM('${readings}'!A1:A3)</f><v>90</v>`, `<f>SUM(${name})</f><v>90</v>`],
      '<sheetProtection sheet="1"/>',
    ),
  };
  return zipSync(Object.fromEntries(Object.entries(parts).map(([path, text]) => [path, strToU8(HEAD + text)])));
}
