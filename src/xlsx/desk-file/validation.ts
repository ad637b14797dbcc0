import type { Worksheet } from "@cj-tech-master/excelts";
import type { Validation } from "./book";
import { typedFormula } from "./formula";
import { extentOf, placeOf } from "./place";
import { cellValue } from "./value";

const TYPES = ["list", "whole", "decimal", "date", "time", "textLength", "custom"] as const;
const STYLES = ["stop", "warning", "information"] as const;

/** What excelts reads of a check. */
interface Read {
  type: string;
  operator?: string;
  formulae?: unknown[];
  allowBlank?: boolean;
  showErrorMessage?: boolean;
  errorStyle?: string;
  errorTitle?: string;
  error?: string;
  showInputMessage?: boolean;
  promptTitle?: string;
  prompt?: string;
}

/** An operand as people type it: a literal list without its quotes, a number, or a formula. */
function operand(given: unknown): string {
  const value = cellValue(given);
  const text = value === null || typeof value === "object" ? "" : String(value);
  const literal = /^"(.*)"$/s.exec(text);
  if (literal) return literal[1]!.replaceAll('""', '"');
  return text === "" || Number.isFinite(Number(text)) ? text : typedFormula(text);
}

function validationOf(read: Read): Omit<Validation, "places"> {
  const style = STYLES.find((one) => one === read.errorStyle) ?? "stop";
  return {
    type: TYPES.find((one) => one === read.type) ?? "any",
    ...(read.operator && { operator: read.operator }),
    formulas: (read.formulae ?? []).map(operand),
    allowBlank: read.allowBlank ?? false,
    ...(read.showErrorMessage && { refusal: { style, title: read.errorTitle ?? "", text: read.error ?? "" } }),
    ...(read.showInputMessage && read.prompt && { prompt: { title: read.promptTitle ?? "", text: read.prompt } }),
  };
}

/** The checks on a file's sheet, like ones together. */
export function validationsOf(sheet: Worksheet): Validation[] {
  const found = new Map<string, Validation>();
  const extent = extentOf(sheet);
  for (const [address, read] of Object.entries(sheet.dataValidations.model)) {
    if (!read) continue;
    const rule = validationOf(read as Read);
    const relative = rule.formulas.some((one) => one.startsWith("="));
    const key = JSON.stringify([rule, relative && address]);
    const known = found.get(key) ?? { places: [], ...rule };
    known.places.push(placeOf(address.replace("range:", ""), extent));
    found.set(key, known);
  }
  return [...found.values()];
}
