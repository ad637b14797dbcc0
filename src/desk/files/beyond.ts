import type { Book } from "../../xlsx/desk-file/book";

const QUOTED = /"[^"]*"|'[^']*'/g;
const CALLED = /([A-Za-z_][\w.]*)\(/g;
/** The first and the last of several sheets before a reference. */
const SEVERAL_SHEETS = /[\w.]:[\w.]+!/;

const escaped = (name: string) => name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/**
 * Tells formulas that the desk can't calculate and the file's own program can: they speak of a table's columns or of
 * another file, as in Heads[Flow], call a function or use a name that the grid lacks.
 */
export function beyondDesk(
  { sheets, unknownNames }: Pick<Book, "sheets" | "unknownNames">,
  hasFunction: (name: string) => boolean,
): (formula: string) => boolean {
  const own = sheets.flatMap(({ ownNames }) => ownNames.flatMap((one) => (one.reference === null ? one.name : [])));
  const names = [...unknownNames, ...own].map(escaped);
  const named = names.length > 0 ? new RegExp(`(?<![\\w.])(?:${names.join("|")})(?![\\w.])`, "i") : null;
  const known = new Map<string, boolean>();
  const has = (name: string) => {
    const there = known.get(name) ?? hasFunction(name.toUpperCase());
    known.set(name, there);
    return there;
  };
  return (formula) => {
    const plain = formula.replace(QUOTED, "");
    if (plain.includes("[") || SEVERAL_SHEETS.test(plain) || named?.test(plain)) return true;
    // a LAMBDA may give names of its own to what it calls
    return !/LAMBDA\(/i.test(plain) && [...plain.matchAll(CALLED)].some(([, name]) => !has(name!));
  };
}
