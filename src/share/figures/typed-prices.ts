import type { Stated } from "../../cells/stated";
import type { Range } from "../../core/cost/yearly-cost";
import type { AuditInputs } from "./audit-inputs";

/** Rows of a rectangle down to the last that holds anything; null where a cell is blank. */
export function typedRows(inputs: AuditInputs, name: string, columns: number): Stated[][] {
  const cells = inputs.cells(name);
  const rows = Math.max(0, ...cells.map(({ row }) => row));
  const all = Array.from({ length: rows }, () => Array.from({ length: columns }, (): Stated => null));
  for (const { row, column, cell } of cells) all[row - 1]![column - 1] = cell.value;
  return all;
}

/** Prices as typed; a blank low or high one is as the likely one. Null where one is no price of 0 or more. */
export function priceRange([low, likely, high]: readonly Stated[]): Range<number> | null {
  const price = (value: Stated | undefined) => (typeof value === "number" && value >= 0 ? value : null);
  const middle = price(likely);
  const least = (low ?? "") === "" ? middle : price(low);
  const most = (high ?? "") === "" ? middle : price(high);
  return least === null || middle === null || most === null ? null : { low: least, likely: middle, high: most };
}

/** Prices from three cells; `Wage_Low`, `Wage` and `Wage_High`. */
export const namedPrices = (inputs: AuditInputs, name: string): Range<number> | null =>
  priceRange([inputs.value(`${name}_Low`), inputs.value(name), inputs.value(`${name}_High`)]);

/** Of each level what is calculated from it. */
export const eachLevel = <From, To>({ low, likely, high }: Range<From>, work: (from: From) => To): Range<To> => ({
  low: work(low),
  likely: work(likely),
  high: work(high),
});
