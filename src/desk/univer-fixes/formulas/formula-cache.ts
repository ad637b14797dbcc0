import { FORMULA_REF_TO_ARRAY_CACHE } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

/** Parsed formulas that the grid keeps: an audit has 8,600, and past the grid's own 5,000 it would keep none in effect. */
const MOST_FORMULAS = 100_000;

interface Cache {
  _cache: { limit: number };
  _hash(formula: string): string;
  set(formula: string, kept: unknown): void;
}

const kept: Cache = Object.getPrototypeOf(FORMULA_REF_TO_ARRAY_CACHE);

/** Keeps parsed formulas by their whole text, and as many as a workbook has. */
export const formulaCache: Fix = {
  name: "formula-cache",
  wrong:
    "The grid keeps parsed formulas by a short sum over their text, which two formulas can share: one then gives the other's value.",
  seen: "0.25.1",
  members: () => [
    ["FormulaAstLRU", kept, "_hash"],
    ["FormulaAstLRU", kept, "set"],
    ["FormulaAstLRU", FORMULA_REF_TO_ARRAY_CACHE, "_cache"],
  ],
  mend() {
    const { set } = kept;
    kept._hash = (formula) => formula;
    kept.set = function (formula, one) {
      this._cache.limit = Math.max(this._cache.limit, MOST_FORMULAS);
      set.call(this, formula, one);
    };
  },
};
