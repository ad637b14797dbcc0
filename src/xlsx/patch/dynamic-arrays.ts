import { appendEdit, edited, tagEdit } from "../parts/edits";
import { isMain, SPREADSHEET, XML_HEAD } from "../parts/namespaces";
import { folderOf, onlyRelation, relationsOf, textOf } from "../parts/relations";
import { childOf, childrenOf, type XmlElement, xmlTree } from "../parts/xml-tree";
import { declareType, freePart, type Parts, relate, writePart } from "./write-part";

const DYNAMIC = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
const NAME = "XLDAPR";
const FLAGS =
  'minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" ' +
  'clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"';

const kind = (p: string) => `<${p}metadataType name="${NAME}" ${FLAGS}/>`;
const future = (p: string) =>
  `<${p}futureMetadata name="${NAME}" count="1"><${p}bk><${p}extLst><${p}ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">` +
  `<xda:dynamicArrayProperties xmlns:xda="${DYNAMIC}" fDynamic="1" fCollapsed="0"/></${p}ext></${p}extLst></${p}bk>` +
  `</${p}futureMetadata>`;
const mark = (p: string, type: number) => `<${p}bk><${p}rc t="${type}" v="0"/></${p}bk>`;

function begin(parts: Parts, main: string): number {
  const part = freePart(parts, folderOf(main), "metadata", "xml");
  const body =
    `<metadataTypes count="1">${kind("")}</metadataTypes>${future("")}` +
    `<cellMetadata count="1">${mark("", 1)}</cellMetadata>`;
  writePart(parts, part, `${XML_HEAD}<metadata xmlns="${SPREADSHEET}">${body}</metadata>`);
  relate(parts, main, "sheetMetadata", part);
  declareType(parts, part, TYPE);
  return 1;
}

const counted = (list: XmlElement) => tagEdit(list, { count: String(list.children.length + 1) });

/** The number by which a cell says that its formula fills as many cells as it needs; adds what the file lacks for it. */
export function dynamicMark(parts: Parts, main: string): number {
  const part = onlyRelation(relationsOf(parts, main), "sheetMetadata")?.part;
  if (part === undefined || !parts.has(part)) return begin(parts, main);
  const xml = textOf(parts, part);
  const root = xmlTree(xml);
  const p = root.prefix;
  const types = childOf(root, isMain, "metadataTypes");
  const cells = childOf(root, isMain, "cellMetadata");
  const type = (types?.children.findIndex(({ given }) => given.get("name") === NAME) ?? -1) + 1;
  const marks = childrenOf(cells, isMain, "bk");
  const found = marks.findIndex(({ children }) => {
    const [first] = children;
    return children.length === 1 && first?.given.get("t") === String(type) && first.given.get("v") === "0";
  });
  if (type > 0 && found >= 0) return found + 1;
  if (!types) throw new Error("the workbook's metadata has no list of kinds");
  const edits = [];
  if (type === 0) {
    edits.push(counted(types), { start: types.closeStart, end: types.closeStart, text: kind(p) });
    const last = [...root.children]
      .filter(({ name }) => ["metadataTypes", "metadataStrings", "mdxMetadata", "futureMetadata"].includes(name))
      .at(-1)!;
    edits.push({ start: last.end, end: last.end, text: future(p) });
  }
  const number = type > 0 ? type : types.children.length + 1;
  if (cells) edits.push(counted(cells), appendEdit(xml, cells, mark(p, number)));
  else {
    const last = [...root.children].filter(({ name }) => !["valueMetadata", "extLst"].includes(name)).at(-1)!;
    const text = `<${p}cellMetadata count="1">${mark(p, number)}</${p}cellMetadata>`;
    edits.push({ start: last.end, end: last.end, text });
  }
  writePart(parts, part, edited(xml, edits));
  return marks.length + 1;
}
