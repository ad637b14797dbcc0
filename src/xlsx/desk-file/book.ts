import type { Cell, Input } from "../../cells/cell";

export const LINES = [
  "thin",
  "hair",
  "dotted",
  "dashed",
  "dashDot",
  "dashDotDot",
  "double",
  "medium",
  "mediumDashed",
  "mediumDashDot",
  "mediumDashDotDot",
  "slantDashDot",
  "thick",
] as const;

export const SIDES = ["top", "left", "bottom", "right"] as const;

export interface Line {
  line: (typeof LINES)[number];
  colour?: string;
}

/** How a cell looks, as far as the desk shows it; colours are `#rrggbb`. */
export interface Look {
  font?: string;
  bold?: true;
  italic?: true;
  underline?: true;
  struck?: true;
  size?: number;
  colour?: string;
  fill?: string;
  format?: string;
  align?: "left" | "center" | "right";
  vertical?: "top" | "middle" | "bottom";
  borders?: Partial<Record<(typeof SIDES)[number], Line>>;
  wrap?: true;
}

/** A cell of a file; rows and columns count from 0. */
export interface BookCell {
  row: number;
  column: number;
  input: Input;
  /** What the file says its formula gave. */
  cached?: Cell;
  /** The same of all cells that its formula fills, where these are several. */
  body?: Cell[][];
  look?: Look;
}

/** A rectangle of cells; rows and columns count from 0, ends included. */
export interface Place {
  startRow: number;
  endRow: number;
  startColumn: number;
  endColumn: number;
}

/** A check of what is typed into cells. */
export interface Validation {
  places: Place[];
  type: "list" | "whole" | "decimal" | "date" | "time" | "textLength" | "custom" | "any";
  operator?: string;
  /** A literal list as `a,b`; a number; or a formula that begins with `=`. */
  formulas: string[];
  allowBlank: boolean;
  /** What happens to input that breaks the rule; without it, nothing. */
  refusal?: { style: "stop" | "warning" | "information"; title: string; text: string };
  prompt?: { title: string; text: string };
}

/** A conditional format; `formula` is written for the first cell of the first place. */
export interface Condition {
  places: Place[];
  formula: string;
  look: Look;
}

export interface BookNote {
  row: number;
  column: number;
  text: string;
}

/** A spot in a cell: pixels right of and below its corner. */
export interface Spot {
  row: number;
  column: number;
  right: number;
  down: number;
}

export interface BookPicture {
  name: string;
  /** What it shows, in words. */
  alternative: string;
  extension: "png" | "jpeg" | "gif";
  bytes: Uint8Array;
  from: Spot;
  /** Where it ends, or how large it is in pixels. */
  to: Spot | { width: number; height: number };
}

/** How many rows and columns stay in view. */
export interface Frozen {
  rows: number;
  columns: number;
}

export interface BookSheet {
  /** Stays with the sheet when it is renamed. */
  key: string;
  name: string;
  hidden: boolean;
  rows: number;
  columns: number;
  /** In pixels, by column. */
  widths: Record<number, number>;
  /** In pixels, by row. */
  heights: Record<number, number>;
  usual: { width: number; height: number };
  hiddenRows: number[];
  hiddenColumns: number[];
  frozen: Frozen;
  gridLines: boolean;
  tab?: string;
  merges: Place[];
  validations: Validation[];
  conditions: Condition[];
  notes: BookNote[];
  pictures: BookPicture[];
  /** On a protected sheet the cells that may be changed, as `row column`; null where all may be. */
  unlocked: string[] | null;
  cells: BookCell[];
  /** Names that mean something on this sheet only, whatever they mean elsewhere. */
  ownNames: OwnName[];
}

export interface BookName {
  name: string;
  /** `Sheet!$A$1:$B$2` */
  reference: string;
}

export interface OwnName {
  name: string;
  /** Null where the desk can't calculate with it. */
  reference: string | null;
}

export interface Book {
  sheets: BookSheet[];
  names: BookName[];
  /** Names of the whole workbook that the desk can't calculate with. */
  unknownNames: string[];
  /** Whether the file asks whoever opens it to calculate all of it, so that its figures need not be right. */
  asksCalculation: boolean;
  /** Whether it says that no sheet comes, goes, moves or gets another name. */
  locked: boolean;
}

/** What is new in a cell: only what is given changes; a formula's value is the file's cached one. */
export interface CellChange {
  row: number;
  column: number;
  input?: Input;
  value?: Cell;
  spill?: Cell[][];
  look?: Look;
  /** The look that it had, of which only what differs is changed. */
  was?: Look;
}

/** Rows or columns that were inserted in a sheet (count above 0) or deleted (below 0), the first at `at` from 0. */
export interface Shift {
  axis: "rows" | "columns";
  at: number;
  count: number;
}

/** A sheet as it should be saved; one without a known key is added. */
export interface SheetChange {
  key: string;
  name: string;
  /** In their order, before all else. */
  shifts?: readonly Shift[];
  widths: Record<number, number>;
  /** In pixels, by row, where they changed. */
  heights?: Record<number, number>;
  /** Rows whose height is none of their own: a program may fit them to what is in them. */
  fitted?: readonly number[];
  /** Whether rows and columns are hidden, where that changed. */
  rowsHidden?: Record<number, boolean>;
  columnsHidden?: Record<number, boolean>;
  frozen?: Frozen;
  /** All merged cells of the sheet, where they changed. */
  merges?: Place[];
  /** All pictures of the sheet, where they changed. */
  pictures?: BookPicture[];
  cells: CellChange[];
}

export interface BookChange {
  /** Whether figures do not follow the inputs, so that whoever opens the file must calculate it. */
  stale?: boolean;
  sheets: SheetChange[];
  addedNames: BookName[];
  removedNames: BookName[];
}
