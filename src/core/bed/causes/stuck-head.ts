import { overlapColumns } from "../overlap-columns";
import type { Fitted, Setting } from "./setting";

/** Part of the circle that a head wets which does not turn [deg]. */
const SECTOR = 60;
const DIRECTIONS = 12;
const PENALTY = 5;

/** The best overlap with one head that does not turn: no cause of the nine, so that it is not taken for one. */
export function stuckHead(setting: Setting, { throws, outputs, shapes, ratio, wind }: Fitted): Fitted {
  const { heads, cans } = setting.bed;
  const penalty = Math.log(setting.count) + 2 * Math.log(heads.length) + PENALTY;
  const overlap = (of: typeof heads) =>
    overlapColumns(
      of,
      cans,
      { outputs: of.map(() => 1), throws: of.map(() => throws[0] as number), ...(wind && { wind }) },
      shapes,
    );
  const whole = overlap(heads);
  let best: Fitted = {
    throws,
    outputs,
    shapes,
    ratio,
    amounts: new Float64Array(shapes.length),
    rest: 0,
    score: Infinity,
  };
  for (const head of heads) {
    const own = overlap([head]);
    for (let turn = 0; turn < DIRECTIONS; turn += 1) {
      const faces = (turn * 360) / DIRECTIONS;
      const stuck = overlap([{ ...head, arc: SECTOR, faces, times: (head.times * head.arc) / SECTOR }]);
      const columns = whole.map((column, s) =>
        setting.free(column.map((value, i) => value - own[s]![i]! + stuck[s]![i]!)),
      );
      const { amounts, rest } = setting.amounts(columns);
      const score = setting.score(rest, ratio, penalty, { outputs, ...(wind && { wind }) });
      if (score < best.score) best = { ...best, amounts, rest, score };
    }
  }
  return best;
}
