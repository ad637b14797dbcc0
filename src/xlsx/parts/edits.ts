import { InputError } from "../../core/errors";
import { escapedAttribute } from "./escaped";
import { within, type XmlElement, xmlTree } from "./xml-tree";

/** A piece of a part and what is put in its place. */
export interface Edit {
  start: number;
  end: number;
  text: string;
}

/** A part with pieces replaced, the rest as it was, sign by sign. */
export function edited(xml: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let at = 0;
  for (const { start, end, text } of [...edits].sort((one, other) => one.start - other.start || one.end - other.end)) {
    pieces.push(xml.slice(at, start), text);
    at = end;
  }
  return pieces.join("") + xml.slice(at);
}

const gone = ({ start, end }: XmlElement): Edit => ({ start, end, text: "" });

/** A part without the elements of a name for which `unwanted` answers true. */
export function withoutElements(
  xml: string,
  name: string,
  unwanted: (given: ReadonlyMap<string, string>) => boolean,
): string {
  const found = [...within(xmlTree(xml))].filter((one) => one.name === name && unwanted(one.given));
  return found.length === 0 ? xml : edited(xml, found.map(gone));
}

/** What puts more at the end of an element, also of one that is an empty tag. */
export function appendEdit(xml: string, parent: XmlElement, text: string): Edit {
  if (parent.openEnd < parent.end) return { start: parent.closeStart, end: parent.closeStart, text };
  const close = xml.lastIndexOf("/", parent.end);
  return { start: close, end: parent.end, text: `>${text}</${parent.prefix}${parent.name}>` };
}

/** What gives an element's opening tag other attributes; null takes one away. */
export function tagEdit(element: XmlElement, changes: Readonly<Record<string, string | null>>): Edit {
  const attributes = new Map<string, string | null>([...element.raw, ...Object.entries(changes)]);
  const given = [...attributes]
    .map(([name, value]) => (value === null ? "" : ` ${name}="${escapedAttribute(value)}"`))
    .join("");
  const end = element.openEnd === element.end ? "/>" : ">";
  return { start: element.start, end: element.openEnd, text: `<${element.prefix}${element.name}${given}${end}` };
}

function firstOf(xml: string, name: string): XmlElement | undefined {
  const root = xmlTree(xml);
  return root.name === name ? root : [...within(root)].find((one) => one.name === name);
}

/** A part with more at the end of the first element of a name; null where it has none. */
export function appended(xml: string, parent: string, text: string): string | null {
  const found = firstOf(xml, parent);
  return found ? edited(xml, [appendEdit(xml, found, text)]) : null;
}

/** The same for an element that has to be there. */
export function mustAppend(xml: string, parent: string, text: string): string {
  const longer = appended(xml, parent, text);
  if (longer === null) throw new InputError("the workbook", "be as a spreadsheet program saves it", `no ${parent}`);
  return longer;
}

/** A part with more behind the last element of one of these names. */
export function insertedBehind(xml: string, names: readonly string[], text: string): string {
  const found = [...within(xmlTree(xml))].filter(({ name }) => names.includes(name)).at(-1);
  const at = found?.end ?? -1;
  if (at < 0) throw new InputError("the workbook", "be as a spreadsheet program saves it", `no ${names[0]}`);
  return edited(xml, [{ start: at, end: at, text }]);
}
