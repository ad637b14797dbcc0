import { type BedHead, facingBed } from "../bed-heads";
import { overlapColumns, type Wind } from "../overlap-columns";
import { type Fitted, lightWindPenalty, lightWinds, type Setting } from "./setting";

const PENALTY = 5;
/** Turn of all part circles that is tried [deg]. */
const TURN = 30;

/** Heads as they may be where they do not throw the part of the circle that was typed. */
function otherwise(heads: readonly BedHead[], bed: { width: number; length: number }): BedHead[][] {
  const part = heads.some(({ arc }) => arc < 360);
  if (!part) {
    const cut = heads.map((head) => ({ ...head, ...facingBed(head, bed) }));
    return cut.some(({ arc }) => arc < 360) ? [cut] : [];
  }
  const turned = (by: number) =>
    heads.map((head) => (head.arc < 360 ? { ...head, faces: (head.faces + by + 360) % 360 } : head));
  return [heads.map((head) => ({ ...head, arc: 360, faces: 0, times: 1 })), turned(TURN), turned(-TURN)];
}

/** The best overlap of sound heads whose part circles are other than typed: no cause, so that they are not taken for one. */
export function otherArcs(setting: Setting, plainFits: readonly Fitted[]): number {
  const { heads, cans } = setting.bed;
  const scoreOf = (others: readonly BedHead[], fit: Fitted, wind: Wind | undefined, penalty: number) => {
    const state = { outputs: fit.outputs, throws: fit.throws, ...(wind && { wind }) };
    const columns = overlapColumns(others, cans, state, fit.shapes).map((column) => setting.free(column));
    return setting.score(setting.amounts(columns).rest, fit.ratio, penalty, state);
  };
  const scores = otherwise(heads, setting.bed).flatMap((others) => {
    const calm = plainFits.map((fit) => ({ fit, score: scoreOf(others, fit, undefined, PENALTY) }));
    const { fit, score } = calm.reduce((best, one) => (one.score < best.score ? one : best));
    const windPenalty = lightWindPenalty(setting.count);
    return [score, ...lightWinds().map((wind) => scoreOf(others, fit, wind, PENALTY + windPenalty))];
  });
  return Math.min(Infinity, ...scores);
}
