import { firstCell } from "../../cells/places";
import { placeName } from "../../cells/sheet-area";
import type { CellSpec } from "../../workbook/form/sheet-spec";
import type { FileCell } from "../../xlsx/parts/file-cell";
import type { BookSheet } from "../../xlsx/parts/workbook-file";
import { type Finding, misleading } from "../finding";
import { contrast } from "./colours";
import type { FileLooks, Look } from "./file-looks";
import { ownLook } from "./own-look";
import { coloured, isRounding, readable, shownText } from "./shown";

const LEAST_CONTRAST = 3;
const SMALLER = 0.6;
const LARGER = 2.5;
const MOST_INDENT = 3;
const HIDING = ["fill", "centerContinuous", "distributed"];

/** The formats of numbers that programs give a cell without one, after those of the cells that it calculates with. */
const PLAIN_NUMBER = /^(#,##)?0(\.[0#]{1,4})$/;
interface Said {
  what: string;
  was?: string;
  is?: string;
}

/** How a format that is not the cell's own changes what is read; null where it reads the same. */
function otherText(cell: FileCell, own: Look, seen: Look): Said | null {
  const value = cell.error === undefined ? cell.value : null;
  if (value === null || own.format === seen.format) return null;
  const [is, was] = [shownText(value, seen.format), shownText(value, own.format)];
  if (is === was && !coloured(value, seen.format)) return null;
  if (
    own.format === "General" &&
    typeof value === "number" &&
    PLAIN_NUMBER.test(seen.format) &&
    isRounding(is, value)
  ) {
    return null;
  }
  // LibreOffice gives a cell in General the format of the one cell that it reads, here one with words for 0.
  if (own.format === "General" && value === 0 && /^\w+$/.test(cell.formula ?? "")) return null;
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

/** What of a look hides or changes what a cell says. */
function saidOf(cell: FileCell, own: Look, seen: Look): Said[] {
  const said = (when: boolean, what: string, was = "", is = ""): Said[] => (when ? [{ what, was, is }] : []);
  const [text, colour] = [otherText(cell, own, seen), colourSaid(own, seen)];
  return [
    ...(text ? [text] : []),
    ...(colour ? [colour] : []),
    ...said(seen.size < SMALLER * own.size, "its text is tiny", `${own.size} pt`, `${seen.size} pt`),
    ...said(seen.size > LARGER * own.size, "its text is too large for its cell", `${own.size} pt`, `${seen.size} pt`),
    ...said(seen.struck, "its text is struck out"),
    ...said(seen.raised, "its text is raised or lowered"),
    ...said(seen.signs, `its font shows signs in place of letters: ${seen.font}`, own.font, seen.font),
    ...said(seen.crossed, "a line is drawn across it"),
    ...said(seen.turned, "its text is turned"),
    ...said(HIDING.includes(seen.across) && seen.across !== own.across, "its alignment hides or spreads its text"),
    ...said(seen.indent > own.indent + MOST_INDENT, "its text is moved out of sight"),
    ...said(seen.shrunk && !own.shrunk && own.wrapped, "its text is shrunk to fit"),
    ...said(!seen.wrapped && own.wrapped && !own.shrunk && String(cell.value ?? "").length > 30, "its text is cut off"),
    ...said(cell.rich === true, "pieces of its text have looks of their own"),
    ...said(cell.given.has("vm"), "shows a picture or a record in place of its value"),
  ];
}

const isEmpty = (cell: FileCell) => cell.error === undefined && (cell.value ?? "") === "";

/** The look that a file gives a cell. */
export const lookOf = ({ cells }: FileLooks, cell: FileCell | undefined): Look | undefined =>
  cells[Number(cell?.given.get("s") ?? 0)];

/** Cells of a sheet that show something else than they hold, or hide it. */
export function cellLookFindings(
  name: string,
  specs: readonly CellSpec[],
  sheet: BookSheet,
  looks: FileLooks,
): Finding[] {
  return specs.flatMap((spec) => {
    const address = firstCell(spec.at);
    const cell = sheet.cells.get(address);
    const seen = lookOf(looks, cell);
    if (!cell || !seen || isEmpty(cell)) return [];
    return saidOf(cell, ownLook(spec), seen).map(({ what, was, is }) =>
      misleading(placeName(name, address), what, was, is, what.split(/[,:]/)[0]!.replace(/ \S*\d\S*/g, "")),
    );
  });
}
