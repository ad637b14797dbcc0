import { bookOf, type Grid } from "../hosts/desk-grid";

const KINDS: Record<string, string> = {
  SHEET_NOTE_PLUGIN: "notes",
  SHEET_DATA_VALIDATION_PLUGIN: "data checks",
  SHEET_CONDITIONAL_FORMATTING_PLUGIN: "conditional formats",
};

const isEmpty = (part: unknown): boolean =>
  part === null || (typeof part === "object" && Object.values(part).every(isEmpty));

/** What was made at the desk that a saved file does not hold. */
export function leftOut(grid: Grid): string[] {
  const { resources = [] } = bookOf(grid).save();
  return resources.flatMap(({ name, data }) => {
    const kind = KINDS[name];
    return kind && data && !isEmpty(JSON.parse(data)) ? [kind] : [];
  });
}
