import type { Stated } from "../../cells/stated";

/** What a cell of a file holds. */
export interface FileCell {
  value: Stated;
  /** Name of the error that it shows, such as `#NAME?`. */
  error?: string;
  /** As the file holds it, without `=`. */
  formula?: string;
  /** Its kind where it is not a plain one: array, shared or dataTable. */
  kind?: string;
  /** The cells that an array formula fills. */
  fills?: string;
  /** Number of the formula that it shares with other cells. */
  shared?: string;
  /** Where the element of its formula starts and ends in the part. */
  formulaPlace?: [start: number, end: number];
  /** Whether its text has pieces with looks of their own. */
  rich?: true;
  /** Attributes of the cell's tag, such as its style. */
  given: ReadonlyMap<string, string>;
  /** Where the cell lies in the part. */
  start: number;
  end: number;
}

/** A row's tag; places as those of an element. */
export interface FileRow {
  number: number;
  /** Style of its cells that have none of their own, as a number. */
  style?: number;
  /** Attributes of its tag, such as its height. */
  given: ReadonlyMap<string, string>;
  start: number;
  openEnd: number;
  closeStart: number;
  end: number;
}

export interface SheetContent {
  /** The cells that hold something or have a style, by address, in the order of the file. */
  cells: Map<string, FileCell>;
  rows: FileRow[];
  /** Where the table of cells is. */
  table: { openEnd: number; closeStart: number; end: number };
}
