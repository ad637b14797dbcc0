import { isFunction, isReference, isWhitespace, type Token } from "@borgar/fx/xlsx";
import { absolute, areaOf } from "../cells/sheet-area";
import { tokensOf } from "./calls";

const NEWER_PREFIXES = ["_XLFN._XLWS.", "_XLFN."];
const LOGICAL = ["TRUE", "FALSE"];

function functionName(called: string): string {
  const upper = called.toUpperCase();
  const prefix = NEWER_PREFIXES.find((one) => upper.startsWith(one));
  return prefix ? upper.slice(prefix.length) : upper;
}

function normal(token: Token, sheet: string): string {
  const { type, value } = token;
  if (isFunction(token)) return functionName(value);
  if (type === "number") return String(Number(value));
  if (type === "string") return value;
  if (isReference(token)) {
    const area = areaOf(value, sheet);
    return area ? absolute(area) : value.toUpperCase();
  }
  return isWhitespace(token) ? " " : value.toUpperCase();
}

/**
 * A formula in one form whoever saved it: without free space, with functions and names in capitals, numbers by their
 * value, references with their sheet and without regard to `$`, `TRUE` for `TRUE()`.
 */
export function normalFormula(formula: string, sheet: string): string {
  const tokens = tokensOf(formula).filter(({ type }) => type !== "fx_prefix");
  const out: string[] = [];
  for (let i = 0; i < tokens.length; i += 1) {
    const text = normal(tokens[i]!, sheet);
    out.push(text);
    if (LOGICAL.includes(text) && tokens[i + 1]?.value === "(" && tokens[i + 2]?.value === ")") i += 2;
  }
  return out.join("\u0001");
}

const KNOWN_MOST = 50_000;
const known = new Map<string, string>();

/** The normal form, kept for the next file of the same template. */
function remembered(formula: string, sheet: string): string {
  const key = `${sheet}!${formula}`;
  let form = known.get(key);
  if (form === undefined) {
    form = normalFormula(formula, sheet);
    if (known.size >= KNOWN_MOST) known.clear();
    known.set(key, form);
  }
  return form;
}

/** Whether two formulas on a sheet say the same. */
export function sameFormula(one: string, other: string, sheet: string): boolean {
  return one === other || remembered(one, sheet) === remembered(other, sheet);
}
