import { FORMULA_REF_TO_ARRAY_CACHE, FormulaDependencyGenerator } from "@univerjs/preset-sheets-core";
import type { Fix } from "./fix";

const order = FormulaDependencyGenerator.prototype;
const kept = FORMULA_REF_TO_ARRAY_CACHE;

/** Whether what is read from cells now may be kept for other formulas of this calculation. */
let keeping = false;

/** Does `work`, which reads cells at another time than its turn in a calculation. */
export function outOfTurn<T>(work: () => T): T {
  const before = keeping;
  keeping = false;
  try {
    return work();
  } finally {
    keeping = before;
  }
}

/** Keeps what was read only once formulas are in order: each then comes after the cells that it reads. */
export const oldValues: Fix = {
  name: "old-values",
  wrong:
    "To find what depends on what, the grid evaluates references such as A1:INDEX(A:A,B11) before it calculates anything, and keeps what it read: formulas then see the old value of such a cell.",
  seen: "0.25.1",
  members: () => [
    ["FORMULA_REF_TO_ARRAY_CACHE", kept, "set"],
    ["FormulaDependencyGenerator", order, "generate"],
  ],
  mend() {
    const { set } = Object.getPrototypeOf(kept) as typeof kept;
    const { generate } = order;
    kept.set = function (range, cells) {
      if (keeping) set.call(this, range, cells);
    };
    order.generate = async function (...given) {
      keeping = false;
      kept.clear();
      const due = await generate.apply(this, given);
      keeping = true;
      return due;
    };
  },
};
