import { IResourceManagerService, UniverInstanceType } from "@univerjs/core";
import { bookOf, type Grid } from "../../../hosts/desk/grid";

const KINDS: Record<string, string> = {
  SHEET_NOTE_PLUGIN: "notes",
  SHEET_DATA_VALIDATION_PLUGIN: "data checks",
  SHEET_CONDITIONAL_FORMATTING_PLUGIN: "conditional formats",
};

/** What of a whole sheet, as the grid keeps it, is not saved. */
const SETTINGS = { "hiding of sheets": "hidden", "colours of tabs": "tabColor" } as const;

const isEmpty = (part: unknown): boolean =>
  part === null || (typeof part === "object" && Object.values(part).every(isEmpty));

/**
 * What the grid holds beside cells that only comes from files, by kind and key of the sheet: changes of it at the desk
 * are not saved.
 */
export type UnsavedParts = Record<string, Record<string, string>>;

/** These parts of the open workbook as they are now. */
export function unsavedParts(grid: Grid): UnsavedParts {
  const parts = grid.injector.get(IResourceManagerService);
  const resources = parts.getResources(bookOf(grid).getId(), UniverInstanceType.UNIVER_SHEET);
  const sheets = bookOf(grid).getSheets();
  const settings = Object.entries(SETTINGS).map(([kind, name]) => {
    const set = sheets.map((sheet) => [sheet.getSheetId(), String(sheet.getSheet().getConfig()[name] || "")] as const);
    return [kind, Object.fromEntries(set.filter(([, value]) => value !== ""))] as const;
  });
  return Object.fromEntries([
    ...settings,
    ...resources.flatMap(({ name, data }) => {
      const kind = KINDS[name];
      if (!kind || !data) return [];
      const filled = Object.entries(JSON.parse(data)).filter(([, part]) => !isEmpty(part));
      return [[kind, Object.fromEntries(filled.map(([key, part]) => [key, JSON.stringify(part)]))] as const];
    }),
  ]);
}

/** What of a note, check or format says where it is. */
const PLACES = new Set(["uid", "cfId", "id", "ranges", "row", "col"]);

/** References, and what is left of one whose cells are gone. */
const REFERENCES = /#REF!|\$?\b[A-Z]{1,3}\$?\d+|\$?\b[A-Z]{1,3}:\$?[A-Z]{1,3}\b|\d+/g;

/** The notes, checks or formats of sheets, each without any place: the grid divides and copies them with their rows. */
function kindsOf(parts: Record<string, string>): Set<string> {
  const found = new Set<string>();
  const look = (value: unknown) => {
    if (value === null || typeof value !== "object") return;
    if (!Array.isArray(value) && [...PLACES, "note"].some((name) => name in value)) {
      const plain = JSON.stringify(value, (name, held) => (PLACES.has(name) || held === "" ? undefined : held));
      found.add(plain.replace(REFERENCES, ""));
    } else for (const one of Object.values(value)) look(one);
  };
  for (const part of Object.values(parts)) look(JSON.parse(part));
  return found;
}

function madeSince(before: Record<string, string>, after: Record<string, string>): boolean {
  const there = kindsOf(before);
  return [...kindsOf(after)].some((one) => !there.has(one));
}

/** What was made at the desk that a saved file does not hold; `shifted` after rows or columns came or went. */
export function leftOut(before: UnsavedParts, grid: Grid, shifted = false): string[] {
  const after = unsavedParts(grid);
  // what went with its sheet is not in the file either
  const sheets = bookOf(grid).getSheets();
  return [...Object.values(KINDS), ...Object.keys(SETTINGS)].filter((kind) => {
    const [was, is] = [before[kind] ?? {}, after[kind] ?? {}];
    if (shifted && !(kind in SETTINGS)) return madeSince(was, is);
    return sheets.some((sheet) => was[sheet.getSheetId()] !== is[sheet.getSheetId()]);
  });
}
