/** An error in a cell: Excel's name for it (`#N/A`) and, where the function gave one, its message. */
export interface CellError {
  error: string;
  message?: string;
}

/** What a cell holds: null is a blank cell. */
export type Cell = number | string | boolean | null | CellError;

/** What a person types into a cell: a value, or a formula as text that begins with `=`; "" empties the cell. */
export type Input = number | string | boolean;
