import { BUILT_IN_LIMITS, type Limit } from "../../core/figures/limits";
import { LIMIT_NAMES, limitsIn } from "../../workbook/answer/limits-in";
import { cellsOf } from "../workbook/named";
import type { Reading } from "../workbook/reading";

/** The limits of the workbook's own sheet of them; the built-in ones where it has none. */
export const LIMITS: Reading<readonly Limit[]> = {
  wants: { names: ["Limits_Table", ...LIMIT_NAMES] },
  read: (snapshot) => (snapshot.named("Limits_Table") ? limitsIn(cellsOf(snapshot)) : BUILT_IN_LIMITS),
};
