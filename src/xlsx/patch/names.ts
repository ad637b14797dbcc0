import type { BookName } from "../desk-file/book";
import { appendEdit, type Edit, edited } from "../parts/edits";
import { escaped, escapedAttribute } from "../parts/escaped";
import { isMain } from "../parts/namespaces";
import { textOf } from "../parts/relations";
import { childOf, childrenOf, type XmlElement, xmlTree } from "../parts/xml-tree";
import { type Parts, writePart } from "./write-part";

const BEFORE = ["sheets", "functionGroups", "externalReferences"];

const isGlobal = ({ given }: XmlElement) => !given.has("localSheetId");
const sameName = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();

/** Changes the defined names of the whole workbook; all others stay as they are. */
export function patchNames(parts: Parts, main: string, added: readonly BookName[], removed: readonly BookName[]): void {
  if (added.length === 0 && removed.length === 0) return;
  const xml = textOf(parts, main);
  const root = xmlTree(xml);
  const p = root.prefix;
  const list = childOf(root, isMain, "definedNames");
  const all = childrenOf(list, isMain, "definedName");
  const known = (name: string) => all.find((one) => isGlobal(one) && sameName(one.given.get("name") ?? "", name));
  const edits: Edit[] = [];
  const fresh: BookName[] = [];
  for (const one of added) {
    const there = known(one.name);
    if (there && there.openEnd < there.end) {
      edits.push({ start: there.openEnd, end: there.closeStart, text: escaped(one.reference.replace(/^=/, "")) });
    } else fresh.push(one);
  }
  const gone = removed
    .filter(({ name }) => !added.some((one) => sameName(one.name, name)))
    .flatMap(({ name }) => known(name) ?? []);
  const texts = fresh.map(
    ({ name, reference }) =>
      `<${p}definedName name="${escapedAttribute(name)}">${escaped(reference.replace(/^=/, ""))}</${p}definedName>`,
  );
  if (list && gone.length === all.length && fresh.length === 0) {
    edits.splice(0, edits.length, { start: list.start, end: list.end, text: "" });
  } else {
    edits.push(...gone.map(({ start, end }) => ({ start, end, text: "" })));
    if (list && texts.length > 0) edits.push(appendEdit(xml, list, texts.join("")));
    else if (texts.length > 0) {
      const at = root.children.filter(({ name }) => BEFORE.includes(name)).at(-1)!.end;
      edits.push({ start: at, end: at, text: `<${p}definedNames>${texts.join("")}</${p}definedNames>` });
    }
  }
  if (edits.length > 0) writePart(parts, main, edited(xml, edits));
}

/** Adds names as they are written in another file. */
export function appendNames(parts: Parts, main: string, names: readonly { attributes: string; text: string }[]): void {
  if (names.length === 0) return;
  const xml = textOf(parts, main);
  const root = xmlTree(xml);
  const p = root.prefix;
  const all = names.map(({ attributes, text }) => `<${p}definedName${attributes}>${text}</${p}definedName>`).join("");
  const list = childOf(root, isMain, "definedNames");
  const at = root.children.filter(({ name }) => BEFORE.includes(name)).at(-1)!.end;
  const fresh = { start: at, end: at, text: `<${p}definedNames>${all}</${p}definedNames>` };
  writePart(parts, main, edited(xml, [list ? appendEdit(xml, list, all) : fresh]));
}

/** Asks whoever opens the file next to calculate all of it. */
export function askCalculation(parts: Parts, main: string): void {
  const xml = textOf(parts, main);
  const root = xmlTree(xml);
  const p = root.prefix;
  const held = childOf(root, isMain, "calcPr");
  const at = root.children.filter(({ name }) => [...BEFORE, "definedNames"].includes(name)).at(-1)!.end;
  const given = new Map([...(held?.raw ?? []), ["fullCalcOnLoad", "1"]]);
  const attributes = [...given].map(([name, value]) => ` ${name}="${escapedAttribute(value)}"`).join("");
  const text = `<${p}calcPr${attributes}/>`;
  writePart(
    parts,
    main,
    edited(xml, [held ? { start: held.start, end: held.end, text } : { start: at, end: at, text }]),
  );
}
