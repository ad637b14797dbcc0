import { bookOf, type Grid } from "../../hosts/desk/grid";

const KINDS: Record<string, string> = {
  SHEET_NOTE_PLUGIN: "notes",
  SHEET_DATA_VALIDATION_PLUGIN: "data checks",
  SHEET_CONDITIONAL_FORMATTING_PLUGIN: "conditional formats",
};

const isEmpty = (part: unknown): boolean =>
  part === null || (typeof part === "object" && Object.values(part).every(isEmpty));

/** What the grid holds beside cells that only comes from files: changes of it at the desk are not saved. */
export type UnsavedParts = Record<string, string>;

/** These parts of the open workbook as they are now. */
export function unsavedParts(grid: Grid): UnsavedParts {
  const { resources = [] } = bookOf(grid).save();
  return Object.fromEntries(
    resources.flatMap(({ name, data }) => {
      const kind = KINDS[name];
      if (!kind || !data) return [];
      const filled = Object.entries(JSON.parse(data)).filter(([, part]) => !isEmpty(part));
      return filled.length > 0 ? [[kind, JSON.stringify(filled)]] : [];
    }),
  );
}

/** The same without any place, for parts that went along with inserted or deleted rows. */
const withoutPlaces = (part: string | undefined): string | undefined => part?.replace(/\d+/g, "");

/** What was made at the desk that a saved file does not hold; `shifted` after rows or columns came or went. */
export function leftOut(before: UnsavedParts, after: UnsavedParts, shifted = false): string[] {
  const seen = shifted ? withoutPlaces : (part: string | undefined) => part;
  return Object.values(KINDS).filter((kind) => seen(before[kind]) !== seen(after[kind]));
}
