/** Each name as files of today's usual form use it, then as the strict form of the standard does (ISO/IEC 29500-1). */
const MAIN = [
  "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
  "http://purl.oclc.org/ooxml/spreadsheetml/main",
];
const OFFICE = [
  "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
  "http://purl.oclc.org/ooxml/officeDocument/relationships",
];

/** The head of a part of ours. */
export const XML_HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
export const SPREADSHEET = MAIN[0]!;
export const RELATIONS = OFFICE[0]!;
export const PACKAGE_RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
export const CONTENT_TYPES_SPACE = "http://schemas.openxmlformats.org/package/2006/content-types";

/** Relationship types of other makers that are looked for, in full. */
const OTHER_KINDS = new Map([
  ["http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes", "webextensiontaskpanes"],
  ["http://schemas.microsoft.com/office/2011/relationships/webextension", "webextension"],
  ["http://schemas.microsoft.com/office/2014/relationships/chartEx", "chartEx"],
]);

export const isMain = (space: string): boolean => MAIN.includes(space);
export const isRelations = (space: string): boolean => OFFICE.includes(space);

/** What a relationship's full type means, such as `worksheet`; "" where the type is not one of the standard's. */
export function kindOf(type: string): string {
  const at = type.lastIndexOf("/");
  return OFFICE.includes(type.slice(0, at)) ? type.slice(at + 1) : (OTHER_KINDS.get(type) ?? "");
}
