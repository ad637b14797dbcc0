import type { Cell } from "../../cells/cell";
import { escaped, escapedAttribute } from "../parts/escaped";

const ERRORS = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A", "#GETTING_DATA"];
const LOOKS_ESCAPED = /_(?=x[0-9A-F]{4}_)/gi;

/** A text as a file holds it: what reads like an escaped sign is escaped itself. */
const stored = (text: string): string => escaped(text.replace(LOOKS_ESCAPED, "_x005F_"));

/** The kind and the content of a cell with a formula's value, or with a typed one where `formula` is "". */
function contentOf(p: string, value: Cell, formula: string): { type: string; content: string } {
  if (value === null) return { type: "", content: formula };
  if (typeof value === "number") return { type: "", content: `${formula}<${p}v>${value}</${p}v>` };
  if (typeof value === "boolean") return { type: "b", content: `${formula}<${p}v>${value ? 1 : 0}</${p}v>` };
  if (typeof value === "object") {
    const error = ERRORS.includes(value.error) ? value.error : "#VALUE!";
    return { type: "e", content: `${formula}<${p}v>${escaped(error)}</${p}v>` };
  }
  if (formula !== "") return { type: "str", content: `${formula}<${p}v>${stored(value)}</${p}v>` };
  return { type: "inlineStr", content: `<${p}is><${p}t xml:space="preserve">${stored(value)}</${p}t></${p}is>` };
}

/** The text of a cell; `p` is the prefix of the sheet's elements, `formula` the whole element of its formula. */
export function cellText(p: string, given: ReadonlyMap<string, string>, value: Cell, formula: string): string {
  const { type, content } = contentOf(p, value, formula);
  const all = new Map(given);
  all.delete("t");
  if (type !== "") all.set("t", type);
  const attributes = [...all].map(([name, one]) => ` ${name}="${escapedAttribute(one)}"`).join("");
  return content === "" ? `<${p}c${attributes}/>` : `<${p}c${attributes}>${content}</${p}c>`;
}

/** The element of a formula; `fills` are the cells that an array formula fills. */
export function formulaText(p: string, formula: string, fills?: string): string {
  const array = fills === undefined ? "" : ` t="array" ref="${fills}"`;
  return `<${p}f${array}>${escaped(formula)}</${p}f>`;
}
