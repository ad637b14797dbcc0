import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/preset-sheets-core";

/** The grid's cache of compared cells gives a cell that became 0 for a blank one (`range=""`): compare each cell itself. */
export function mendComparison(): void {
  CELL_INVERTED_INDEX_CACHE.set = () => {};
  CELL_INVERTED_INDEX_CACHE.setContinueBuildingCache = () => {};
}
