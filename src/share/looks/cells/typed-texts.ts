import { placesOf } from "../../../cells/places";
import { placeName } from "../../../cells/sheet-area";
import type { CellSpec } from "../../../workbook/form/sheet-spec";
import type { BookSheet } from "../../../xlsx/parts/workbook-file";
import { added, type Finding, misleading } from "../../finding";
import { mixesScripts, strangeSign } from "../sheets/look-alike";

/** Signs that turn the order of what follows round (UAX 9, explicit directional formatting). */
const TURNING = /[\u202A-\u202E\u2066-\u2069]/;
/** Strokes, rings and signs laid over the letter before them (Unicode, Combining Diacritical Marks). */
const LAID_OVER = /[\u0334-\u0338\u20D0-\u20F0\u{1D165}-\u{1D169}]/u;
/** Signs that each font draws as it likes, or none does; a lone half of a sign is one of them. */
const UNKNOWN = /[\p{Co}\p{Cs}\u{E0000}-\u{E007F}]|(?![\t\n\r])\p{Cc}/u;
const UNSEEN = /[\u00AD\u115F\u1160\u200B-\u200F\u2060-\u2064\u2800\u3164\uFEFF\uFFA0]/;
/** Joins and marks that belong to a script or a picture. */
const JOINED = /\p{Extended_Pictographic}|[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Devanagari}\p{Script=Bengali}]/u;
const LINES = /\r\n|[\n\r\u2028\u2029]/;
const LAST_LINE = /(\r\n|\n)$/;
const [MOST_LINES, MOST_EMPTY] = [6, 2];
const LONG_BLANKS = /[^\S\n\r]{12}|\t{3}|\u2800{3}/;

const isBlank = (line: string) => line.replace(/[\s\u2800\u3164]/g, "") === "";

/** What of a typed text is read otherwise than it is held; "" where it is read as it is. */
function misreadBy(text: string): string {
  if (TURNING.test(text)) return "holds a sign that shows a part of its text backwards";
  if (LAID_OVER.test(text)) return "holds signs that are drawn over its letters";
  if (UNKNOWN.test(text)) return "holds a sign that each machine shows in its own way, or not at all";
  const lines = text.replace(LAST_LINE, "").split(LINES);
  const empty = lines.filter(isBlank).length;
  if (lines.length > MOST_LINES || empty > MOST_EMPTY || (lines.length > 1 && isBlank(lines[0]!))) {
    return `has ${lines.length} lines${empty > 0 ? `, ${empty} of them empty` : ""}, of which its cell shows only some`;
  }
  return LONG_BLANKS.test(text) ? "has long blanks in it, which push a part of its text away" : "";
}

/** Texts that were typed so that a reader sees other words than they hold. */
export function typedTextFindings(name: string, specs: readonly CellSpec[], sheet: BookSheet): Finding[] {
  const typed = specs.filter(({ kind, formula }) => (kind === "input" || kind === "reading") && formula === undefined);
  return typed.flatMap(({ at }) => {
    const address = placesOf(at)[0]!;
    const text = sheet.cells.get(address)?.value;
    if (typeof text !== "string") return [];
    const where = placeName(name, address);
    const said = misreadBy(text);
    if (said !== "") return [misleading(where, said, "", "", "typed text")];
    const sign = mixesScripts(text) || (UNSEEN.test(text) && !JOINED.test(text)) ? strangeSign(text) : "";
    return sign === "" ? [] : [added(where, `holds ${sign}, so that it is not the same as a text that looks like it`)];
  });
}
