import { FORMULA_REF_TO_ARRAY_CACHE } from "@univerjs/preset-sheets-core";

/** Parsed formulas that the grid keeps: an audit has 8,600, and past the grid's own 5,000 it would keep none in effect. */
const MOST_FORMULAS = 100_000;

interface Cache {
  _cache: { limit: number };
  _hash(formula: string): string;
  set(formula: string, kept: unknown): void;
}

/** The grid keeps parsed formulas by a short sum over their text, which two formulas can share: keep them by the text. */
export function mendFormulaCache(): void {
  const kept: Cache = Object.getPrototypeOf(FORMULA_REF_TO_ARRAY_CACHE);
  const { set } = kept;
  kept._hash = (formula) => formula;
  kept.set = function (formula, one) {
    this._cache.limit = Math.max(this._cache.limit, MOST_FORMULAS);
    set.call(this, formula, one);
  };
}
