import { InputError } from "../../../core/errors";
import { within, type XmlElement } from "../../parts/xml-tree";
import type { Place } from "../book";
import { addressesOf, type Extent, placesOf } from "../place";

/** What the grid still looks over at once; it takes the places of checks two by two. */
const MOST = { checkPlaces: 5000, checked: 500_000, formatted: 5_000_000 };
const HINT = "(clear what lies far below or beside the rest)";

/** How many cells two places share. */
function shared(a: Place, b: Place): number {
  const rows = Math.min(a.endRow, b.endRow) - Math.max(a.startRow, b.startRow) + 1;
  const columns = Math.min(a.endColumn, b.endColumn) - Math.max(a.startColumn, b.startColumn) + 1;
  return rows > 0 && columns > 0 ? rows * columns : 0;
}

const named = (root: XmlElement, name: string): XmlElement[] => [...within(root)].filter((one) => one.name === name);

/** Refuses checks of typed values over more cells than the grid can look over, as far as the desk shows the sheet. */
function checkChecks(sheet: string, root: XmlElement, extent: Extent): void {
  const places = named(root, "dataValidation").flatMap((one) => placesOf(addressesOf(one), extent));
  if (places.length > MOST.checkPlaces) {
    const rule = `check typed values in at most ${MOST.checkPlaces} places a sheet`;
    throw new InputError("the file", rule, places.length, { place: sheet });
  }
  let cells = 0;
  for (const one of places) {
    for (const other of places) cells += shared(one, other);
    if (cells > MOST.checked) {
      const rule = `check typed values in at most ${MOST.checked} cells a sheet ${HINT}`;
      throw new InputError("the file", rule, "more", { place: sheet });
    }
  }
}

/** The same of conditional formats. */
function checkFormats(sheet: string, root: XmlElement, extent: Extent): void {
  let cells = 0;
  for (const one of named(root, "conditionalFormatting")) {
    const rules = one.children.filter(({ name }) => name === "cfRule").length;
    for (const place of placesOf(addressesOf(one), extent)) cells += rules * shared(place, place);
  }
  if (cells > MOST.formatted) {
    const rule = `format at most ${MOST.formatted} cells a sheet by conditions ${HINT}`;
    throw new InputError("the file", rule, cells, { place: sheet });
  }
}

/** Refuses checks and conditional formats over more cells than the grid can bear. */
export function checkPlaces(sheet: string, root: XmlElement, extent: Extent): void {
  checkChecks(sheet, root, extent);
  checkFormats(sheet, root, extent);
}
