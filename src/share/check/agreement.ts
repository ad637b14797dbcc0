import type { Stated } from "../../cells/stated";

/** How far a stated number may be from the recomputed one, as a share of it: spreadsheet programs save 15 digits. */
export const TOLERANCE = 1e-9;

/** Below this a number is 0 but for rounding: a saving of nothing is the difference of two large sums. */
const NOTHING = 1e-9;

/** What the report says where the readings cannot give a figure. */
export const NOT_GIVEN = "cannot be given";

/** Whether two numbers are the same but for rounding. */
export function sameNumber(one: number, other: number): boolean {
  return Math.abs(one - other) <= Math.max(NOTHING, TOLERANCE * Math.max(Math.abs(one), Math.abs(other)));
}

/** Some programs keep logical values as 1 and 0, and drop blanks at the end of a text. */
const plain = (value: Stated) =>
  typeof value === "boolean" ? Number(value) : typeof value === "string" ? value.trimEnd() : (value ?? "");

/** Whether two values of cells are the same; a blank cell is the same as an empty text. */
export function sameValue(one: Stated, other: Stated): boolean {
  if (typeof one === "number" && typeof other === "number") return sameNumber(one, other);
  return plain(one) === plain(other);
}

/** Whether what a file states is what the readings give; null where they cannot give a figure, which takes known words. */
export function agrees(stated: Stated, recomputed: Stated, words: ReadonlySet<string>): boolean {
  if (recomputed !== null) return sameValue(stated, recomputed);
  return stated === null || stated === "" || (typeof stated === "string" && words.has(stated));
}
