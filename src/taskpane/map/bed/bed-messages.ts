import type { Measured } from "../../../core/bed/causes/measured";
import type { Redrawn } from "../../../core/bed/causes/redraw";
import type { NextCans } from "../../../core/bed/interval/next-cans";
import type { WholeBed } from "../../../core/bed/interval/whole-bed";
import type { BedInput } from "../../../core/bed/read-bed";
import type { BedVerdict } from "../../../workbook/bed/bed-verdict";

/** What the worker is asked: to read a bed, and whether to go on to the slow parts. */
export interface Ask {
  input: BedInput;
  measured: Measured;
  /** Whole beds drawn for the interval, and sound beds drawn again for a second opinion. */
  slow: boolean;
}

/** The bed as the leading cause fits it. */
export interface FittedGround {
  /** Rates over the mean of the cans in equal cells over the whole bed, row after row. */
  values: Float64Array;
  columns: number;
  rows: number;
  /** The fit at each can, over the mean of the cans: row after row of the grid, null where none was read. */
  atCans: (number | null)[][];
}

/** What the worker says, one after the other. */
export type Said =
  | { kind: "cause"; verdict: BedVerdict; fitted: FittedGround }
  | { kind: "interval"; whole: WholeBed; next: NextCans }
  | { kind: "no interval"; why: string }
  | ({ kind: "redrawn" } & Redrawn)
  | { kind: "done" }
  | { kind: "failed"; message: string };
