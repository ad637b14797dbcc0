/** What a cell is for; its look and its lock follow from this. */
export type Kind =
  | "title"
  | "said"
  | "heading"
  | "label"
  | "input"
  | "reading"
  | "answer"
  | "working"
  | "unit"
  | "note"
  | "caution"
  | "rate"
  | "symbol"
  | "tile"
  | "entry"
  | "signature";

/** A cell, or cells merged into one. */
export interface CellSpec {
  /** `C5`, or `C5:F5` for merged cells. */
  at: string;
  kind: Kind;
  /** What is in it; dates as day numbers with a date format. */
  value?: string | number;
  /** Native formula without `=`: functions that Excel 2010 and LibreOffice 7.4 both know. */
  formula?: string;
  /** Number format. */
  format?: string;
  align?: "left" | "center" | "right";
  /** Without fill and edges, so that it is blank paper until a shade fills it. */
  bare?: true;
  /** Text stays on one line, smaller where it is too long. */
  shrink?: true;
  /** The workbook-wide name of this cell. */
  name?: string;
  /** Written by the pane, so not locked: lifting the protection for it would empty Excel's own Undo. */
  kept?: true;
}

/** What may be typed into cells, and what is said otherwise. */
export interface CheckSpec {
  range: string;
  /** The rule in words, shown when something else is typed. */
  message: string;
  rule:
    | { kind: "list"; of: readonly string[] }
    | { kind: "list"; from: string }
    | { kind: "number"; least?: number; most?: number; whole?: true }
    | { kind: "date" }
    /** True where the value is allowed; written for the first cell of the range. */
    | { kind: "formula"; formula: string };
}

/** How cells look while a formula, written for the first cell of the range, is true. */
export interface ShadeSpec {
  range: string;
  formula: string;
  fill?: string;
  colour?: string;
  bold?: true;
}

/** A chart of cells on the same sheet. */
export interface ChartSpec {
  /** The cells that it covers, `A20:D38`. */
  over: string;
  type: "line" | "bar" | "scatter";
  title: string;
  /** What runs along the two axes, with units. */
  axes: readonly [across: string, up: string];
  /** Days run along the axis of a scatter. */
  days?: true;
  series: readonly {
    /** What the legend says, or the cell that says it as `=$B$4`. */
    name: string;
    /** The range whose cells are along the axis: words for lines and bars, numbers for scatters. */
    across: string;
    values: string;
    /** `#01665e`; apart in grey print too. */
    colour: string;
    /** Marks without a line between them. */
    apart?: true;
  }[];
  stacked?: true;
}

/** One sheet of a workbook. */
export interface SheetSpec {
  name: string;
  /** Column widths [characters], from column A on. */
  widths: readonly number[];
  /** Row heights [points] where they differ from the usual, by row number. */
  heights?: Readonly<Record<number, number>>;
  /** Rows grow to hold every text that their cells may show; not for lists of lines alike. */
  roomy?: true;
  /** Columns of intermediate results, which are neither shown nor printed: `Z`, `W:X`. */
  hidden?: readonly string[];
  cells: readonly CellSpec[];
  /** Names of rectangles, by name. */
  areas?: Readonly<Record<string, string>>;
  checks?: readonly CheckSpec[];
  shades?: readonly ShadeSpec[];
  charts?: readonly ChartSpec[];
  landscape?: true;
  /** Pages that it may take when printed, 1 where left out. */
  pages?: number;
  /** What is printed where that is not all. */
  printed?: string;
  /** Rows that stay in sight, and are repeated on each page. */
  frozenRows?: number;
  /** Rows that are repeated on each page where none stay in sight. */
  repeated?: string;
  /** Columns that stay in sight, and are repeated on each page. */
  frozenColumns?: number;
  /** Pages side by side when printed, 1 where left out. */
  pagesAcross?: number;
  /** Rows after which a new page begins, instead of a number of pages. */
  pageEnds?: readonly number[];
}
