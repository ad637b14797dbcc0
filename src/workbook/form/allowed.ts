import type { CheckSpec } from "./sheet-spec";

/** What a cell allows, for the first cell of the range that it is put on. */
export type Allowed = (firstCell: string) => Omit<CheckSpec, "range">;

/** Text of at most so many characters. */
export const words =
  (most = 60): Allowed =>
  (cell) => ({
    rule: { kind: "formula", formula: `LEN(${cell})<=${most}` },
    message: `Words of at most ${most} characters.`,
  });

/** One of a few words. */
export const choice =
  (...of: readonly string[]): Allowed =>
  () => ({ rule: { kind: "list", of }, message: `Choose from the list: ${of.join(", ")}.` });

/** One of the words in a rectangle. */
export const choiceFrom =
  (range: string): Allowed =>
  () => ({ rule: { kind: "list", from: range }, message: "Choose from the list that the arrow opens." });

/** A number between two bounds that are allowed too. */
export const number =
  (least: number, most: number, unit: string): Allowed =>
  () => ({ rule: { kind: "number", least, most }, message: `A number from ${least} to ${most} ${unit}.`.trim() });

/** A count between two bounds that are allowed too. */
export const count =
  (least: number, most: number): Allowed =>
  () => ({ rule: { kind: "number", least, most, whole: true }, message: `A whole number from ${least} to ${most}.` });

export const date: Allowed = () => ({ rule: { kind: "date" }, message: "A date, such as 2026-11-25." });

export const timeOfDay: Allowed = () => ({
  rule: { kind: "number", least: 0, most: 0.99999 },
  message: "A time of day, such as 6:45.",
});
