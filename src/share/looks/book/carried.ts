import { relationsOf } from "../../../xlsx/parts/relations";
import type { FileBook } from "../../../xlsx/parts/workbook-file";
import { added, type Finding, misleading } from "../../finding";

const FILE = "the file";
/** Parts of a workbook that carry or fetch more than it shows. */
const CARRIED: Readonly<Record<string, string>> = {
  externalLink: "a link to another file, whose values can take the place of figures",
  connections: "a query of data from outside",
  vbaProject: "macros",
  oleObject: "an embedded object",
  package: "an embedded file",
  control: "an embedded control",
  queryTable: "a query of data from outside",
  pivotCacheDefinition: "a pivot table's data",
  volatileDependencies: "a link to live data",
  xmlMaps: "a map to data from outside",
  attachedToolbars: "toolbars with macros",
};
/** What a workbook points to in use, beside what it carries. */
const USUAL_RELATIONS = [
  "officeDocument",
  "core-properties",
  "extended-properties",
  "custom-properties",
  "digital-signature/origin",
  "worksheet",
  "chartsheet",
  "dialogsheet",
  "xlMacrosheet",
  "xlIntlMacrosheet",
  "styles",
  "theme",
  "sharedStrings",
  "calcChain",
  "sheetMetadata",
  "person",
  "usernames",
  "customXml",
  "customXmlProps",
  "thumbnail",
  "classificationlabels",
  "docMetadata/LabelInfo",
];
const NAMED_RELATIONS: Readonly<Record<string, string>> = {
  origin: "carries a signature, which this check does not look at",
  thumbnail: "carries a picture of a workbook, which folders show",
  customXml: "carries data of another program",
  revisionHeaders: "carries a record of changes, which this check does not look at",
};
/** What may lead out of a file without being fetched when it is opened. */
const LEADS_OUT = ["hyperlink", "externalLink"];

/** What a file or its workbook points to that a workbook of ours does not. */
function relationFindings({ parts, main }: FileBook): Finding[] {
  const types = [...relationsOf(parts, ""), ...relationsOf(parts, main)].map(({ type }) => type);
  return [...new Set(types)].flatMap((type) => {
    const kind = type.split("/").at(-1) ?? "";
    if (NAMED_RELATIONS[kind]) return [added(FILE, NAMED_RELATIONS[kind])];
    if (CARRIED[kind] || USUAL_RELATIONS.some((usual) => type.endsWith(`/${usual}`))) return [];
    return [
      misleading(FILE, `holds a link to a part that Canfall's own workbook does not have (${kind.slice(0, 40)})`),
    ];
  });
}

/** What a file carries or fetches beside its sheets, and what it points to. */
export function carriedFindings(book: FileBook): Finding[] {
  const from = ["", book.main, ...book.sheets.map(({ part }) => part), ...book.parts.keys()].filter(
    (part, index, all) => all.indexOf(part) === index && !part.endsWith(".rels"),
  );
  const relations = from.flatMap((part) =>
    relationsOf(book.parts, part).map(({ kind, type, part: to }) => ({
      kind: kind || (type.split("/").at(-1) ?? ""),
      to,
    })),
  );
  const kinds = new Set(relations.map(({ kind }) => kind));
  const fetched = relations.filter(({ kind, to }) => to === "" && !LEADS_OUT.includes(kind) && !CARRIED[kind]);
  const named = [...book.parts.keys()].some((part) => /vbaProject|activeX|embeddings\//i.test(part));
  const found = [...kinds].flatMap((kind) => (CARRIED[kind] ? [misleading(FILE, `holds ${CARRIED[kind]}`)] : []));
  const hidden = named && found.length === 0 ? [misleading(FILE, "holds macros or embedded objects")] : [];
  const outside = [...new Set(fetched.map(({ kind }) => kind))].map((kind) =>
    misleading(FILE, `fetches something from outside when it is opened (${kind.slice(0, 40)})`),
  );
  return [...relationFindings(book), ...found, ...hidden, ...outside];
}
