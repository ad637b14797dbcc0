import { type CSSProperties, useLayoutEffect, useRef } from "react";
import { columnLetters, columnNumber } from "../../cells/letters";
import { RATE_CLASSES } from "../../core/pattern/rate-classes";
import { shownText } from "../../share/looks/cells/shown";
import type { CellSpec, SheetSpec } from "../../workbook/form/sheet-spec";

const LAST = columnNumber("X");
const SCALE_COLUMN = columnNumber("Z");

interface Place {
  row: number;
  column: number;
  toRow: number;
  toColumn: number;
}

function placeOf({ at }: CellSpec): Place {
  const [first = "", last = first] = at.split(":");
  const parts = (address: string) => /^([A-Z]+)(\d+)$/.exec(address)!;
  const [, from = "", top = ""] = parts(first);
  const [, to = "", bottom = ""] = parts(last);
  return { row: Number(top), column: columnNumber(from), toRow: Number(bottom), toColumn: columnNumber(to) };
}

/** A cell of the picture; the tiles of its key are wider. */
const isCan = ({ kind, at }: CellSpec) => kind === "tile" && !at.includes(":");

/** Of a can's many cells of the picture the middle one shows its class. */
const numbered = ({ row, column }: Place, scale: number, top: number, left: number) =>
  (row - top) % scale === Math.floor(scale / 2) && (column - left) % scale === Math.floor(scale / 2);

const words = ({ value = "", format }: CellSpec): string =>
  format === undefined ? String(value) : shownText(value, format);

const shows = (cell: CellSpec) =>
  placeOf(cell).column <= LAST && (cell.kind === "signature" || words(cell).trim() !== "");

const rowsOf = ({ row, toRow }: Place) => Array.from({ length: toRow - row + 1 }, (_, i) => row + i);

/** Rows that show nothing take little room. */
function rowSizes(report: SheetSpec): string {
  const full = new Set(report.cells.filter(shows).flatMap((cell) => rowsOf(placeOf(cell))));
  const sizes = Array.from({ length: Math.max(...full) }, (_, i) =>
    full.has(i + 1) ? "minmax(1.25em, auto)" : "0.4em",
  );
  return sizes.join(" ");
}
/** What a page of A4 holds within its margins, less a line that printers may need [px of CSS]. */
const PAGE_PX = (280 / 25.4) * 96;
/** Letters [points]: the largest with which it takes one page, else those of several pages. */
const [MOST_POINTS, LEAST_POINTS, STEP_POINTS, SEVERAL_PAGES_POINTS] = [8, 5.5, 0.1, 7];

function setLetters(report: HTMLElement): void {
  for (let points = MOST_POINTS; points >= LEAST_POINTS; points -= STEP_POINTS) {
    report.style.fontSize = `${points.toFixed(1)}pt`;
    if (report.offsetHeight <= PAGE_PX) return;
  }
  report.style.fontSize = `${SEVERAL_PAGES_POINTS}pt`;
}

/** The authority's own report as it is printed: one page where it fits in letters that can be read, nothing of the file's looks. */
export function OwnReportView({ report }: { report: SheetSpec }) {
  const drawn = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => setLetters(drawn.current!), []);
  const scale = Number(
    report.cells.find((cell) => placeOf(cell).column === SCALE_COLUMN && cell.kind === "working")?.value ?? 1,
  );
  const tiles = report.cells.filter(isCan).map(placeOf);
  const [top, left] = [Math.min(...tiles.map(({ row }) => row)), Math.min(...tiles.map(({ column }) => column))];
  const columns = Array.from({ length: LAST }, (_, i) => `${report.widths[i] ?? 8}fr`).join(" ");
  return (
    <div
      ref={drawn}
      className="own-report"
      style={{ gridTemplateColumns: columns, gridTemplateRows: rowSizes(report) }}
    >
      {report.cells.flatMap((cell) => {
        const place = placeOf(cell);
        const value = cell.value ?? "";
        if (place.column > LAST) return [];
        const tile = cell.kind === "tile";
        const colour = tile ? RATE_CLASSES.find(({ number }) => number === Number(value))?.colour : undefined;
        const style: CSSProperties = {
          gridArea: `${place.row} / ${place.column} / ${place.toRow + 1} / ${place.toColumn + 1}`,
          ...(colour && { background: colour, color: value === 1 || value === 7 ? "#ffffff" : "#000000" }),
        };
        const text = isCan(cell) && !numbered(place, scale, top, left) ? "" : words(cell);
        return (
          <div key={`${columnLetters(place.column)}${place.row}`} className={`own-${cell.kind}`} style={style}>
            {text}
          </div>
        );
      })}
    </div>
  );
}
