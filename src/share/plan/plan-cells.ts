import { cellAt } from "../../cells/places";
import { placeName } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { NOT_GIVEN, sameValue } from "../check/agreement";
import type { Figure } from "../copy-report";
import type { FileLooks } from "../looks/cells/file-looks";
import { shownAt } from "../looks/cells/shown-at";

/** The values behind a name of a file, line by line; blank cells as null, none where the file lacks the name. */
export function gridOf(book: FileBook, name: string): Stated[][] {
  const area = namedArea(book, name);
  if (!area) return [];
  const grid = Array.from({ length: area.bottom - area.top + 1 }, () =>
    Array.from({ length: area.right - area.left + 1 }, (): Stated => null),
  );
  for (const { row, column, cell } of cellsIn(book, area)) grid[row - 1]![column - 1] = cell.error ?? cell.value;
  return grid.map((line) => line.map((value) => (typeof value === "string" && value.trim() === "" ? null : value)));
}

/** What core makes of a cell of a named rectangle: its place there from 0, and null where what was typed gives none. */
export interface PlanAnswer {
  area: string;
  row: number;
  column: number;
  label: string;
  unit: string;
  value: number | null;
}

/** The figures of a plan as stated and as recomputed; one that says in words what is missing states no figure. */
export function planFigures(book: FileBook, answers: readonly PlanAnswer[], looks: FileLooks): Figure[] {
  const grids = new Map([...new Set(answers.map(({ area }) => area))].map((name) => [name, gridOf(book, name)]));
  return answers.flatMap(({ area: name, row, column, label, unit, value }) => {
    const area = namedArea(book, name);
    const stated = grids.get(name)![row]?.[column] ?? null;
    if (!area || (value === null && typeof stated !== "number")) return [];
    const at = { ...area, top: area.top + row, left: area.left + column };
    const place = placeName(at.sheet, cellAt(at.top, at.left));
    return [
      {
        name: place,
        place,
        label,
        unit,
        stated,
        recomputed: value ?? NOT_GIVEN,
        shown: shownAt(book, at, looks),
        format: "General",
        agrees: typeof stated !== "number" || (value !== null && sameValue(stated, value)),
      },
    ];
  });
}
