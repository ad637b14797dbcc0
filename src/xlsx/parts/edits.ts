import { InputError } from "../../core/errors";
import { attributesOf } from "./attributes";
import { type XmlEvent, xmlEvents } from "./xml";

/** A piece of a part and what is in its place. */
export interface Edit {
  start: number;
  end: number;
  text: string;
}

/** A part with pieces replaced, the rest as it was, sign by sign. */
export function edited(xml: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let at = 0;
  for (const { start, end, text } of [...edits].sort((one, other) => one.start - other.start)) {
    pieces.push(xml.slice(at, start), text);
    at = end;
  }
  return pieces.join("") + xml.slice(at);
}

type Tag = Extract<XmlEvent, { source: string }>;
const isTag = (event: XmlEvent): event is Tag => event.kind === "open" || event.kind === "empty";

/** A part without the childless elements of a name for which `unwanted` answers true. */
export function withoutElements(
  xml: string,
  name: string,
  unwanted: (given: ReadonlyMap<string, string>) => boolean,
): string {
  const edits: Edit[] = [];
  let open: Tag | null = null;
  for (const event of xmlEvents(xml)) {
    if (isTag(event) && event.name === name && unwanted(attributesOf(event.source))) {
      if (event.kind === "empty") edits.push({ start: event.start, end: event.end, text: "" });
      else open = event;
    } else if (event.kind === "close" && event.name === name && open) {
      edits.push({ start: open.start, end: event.end, text: "" });
      open = null;
    }
  }
  return edited(xml, edits);
}

/** How many elements of a name a part holds inside the first element of another name. */
export function countWithin(xml: string, parent: string, child: string): number {
  let count = 0;
  let inside = false;
  for (const event of xmlEvents(xml)) {
    if (event.kind === "close" && event.name === parent) break;
    if (!isTag(event)) continue;
    if (inside && event.name === child) count += 1;
    if (event.name === parent) inside = true;
  }
  return count;
}

/** A part with more at the end of the first element of a name; null where it has no such element with an end. */
export function appended(xml: string, parent: string, text: string): string | null {
  for (const event of xmlEvents(xml)) {
    if (event.kind === "close" && event.name === parent) {
      return edited(xml, [{ start: event.start, end: event.start, text }]);
    }
  }
  return null;
}

/** The same for an element that has to be there. */
export function mustAppend(xml: string, parent: string, text: string): string {
  const longer = appended(xml, parent, text);
  if (longer === null) throw new InputError("the workbook", "be as a spreadsheet program saves it", `no ${parent}`);
  return longer;
}

/** A part with more behind the last element of one of these names. */
export function insertedBehind(xml: string, names: readonly string[], text: string): string {
  let at = -1;
  for (const event of xmlEvents(xml)) {
    if (event.kind !== "text" && event.kind !== "open" && names.includes(event.name)) at = event.end;
  }
  return edited(xml, [{ start: at, end: at, text }]);
}
