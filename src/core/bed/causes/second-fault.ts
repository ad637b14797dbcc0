import { dot } from "../least-squares";
import { overlapColumns } from "../overlap-columns";
import type { Fitted, Setting } from "./setting";

/** What a fit takes from the cans: their number less this is what its rest is compared with. */
const FITTED = 6;
/** Squares that another output of one more head must explain, over the mean square left without it, before it is a second fault. */
const MOST_GAIN = 11;
const MOST_GAIN_WIND = 30;

/** The head whose other output explains most of what a fit leaves, where that is clearly much; not `known`. */
export function secondFault(
  setting: Setting,
  fitted: Fitted,
  known: number | undefined,
  windy: boolean,
): number | undefined {
  const { heads, cans } = setting.bed;
  const { wind } = fitted;
  const limit = windy ? MOST_GAIN_WIND : MOST_GAIN;
  const shares = heads.map((head, k) => {
    const state = { outputs: [1], throws: [fitted.throws[k] as number], ...(wind && { wind }) };
    const columns = overlapColumns([head], cans, state, fitted.shapes);
    return setting.free(
      columns[0]!.map((_, i) => columns.reduce((sum, column, s) => sum + fitted.amounts[s]! * column[i]!, 0)),
    );
  });
  const all = new Float64Array(cans.length);
  shares.forEach((share, k) => {
    for (let i = 0; i < all.length; i += 1) all[i] = all[i]! + (fitted.outputs[k] as number) * share[i]!;
  });
  const size = dot(all, all);
  if (!(size > 0)) return undefined;
  const without = (column: Float64Array) => {
    const part = dot(column, all) / size;
    return column.map((value, i) => value - part * all[i]!);
  };
  const rest = without(setting.catches);
  const left = dot(rest, rest);
  let found: number | undefined;
  let most = limit;
  shares.forEach((share, k) => {
    if (k === known) return;
    const own = without(share);
    const length = dot(own, own);
    const squares = length > 0 ? dot(rest, own) ** 2 / length : 0;
    const gain = squares / Math.max(1, (left - squares) / Math.max(1, cans.length - FITTED));
    if (gain > most) {
      most = gain;
      found = k;
    }
  });
  return found;
}
