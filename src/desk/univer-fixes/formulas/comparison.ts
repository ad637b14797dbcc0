import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

/** Compares each cell itself. */
export const comparison: Fix = {
  name: "comparison",
  wrong: 'The grid\'s cache of compared cells gives a cell that became 0 for a blank one (range="").',
  seen: "0.25.1",
  members: () =>
    ["set", "setContinueBuildingCache"].map((name) => ["CELL_INVERTED_INDEX_CACHE", CELL_INVERTED_INDEX_CACHE, name]),
  mend() {
    CELL_INVERTED_INDEX_CACHE.set = () => {};
    CELL_INVERTED_INDEX_CACHE.setContinueBuildingCache = () => {};
  },
};
