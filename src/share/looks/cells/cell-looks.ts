import { firstCell } from "../../../cells/places";
import { placeName } from "../../../cells/sheet-area";
import type { CellSpec } from "../../../workbook/form/sheet-spec";
import type { FileCell } from "../../../xlsx/parts/file-cell";
import type { BookSheet } from "../../../xlsx/parts/workbook-file";
import { type Finding, misleading } from "../../finding";
import { channels, contrast } from "./colours";
import type { FileLooks, Look } from "./file-looks";
import { namesLanguage } from "./languages";
import { ownLook } from "./own-look";
import { coloured, IN_QUOTES, isRounding, readable, shownText, shownWidth, wordsOf } from "./shown";

const LEAST_CONTRAST = 3;
const SMALLER = 0.9;
const LARGER = 1.2;
const MOST_INDENT = 1;
/** Signs that a format may add without changing what is read. */
const MOST_BLANKS = 4;
const HIDING = ["fill", "centerContinuous", "distributed"];
/** At what side of its cell a text that is too long for it goes on, where its alignment names none. */
const TEXT_GOES_ON = "left";
/** A text of so many signs may be longer than its cell. */
const LONG = 4;

/** The formats of numbers that programs give a cell without one, after those of the cells that it calculates with. */
const PLAIN_NUMBER = /^(#,##)?0(\.[0#]{1,4})$/;
/** Formats that repeat a sign up to the width of the cell or show digits of another script. */
const STRANGE = /(?<!\\)\*|\[(DBNum|NatNum)/i;
const LOGICAL_FORMAT = /^"TRUE";"TRUE";"FALSE"$/i;
interface Said {
  what: string;
  was?: string;
  is?: string;
}

/** Whether a program gives a cell in General this format by itself, after the cells that its formula reads. */
function isTakenOver(value: number, is: string, seen: Look, read: string | undefined): boolean {
  if (PLAIN_NUMBER.test(seen.format) && isRounding(is, value)) return true;
  if (LOGICAL_FORMAT.test(seen.format) && (value === 0 || value === 1)) return true;
  return value === 0 && read === seen.format;
}

/**
 * How a format that is not the cell's own changes what is read; null where it reads the same.
 *
 * @param read The format of the one cell that the formula names, where it names one and nothing else
 */
function otherText(cell: FileCell, own: Look, seen: Look, read: string | undefined): Said | null {
  const value = cell.error === undefined ? cell.value : null;
  if (value === null || own.format === seen.format) return null;
  if (STRANGE.test(seen.format.replace(IN_QUOTES, "")) || namesLanguage(seen.format)) {
    return {
      what: "its number format fills its cell or shows other digits on some machines",
      was: own.format,
      is: seen.format,
    };
  }
  if (typeof value === "boolean" && !LOGICAL_FORMAT.test(seen.format) && seen.format !== "General") {
    return { what: "its number format may show other words than TRUE and FALSE", was: own.format, is: seen.format };
  }
  if (shownWidth(value, seen.format) > shownWidth(value, own.format) + MOST_BLANKS) {
    return { what: "its number format adds blanks for which its column has no room" };
  }
  const [is, was] = [shownText(value, seen.format), shownText(value, own.format)];
  if (is === was && !coloured(value, seen.format)) return null;
  if (own.format === "General" && typeof value === "number" && isTakenOver(value, is, seen, read)) return null;
  const held = own.format === "General" ? readable(value) : was;
  if (is === was) return { what: "its number format colours what it shows", was: held, is };
  if (is === "") return { what: `shows nothing, and holds ${held}`, was, is: "nothing" };
  return { what: `shows ${is}, and holds ${held}`, was, is };
}

function colourSaid(own: Look, seen: Look): Said | null {
  if (seen.fill === "pattern") return { what: "has a pattern behind its text" };
  const reads = contrast(seen.colour, seen.fill);
  if (reads >= LEAST_CONTRAST || reads >= contrast(own.colour, own.fill)) return null;
  return { what: "its text has nearly the colour of what is behind it", was: `#${own.colour}`, is: `#${seen.colour}` };
}

const RECORD = "shows a picture or a record in place of its value";
const OTHER_PAPER = "has another colour behind it than in the workbook";
const OTHER_INK = "its letters have another colour than in the workbook";
/** Colours so far apart, in any of red, green and blue, are seen as two. */
const SEEN_APART = 64;
const inkSaid = (own: Look, seen: Look) =>
  channels(own.colour).some((value, index) => Math.abs(value - channels(seen.colour)[index]!) > SEEN_APART);
const paperSaid = (own: Look, seen: Look) => seen.fill !== own.fill && seen.fill !== "pattern";

/** Whether a cell has a text that may be longer than it; a line that a person ended breaks it anyway. */
const isLong = ({ value, error }: FileCell): boolean =>
  error === undefined && typeof value === "string" && value.length > LONG && !value.includes("\n");

const sideOf = ({ across }: Look) => (across === "general" ? TEXT_GOES_ON : across);
/** Whether a text that may run on beyond its cell does so at another side. */
const isAsideOf = (cell: FileCell, own: Look, seen: Look): boolean =>
  isLong(cell) && !HIDING.includes(seen.across) && sideOf(seen) !== sideOf(own) && !(own.wrapped && seen.wrapped);

/** What of a look hides or changes what a cell says. */
function saidOf(cell: FileCell, own: Look, seen: Look, read: string | undefined): Said[] {
  const said = (when: boolean, what: string, was = "", is = ""): Said[] => (when ? [{ what, was, is }] : []);
  const [text, colour] = [otherText(cell, own, seen, read), colourSaid(own, seen)];
  return [
    ...(text ? [text] : []),
    ...(colour ? [colour] : []),
    ...said(!colour && inkSaid(own, seen), OTHER_INK, `#${own.colour}`, `#${seen.colour}`),
    ...said(!colour && paperSaid(own, seen), OTHER_PAPER, `#${own.fill}`, `#${seen.fill}`),
    ...said(seen.size < SMALLER * own.size, "its text is tiny", `${own.size} pt`, `${seen.size} pt`),
    ...said(seen.size > LARGER * own.size, "its text is too large for its cell", `${own.size} pt`, `${seen.size} pt`),
    ...said(seen.struck, "its text is struck out"),
    ...said(seen.raised, "its text is raised or lowered"),
    ...said(seen.signs, `its font may show other signs than letters and digits: ${seen.font}`, own.font, seen.font),
    ...said(seen.hollow && !own.hollow, "its letters are drawn as edges or with a shadow"),
    ...said(seen.button, "a button lies over it"),
    ...said(seen.secret && cell.formula !== undefined, "its formula is hidden from the line above the sheet"),
    ...said(seen.crossed, "a line is drawn across it"),
    ...said(seen.edged && !own.edged, "thick lines around it can be read as signs"),
    ...said(seen.turned, "its text is turned"),
    ...said(HIDING.includes(seen.across) && seen.across !== own.across, "its alignment hides or spreads its text"),
    ...said(seen.backwards, "its signs run from right to left"),
    ...said(seen.indent > own.indent + MOST_INDENT, "its text is moved out of sight"),
    ...said(seen.shrunk && !own.shrunk && own.wrapped, "its text is shrunk to fit"),
    ...said(
      isAsideOf(cell, own, seen),
      "its text begins at another side of its cell, where a part of it can be cut off",
    ),
    ...said(
      seen.wrapped && !own.wrapped && isLong(cell),
      "its text is broken into lines for which its row has no room",
    ),
    ...said(!seen.wrapped && own.wrapped && !own.shrunk && String(cell.value ?? "").length > 30, "its text is cut off"),
    ...said(cell.rich === true, "pieces of its text have looks of their own"),
    ...said(["1", "true"].includes(cell.given.get("ph") ?? ""), "shows how it is spoken above it"),
    ...said(cell.given.has("vm"), RECORD),
  ];
}

/** What a cell with an empty text shows by its format; "" where that is nothing. */
export const wordsForNothing = ({ value, error }: FileCell, look: Look | undefined): string =>
  value === "" && error === undefined && look ? wordsOf(look.format) : "";

const isEmpty = (cell: FileCell) => cell.error === undefined && (cell.value ?? "") === "";

/** The look that a file gives a cell. */
export const lookOf = ({ cells }: FileLooks, cell: FileCell | undefined): Look | undefined =>
  cells[Number(cell?.given.get("s") ?? 0)];

/**
 * Cells of a sheet that show something else than they hold, or hide it.
 *
 * @param formatOf The format that the file gives the cell behind a name or reference
 */
export function cellLookFindings(
  name: string,
  specs: readonly CellSpec[],
  sheet: BookSheet,
  looks: FileLooks,
  formatOf: (reference: string, sheet: string) => string | undefined,
): Finding[] {
  const formatRead = ({ formula = "", value }: FileCell) => (value === 0 ? formatOf(formula, name) : undefined);
  return specs.flatMap((spec) => {
    const address = firstCell(spec.at);
    const cell = sheet.cells.get(address);
    if (!cell) return [];
    const seen = lookOf(looks, cell);
    if (isEmpty(cell)) {
      const said = (what: string, is = "") => [misleading(placeName(name, address), what, "", is, what.split('"')[0]!)];
      const words = wordsForNothing(cell, seen);
      if (words !== "") return said(`shows "${words}" by its number format, and holds nothing`, words);
      if (cell.given.has("vm")) return said(RECORD);
      return seen && paperSaid(ownLook(spec), seen) ? said(OTHER_PAPER) : [];
    }
    if (!seen) return [misleading(placeName(name, address), "has a look that the file does not list")];
    return saidOf(cell, ownLook(spec), seen, formatRead(cell)).map(({ what, was, is }) =>
      misleading(placeName(name, address), what, was, is, what.split(/[,:]/)[0]!.replace(/ \S*\d\S*/g, "")),
    );
  });
}
