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

/** Whether a text is another one but for blanks at its end, which some programs drop and none adds. */
export const sameText = (stated: string, own: string): boolean =>
  stated === own || (own.startsWith(stated) && own.trimEnd() === stated.trimEnd());

/** Some programs keep logical values as 1 and 0. */
const plain = (value: Stated) => (typeof value === "boolean" ? Number(value) : (value ?? ""));

/** Whether what a cell states is what it should; a blank cell is the same as an empty text. */
export function sameValue(stated: Stated, own: Stated): boolean {
  if (typeof stated === "number" && typeof own === "number") return sameNumber(stated, own);
  if (typeof stated === "string" && typeof own === "string") return sameText(stated, own);
  if (typeof stated === "boolean" && typeof own === "number") return false;
  return plain(stated) === plain(own);
}

/** Whether what a file states is what the readings give; null where they cannot give a figure, which takes known words. */
export function agrees(stated: Stated, recomputed: Stated, words: ReadonlySet<string>): boolean {
  if (recomputed !== null) return sameValue(stated, recomputed);
  return stated === null || stated === "" || (typeof stated === "string" && words.has(stated));
}
