import { cellAt } from "../../cells/places";
import { placeName } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import type { Figure } from "../copy-report";
import type { FileLooks } from "../looks/cells/file-looks";
import { formatAt } from "../looks/cells/formats";
import { shownAt } from "../looks/cells/shown-at";
import { agrees, NOT_GIVEN } from "./agreement";
import { figureLabel } from "./figure-label";
import { knownWords } from "./known-words";

/** What the cell behind a name says, errors by their name. */
function statedAt(book: FileBook, name: string): Stated {
  const area = namedArea(book, name);
  const cell = area && cellsIn(book, { ...area, bottom: area.top, right: area.left })[0]?.cell;
  return cell ? (cell.error ?? cell.value) : null;
}

/** The figures of a file, by their names, beside what its readings give. */
export function figuresOf(
  book: FileBook,
  specs: readonly SheetSpec[],
  recomputed: ReadonlyMap<string, Stated>,
  looks: FileLooks,
): Figure[] {
  const words = knownWords(specs);
  return [...recomputed].flatMap(([name, value]) => {
    const area = namedArea(book, name);
    if (!area) return [];
    const stated = statedAt(book, name);
    const shown = value ?? NOT_GIVEN;
    const place = placeName(area.sheet, cellAt(area.top, area.left));
    const seen = shownAt(book, area, looks);
    return [
      {
        name,
        place,
        ...figureLabel(specs, name),
        stated,
        recomputed: shown,
        shown: seen,
        format: formatAt(specs, place.replaceAll("'", "")),
        agrees: agrees(stated, value, words),
      },
    ];
  });
}
