import { strToU8, zipSync } from "fflate";
import { type Edit, edited } from "../parts/edits";
import { escapedAttribute } from "../parts/escaped";
import { CONTENT_TYPES_SPACE, isMain, PACKAGE_RELATIONS, RELATIONS, SPREADSHEET, XML_HEAD } from "../parts/namespaces";
import type { FilePackage, ListedSheet } from "../parts/package";
import { onlyRelation, relationsOf, textOf } from "../parts/relations";
import { WORKBOOK_TYPE } from "../parts/safe-file";
import { EVERY_TEXT, sheetContent } from "../parts/sheet-cells";
import type { SheetElement } from "../parts/sheet-order";
import { readXml } from "../parts/xml";
import { childOf, xmlTree } from "../parts/xml-tree";

type Texts = Record<string, string>;
type Parts = FilePackage["parts"];

const USUAL_SHEET = /^xl\/worksheets\/sheet\d+\.xml$/;
const USUAL_PARTS: Record<string, string> = {
  styles: "xl/styles.xml",
  sharedStrings: "xl/sharedStrings.xml",
  theme: "xl/theme/theme1.xml",
};
/** What the desk takes from a sheet. */
const SHOWN: ReadonlySet<string> = new Set<SheetElement>([
  "sheetPr",
  "dimension",
  "sheetViews",
  "sheetFormatPr",
  "cols",
  "sheetData",
  "sheetProtection",
  "mergeCells",
  "conditionalFormatting",
  "dataValidations",
]);

/** Whether a part is in UTF-8 and its tags have no prefix. */
const isPlain = (parts: Parts, part: string): boolean => {
  const head = new TextDecoder().decode(parts.get(part)?.subarray(0, 1024));
  return /^\uFEFF?(\s|<\?[^>]*\?>|<!--[\s\S]*?-->)*<\w+[\s/>]/.test(head);
};

/** Whether the parts of a file have the names, and its tags the form, that the grid's library looks for. */
export function isUsual({ parts, main, relations, sheets }: FilePackage): boolean {
  const found = Object.entries(USUAL_PARTS).map(([kind, usual]) => [onlyRelation(relations, kind)?.part, usual]);
  const read = sheets.filter(({ kind }) => kind === "worksheet").map(({ part }) => part);
  const named = main === "xl/workbook.xml" && read.every((part) => USUAL_SHEET.test(part));
  const placed = found.every(([part, usual]) => part === undefined || part === usual || usual?.includes("theme"));
  return (
    named &&
    placed &&
    [main, ...read, ...found.flatMap(([part]) => part ?? [])].every((one) => plainOrTheme(parts, one))
  );
}

const plainOrTheme = (parts: Parts, part: string) => /theme/i.test(part) || isPlain(parts, part);

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

/** What of a sheet gives cells their look and the sheet its shape; values and formulas are left out. */
function shownSheet(xml: string): string {
  const { children } = xmlTree(xml, (name) => name === "sheetData");
  const gone = children.filter(({ name }) => !SHOWN.has(name)).map(({ start, end }) => ({ start, end, text: "" }));
  const bare = [...sheetContent(xml, EVERY_TEXT).cells].map(([address, { start, end, given }]) => {
    const style = given.get("s");
    const p = /^<([\w.-]+:)?/.exec(xml.slice(start, start + 64))?.[1] ?? "";
    return { start, end, text: `<${p}c r="${address}"${style === undefined ? "" : ` s="${style}"`}/>` };
  });
  return edited(xml, [...gone, ...bare]);
}

const relationsText = (targets: [id: string, kind: string, target: string][]): string =>
  `${XML_HEAD}<Relationships xmlns="${PACKAGE_RELATIONS}">${targets
    .map(([id, kind, target]) => `<Relationship Id="${id}" Type="${RELATIONS}/${kind}" Target="/${target}"/>`)
    .join("")}</Relationships>`;

function sheetTexts(parts: Parts, { part }: ListedSheet, number: number): Texts {
  const notes = onlyRelation(relationsOf(parts, part), "comments")?.part;
  const texts: Texts = { [`xl/worksheets/sheet${number}.xml`]: unprefixed(shownSheet(textOf(parts, part))) };
  if (notes !== undefined && parts.has(notes)) {
    texts[`xl/comments${number}.xml`] = unprefixed(textOf(parts, notes));
    texts[`xl/worksheets/_rels/sheet${number}.xml.rels`] = relationsText([
      ["rId1", "comments", `xl/comments${number}.xml`],
    ]);
  }
  return texts;
}

/** What the desk shows of a file, in a package whose parts and tags are as the grid's library looks for them. */
export function usualPackage(file: FilePackage): Uint8Array {
  const { parts, workbook, relations, sheets, names } = file;
  const read = sheets.filter(({ kind }) => kind === "worksheet");
  const shared = Object.entries(USUAL_PARTS).flatMap(([kind, usual]) => {
    const part = onlyRelation(relations, kind)?.part;
    return part === undefined ? [] : [[kind, usual, part] as const];
  });
  const is1904 = childOf(workbook, isMain, "workbookPr")?.given.get("date1904") ?? "0";
  const listed = read.map(
    ({ name, sheetId, element }, i) =>
      `<sheet name="${escapedAttribute(name)}" sheetId="${escapedAttribute(sheetId)}" state="${element.given.get("state") ?? "visible"}" r:id="rId${i + 1}"/>`,
  );
  const named = names
    .filter(({ local }) => local === undefined)
    .map(({ name, text }) => `<definedName name="${escapedAttribute(name)}">${escapedAttribute(text)}</definedName>`);
  const texts: Texts = {
    "[Content_Types].xml": `${XML_HEAD}<Types xmlns="${CONTENT_TYPES_SPACE}"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${WORKBOOK_TYPE}"/></Types>`,
    "_rels/.rels": relationsText([["rId1", "officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": `${XML_HEAD}<workbook xmlns="${SPREADSHEET}" xmlns:r="${RELATIONS}"><workbookPr date1904="${is1904}"/><sheets>${listed.join("")}</sheets><definedNames>${named.join("")}</definedNames></workbook>`,
    "xl/_rels/workbook.xml.rels": relationsText([
      ...read.map((_, i): [string, string, string] => [`rId${i + 1}`, "worksheet", `xl/worksheets/sheet${i + 1}.xml`]),
      ...shared.map(([kind, usual]): [string, string, string] => [kind, kind, usual]),
    ]),
    ...Object.assign({}, ...read.map((sheet, i) => sheetTexts(parts, sheet, i + 1))),
    ...Object.fromEntries(shared.map(([, usual, part]) => [usual, unprefixed(textOf(parts, part))])),
  };
  return zipSync(Object.fromEntries(Object.entries(texts).map(([part, text]) => [part, strToU8(text)])), { level: 0 });
}
