import { isReference, parseA1Ref, tokenize } from "@borgar/fx/xlsx";
import type { DefinedName } from "../parts/package";
import type { BookName, OwnName } from "./book";
import { typedFormula } from "./formula";

const CONSTANT = /^(?:-?\d*\.?\d+(?:e[+-]?\d+)?|"(?:[^"]|"")*"|true|false)$/i;
const MOST_LETTERS = 8192;

/** Whether a reference is one rectangle, row or column of a sheet of this file, the same for every cell that asks. */
function isFixed(reference: string): boolean {
  const parsed = parseA1Ref(reference);
  if (!parsed || !("range" in parsed) || !parsed.range || !parsed.sheetName || parsed.workbookName) return false;
  const { range } = parsed;
  const fixed = (side: "top" | "left" | "bottom" | "right") => range[side] == null || range[`$${side}`] === true;
  return fixed("top") && fixed("left") && fixed("bottom") && fixed("right");
}

/**
 * A name's text as the desk can calculate with it; undefined for what the grid reads otherwise than the file's own program:
 * places that depend on the cell that asks, other names, other files, lists of places, functions of one's own.
 */
function shown(text: string): string | undefined {
  if (isFixed(text) || CONSTANT.test(text)) return text;
  if (text.length > MOST_LETTERS || /#REF!|LAMBDA|LET\(/i.test(text)) return undefined;
  const tokens = tokenize(text, { withLocation: false, negativeNumbers: false });
  if (tokens.some((token) => isReference(token) && !isFixed(token.value))) return undefined;
  if (!tokens.some(({ type }) => type === "func")) return undefined;
  return `(${typedFormula(text).slice(1)})`; // the grid puts it into the formula that asks
}

/** The defined names of the whole workbook that the desk calculates with. */
export function namesOf(names: readonly DefinedName[]): BookName[] {
  return names.flatMap(({ name, text, local }) => {
    const reference = local === undefined && !name.startsWith("_xlnm.") ? shown(text) : undefined;
    return reference === undefined ? [] : [{ name, reference }];
  });
}

/** The defined names of the whole workbook that the desk can't calculate with. */
export const unknownNamesOf = (names: readonly DefinedName[]): string[] =>
  names.flatMap(({ name, text, local }) =>
    local === undefined && !name.startsWith("_xlnm.") && shown(text) === undefined ? [name] : [],
  );

/** The defined names of one sheet, by its place in the file from 0; print areas and the like are none to calculate with. */
export function ownNamesOf(names: readonly DefinedName[], sheet: number): OwnName[] {
  return names
    .filter(({ name, local }) => local === sheet && !name.startsWith("_xlnm."))
    .map(({ name, text }) => ({ name, reference: shown(text) ?? null }));
}
