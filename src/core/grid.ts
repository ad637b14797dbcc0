/** Readings laid out as in the bed, row after row. */
export interface Grid {
  rows: number;
  columns: number;
  values: Float64Array;
}
