import { columnLetters } from "../../../cells/letters";
import { placesOf } from "../../../cells/places";
import { addressParts } from "../../../cells/sheet-area";
import { hiddenColumns } from "../../../workbook/form/hidden-columns";
import { rowHeights } from "../../../workbook/form/row-heights";
import type { CellSpec, ChartSpec, CheckSpec, ShadeSpec, SheetSpec } from "../../../workbook/form/sheet-spec";

/** What a sheet is held against, however it was described. */
export interface OwnSheet {
  name: string;
  cells: readonly CellSpec[];
  widths: readonly number[];
  /** Numbers of the columns that it does not show itself. */
  hidden: ReadonlySet<number>;
  heights: Readonly<Record<number, number>>;
  merges: readonly string[];
  /** Every cell that it describes. */
  used: readonly { row: number; column: number }[];
  /** Addresses of those cells. */
  places: ReadonlySet<string>;
  shades: readonly ShadeSpec[];
  charts: readonly ChartSpec[];
  /** What may be typed, as far as the workbook asks. */
  checks: readonly CheckSpec[];
  /** Rows after which a new page begins. */
  pageEnds: readonly number[];
  /** Pages beside each other on which its columns are printed. */
  pagesAcross: number;
  /** It takes as many pages as it needs. */
  manyPages: boolean;
  /** Rows and columns that stay in sight. */
  frozen: { rows: number; columns: number };
  /** What is printed where that is not all. */
  printed: string | null;
  /** Rows and columns repeated on each page. */
  repeated: string | null;
}

function repeatedOf({ frozenRows, frozenColumns, repeated }: SheetSpec): string | null {
  const rows = repeated ?? (frozenRows ? `1:${frozenRows}` : "");
  const columns = frozenColumns ? `A:${columnLetters(frozenColumns)}` : "";
  return [rows, columns].filter(Boolean).sort().join(",") || null;
}

const known = new WeakMap<SheetSpec, OwnSheet>();

/** What a sheet of a workbook is held against, found once. */
export function ownSheet(spec: SheetSpec, specs: readonly SheetSpec[]): OwnSheet {
  const before = known.get(spec);
  if (before) return before;
  const places = [
    ...spec.cells.flatMap(({ at }) => placesOf(at)),
    ...Object.values(spec.areas ?? {}).flatMap((range) => placesOf(range)),
  ];
  const own: OwnSheet = {
    name: spec.name,
    cells: spec.cells,
    widths: spec.widths,
    hidden: new Set(hiddenColumns(spec)),
    heights: rowHeights(specs).get(spec) ?? {},
    merges: spec.cells.map(({ at }) => at).filter((at) => at.includes(":")),
    used: places.map(addressParts),
    places: new Set(places),
    shades: spec.shades ?? [],
    charts: spec.charts ?? [],
    checks: spec.checks ?? [],
    pageEnds: spec.pageEnds ?? [],
    pagesAcross: spec.pagesAcross ?? 1,
    manyPages: spec.pageEnds !== undefined || spec.pages === 0,
    frozen: { rows: spec.frozenRows ?? 0, columns: spec.frozenColumns ?? 0 },
    printed: spec.printed ?? null,
    repeated: repeatedOf(spec),
  };
  known.set(spec, own);
  return own;
}
