import type { Cell, Input } from "./host";

/** How a cell looks, as far as the desk shows it; colours are `#rrggbb`. */
export interface Look {
  bold?: true;
  italic?: true;
  size?: number;
  colour?: string;
  fill?: string;
  format?: string;
  align?: "left" | "center" | "right";
  wrap?: true;
}

/** A cell of a file; rows and columns count from 0. */
export interface BookCell {
  row: number;
  column: number;
  input: Input;
  /** What the file says its formula gave. */
  cached?: Cell;
  look?: Look;
}

export interface BookSheet {
  /** Stays with the sheet when it is renamed. */
  key: string;
  name: string;
  rows: number;
  columns: number;
  /** In pixels, by column. */
  widths: Record<number, number>;
  frozen: { rows: number; columns: number };
  cells: BookCell[];
}

export interface BookName {
  name: string;
  /** `Sheet!$A$1:$B$2` */
  reference: string;
}

export interface Book {
  sheets: BookSheet[];
  names: BookName[];
}

/** What is new in a cell: only what is given changes; a formula's value is the file's cached one. */
export interface CellChange {
  row: number;
  column: number;
  input?: Input;
  value?: Cell;
  spill?: Cell[][];
  look?: Look;
}

/** A sheet as it should be saved; one without a known key is added. */
export interface SheetChange {
  key: string;
  name: string;
  widths: Record<number, number>;
  cells: CellChange[];
}

export interface BookChange {
  sheets: SheetChange[];
  addedNames: BookName[];
  removedNames: BookName[];
}
