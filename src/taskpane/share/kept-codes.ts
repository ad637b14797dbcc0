import type { CheckedFile } from "../../share/copy-report";
import { type FirstCode, type FirstCodes, otherCodes, withFirstCodes } from "../../share/other-codes";

const PLACE = "canfall-first-codes";
const MOST_KEPT = 5000;

const isCode = (value: unknown): value is FirstCode =>
  typeof value === "object" && value !== null && "name" in value && "code" in value;

/** The first codes that this browser keeps; none where it keeps nothing. */
function kept(): FirstCodes {
  try {
    const list: unknown = JSON.parse(localStorage.getItem(PLACE) ?? "[]");
    const entries = Array.isArray(list) ? (list as unknown[]) : [];
    return new Map(
      entries.flatMap((entry) => {
        const [key, code] = Array.isArray(entry) ? (entry as [unknown, unknown]) : [null, null];
        return typeof key === "string" && isCode(code) ? [[key, code] as const] : [];
      }),
    );
  } catch {
    return new Map();
  }
}

/** Keeps the first codes of files, and says of each what speaks of another code than the first, in this session or before. */
export function comparedCodes(files: readonly CheckedFile[]): string[] {
  const before = kept();
  const others = otherCodes(files, before);
  try {
    localStorage.setItem(PLACE, JSON.stringify([...withFirstCodes(before, files)].slice(-MOST_KEPT)));
  } catch {
    // a browser that keeps nothing compares the files of one check only
  }
  return others;
}
