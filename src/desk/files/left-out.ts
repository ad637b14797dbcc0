import { IResourceManagerService, UniverInstanceType } from "@univerjs/core";
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
  const parts = grid.injector.get(IResourceManagerService);
  const resources = parts.getResources(bookOf(grid).getId(), UniverInstanceType.UNIVER_SHEET);
  return Object.fromEntries(
    resources.flatMap(({ name, data }) => {
      const kind = KINDS[name];
      if (!kind || !data) return [];
      const filled = Object.entries(JSON.parse(data)).filter(([, part]) => !isEmpty(part));
      return filled.length > 0 ? [[kind, JSON.stringify(filled)]] : [];
    }),
  );
}

/** What of a note, check or format says where it is. */
const PLACES = new Set(["uid", "cfId", "id", "ranges", "row", "col"]);

/** The notes, checks or formats of a part, each without any place: the grid divides and copies them with their rows. */
function kindsOf(part: string | undefined): Set<string> {
  const found = new Set<string>();
  const look = (value: unknown) => {
    if (value === null || typeof value !== "object") return;
    if (!Array.isArray(value) && [...PLACES, "note"].some((name) => name in value)) {
      const plain = JSON.stringify(value, (name, held) => (PLACES.has(name) || held === "" ? undefined : held));
      found.add(plain.replace(/\d+/g, ""));
    } else for (const one of Object.values(value)) look(one);
  };
  look(JSON.parse(part ?? "[]"));
  return found;
}

const madeSince = (before: string | undefined, after: string | undefined): boolean => {
  const there = kindsOf(before);
  return [...kindsOf(after)].some((one) => !there.has(one));
};

/** What was made at the desk that a saved file does not hold; `shifted` after rows or columns came or went. */
export function leftOut(before: UnsavedParts, after: UnsavedParts, shifted = false): string[] {
  return Object.values(KINDS).filter((kind) =>
    shifted ? madeSince(before[kind], after[kind]) : before[kind] !== after[kind],
  );
}
