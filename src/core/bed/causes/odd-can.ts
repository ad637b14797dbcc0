import { dot } from "../least-squares";
import { overlapColumns } from "../overlap-columns";
import type { BedCan } from "../read-bed";
import type { Fitted, Setting } from "./setting";

/** Dearer than a cause: one reading that is far off must be clear, not the worst of many that scatter. */
const PENALTY = 8;
const THROWS_TRIED = 3;

/** One can whose reading no overlap explains, and how well sound heads explain the others. */
export interface OddCan {
  can: BedCan;
  score: number;
}

/** The best overlap of sound heads where one can may have caught anything: a can that was knocked or read wrongly is no cause. */
export function oddCan(setting: Setting, plainFits: readonly Fitted[]): OddCan {
  const { heads, cans } = setting.bed;
  const penalty = 3 * Math.log(setting.count) + PENALTY;
  const alone = cans.map((_, i) => setting.free(Float64Array.from(cans, (_, j) => (i === j ? 1 : 0))));
  let best: OddCan = { can: cans[0]!, score: Infinity };
  const tried = [...plainFits].sort((one, other) => one.score - other.score).slice(0, THROWS_TRIED);
  for (const fit of tried) {
    const columns = overlapColumns(heads, cans, fit, fit.shapes).map((column) => setting.free(column));
    const left = setting.catches.map((value, i) =>
      columns.reduce((rest, column, s) => rest - fit.amounts[s]! * column[i]!, value),
    );
    alone.forEach((own, i) => {
      const sign = Math.sign(dot(own, left)) || 1;
      const { rest } = setting.amounts([...columns, own.map((value) => sign * value)]);
      const score = setting.score(rest, fit.ratio, penalty, fit);
      if (score < best.score) best = { can: cans[i]!, score };
    });
  }
  return best;
}
