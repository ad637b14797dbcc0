import { strToU8, zipSync } from "fflate";
import { type Edit, edited } from "../parts/edits";
import { escapedAttribute } from "../parts/escaped";
import { CONTENT_TYPES_SPACE, isMain, PACKAGE_RELATIONS, RELATIONS, SPREADSHEET, XML_HEAD } from "../parts/namespaces";
import type { FilePackage } from "../parts/package";
import { onlyRelation, textOf } from "../parts/relations";
import { WORKBOOK_TYPE } from "../parts/safe-file";
import type { SheetElement } from "../parts/sheet-order";
import { readXml } from "../parts/xml";
import { childOf } from "../parts/xml-tree";
import type { ReadSheet } from "./limits/desk-limits";
import { paletteRows, stylesOf } from "./palette";

type Texts = Record<string, string>;

const STYLES = "xl/styles.xml";
/** What the grid's library reads of a sheet; it would make every cell that a table, a name or a merge covers. */
const READ: ReadonlySet<string> = new Set<SheetElement>([
  "sheetPr",
  "sheetViews",
  "sheetData",
  "sheetProtection",
  "conditionalFormatting",
  "extLst",
]);

/** A part whose tags of the main kind have no prefix. */
function unprefixed(xml: string): string {
  const edits: Edit[] = [];
  let depth = 0;
  readXml(xml, {
    open(tag, start) {
      const space = depth === 0 && isMain(tag.uri) ? ` xmlns="${tag.uri}"` : "";
      depth += 1;
      if (tag.prefix !== "" && isMain(tag.uri)) {
        edits.push({ start, end: start + 1 + tag.name.length, text: `<${tag.local}${space}` });
      }
    },
    close(tag, start, end) {
      depth -= 1;
      if (start < end && tag.prefix !== "" && isMain(tag.uri)) edits.push({ start, end, text: `</${tag.local}>` });
    },
  });
  return edited(xml, edits);
}

/** A sheet's shape and formats, with one cell a style in place of its own. */
function sheetText(read: ReadSheet, newer: boolean): string {
  const { frame, root, table } = read;
  const gone = root.children.filter(({ name }) => !READ.has(name) || (name === "extLst" && !newer));
  const edits = gone.map(({ start, end }): Edit => ({ start, end, text: "" }));
  const rows = paletteRows(stylesOf(read));
  return unprefixed(
    edited(frame, rows === "" ? edits : [...edits, { start: table.openEnd, end: table.openEnd, text: rows }]),
  );
}

const relationsText = (targets: [id: string, kind: string, target: string][]): string =>
  `${XML_HEAD}<Relationships xmlns="${PACKAGE_RELATIONS}">${targets
    .map(([id, kind, target]) => `<Relationship Id="${id}" Type="${RELATIONS}/${kind}" Target="/${target}"/>`)
    .join("")}</Relationships>`;

/**
 * What the grid's library reads of a file, in parts and tags of the names that it looks for.
 *
 * @param newer With what newer programs add to sheets, such as their conditional formats
 */
export function usualPackage(file: FilePackage, read: ReadonlyMap<string, ReadSheet>, newer: boolean): Uint8Array {
  const { parts, workbook, relations, sheets } = file;
  const shown = sheets.flatMap((sheet) => {
    const found = read.get(sheet.part);
    return found ? [{ ...sheet, text: sheetText(found, newer) }] : [];
  });
  const styles = onlyRelation(relations, "styles")?.part;
  const is1904 = childOf(workbook, isMain, "workbookPr")?.given.get("date1904") ?? "0";
  const listed = shown.map(
    ({ name, sheetId, element }, i) =>
      `<sheet name="${escapedAttribute(name)}" sheetId="${escapedAttribute(sheetId)}" state="${element.given.get("state") ?? "visible"}" r:id="rId${i + 1}"/>`,
  );
  const texts: Texts = {
    "[Content_Types].xml": `${XML_HEAD}<Types xmlns="${CONTENT_TYPES_SPACE}"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${WORKBOOK_TYPE}"/></Types>`,
    "_rels/.rels": relationsText([["rId1", "officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": `${XML_HEAD}<workbook xmlns="${SPREADSHEET}" xmlns:r="${RELATIONS}"><workbookPr date1904="${is1904}"/><sheets>${listed.join("")}</sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": relationsText([
      ...shown.map((_, i): [string, string, string] => [`rId${i + 1}`, "worksheet", `xl/worksheets/sheet${i + 1}.xml`]),
      ...(styles === undefined ? [] : [["styles", "styles", STYLES] as [string, string, string]]),
    ]),
    ...Object.fromEntries(shown.map(({ text }, i) => [`xl/worksheets/sheet${i + 1}.xml`, text])),
    ...(styles !== undefined && { [STYLES]: unprefixed(textOf(parts, styles)) }),
  };
  return zipSync(Object.fromEntries(Object.entries(texts).map(([part, text]) => [part, strToU8(text)])), { level: 0 });
}
