import { FORMULA_REF_TO_ARRAY_CACHE } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

/** Each cell is read when it is needed. */
export const oldValues: Fix = {
  name: "old-values",
  wrong:
    "To find what depends on what, the grid evaluates references such as A1:INDEX(A:A,B11) before it calculates anything, and keeps what it read: formulas then see the old value of such a cell.",
  seen: "0.25.1",
  members: () => [["FORMULA_REF_TO_ARRAY_CACHE", FORMULA_REF_TO_ARRAY_CACHE, "set"]],
  mend() {
    FORMULA_REF_TO_ARRAY_CACHE.set = () => {};
  },
};
