import { dot, nonNegative } from "../least-squares";
import { overlapColumns } from "../overlap-columns";
import { type Fitted, gramOf, type Setting } from "./setting";

/** Outputs that are tried, in parts of a sound head's. */
const WEAK = [0, 0.14, 0.28, 0.42, 0.56, 0.7];
const STRONG = [1.5, 2, 2.6];
/** Throws of the plain overlap that are tried again. */
const THROWS_TRIED = 4;
const PENALTY = 2.5;

/** The best overlap with one head that gives too little, for each head. */
export function weakHead(setting: Setting, plainFits: readonly Fitted[]): Fitted[] {
  return oneHead(setting, plainFits, WEAK);
}

/** The best overlap with as many weak heads more as asked for, each the one that explains most: more than one is no cause of the nine. */
export function moreWeakHeads(setting: Setting, weak: Fitted, more: number): Fitted {
  let best = weak;
  for (let count = 2; count < 2 + more; count += 1) {
    const next = oneHead(setting, [best], WEAK, count).reduce((low, fit) => (fit.score < low.score ? fit : low));
    if (next.score >= best.score) return best;
    best = next;
  }
  return best;
}

/** The best overlap with one head that gives too much, for each head: no cause of the nine, so that it is not taken for one. */
export function strongHead(setting: Setting, plainFits: readonly Fitted[]): Fitted[] {
  return oneHead(setting, plainFits, STRONG);
}

/** For each head the best overlap in which it gives another output; `count`: heads that then differ from a sound one. */
function oneHead(setting: Setting, fits: readonly Fitted[], others: readonly number[], count = 1): Fitted[] {
  const { heads, cans } = setting.bed;
  const penalty = count * (Math.log(setting.count) + 2 * Math.log(heads.length) + PENALTY);
  const best: Fitted[] = [];
  const tried = [...fits].sort((one, other) => one.score - other.score).slice(0, THROWS_TRIED);
  for (const { throws, outputs, shapes, ratio, wind } of tried) {
    const alone = heads.map((head) =>
      overlapColumns([head], cans, { outputs: [1], throws: [throws[0] as number], ...(wind && { wind }) }, shapes).map(
        (column) => setting.free(column),
      ),
    );
    const whole = shapes.map((_, s) => sumOf(alone.map((columns, k) => columns[s]!.map((v) => v * outputs[k]!))));
    const gram = gramOf(whole);
    const target = Float64Array.from(whole, (column) => dot(column, setting.catches));
    alone.forEach((columns, k) => {
      const own = gramOf(columns);
      const cross = gramOf(whole, columns);
      const ownTarget = Float64Array.from(columns, (column) => dot(column, setting.catches));
      for (const output of others) {
        const lost = outputs[k]! - output;
        const size = shapes.length;
        const changed = gram.map(
          (value, at) =>
            value - lost * (cross[at]! + cross[(at % size) * size + Math.floor(at / size)]!) + lost * lost * own[at]!,
        );
        const { amounts, rest } = nonNegative(
          changed,
          target.map((value, s) => value - lost * ownTarget[s]!),
          setting.total,
        );
        const changedOutputs = Float64Array.from(outputs, (value, at) => (at === k ? output : value));
        const score = setting.score(rest, ratio, penalty, { outputs: changedOutputs, ...(wind && { wind }) });
        if (!(score >= (best[k]?.score ?? Infinity))) {
          best[k] = { shapes, amounts, ratio, throws, outputs: changedOutputs, rest, score, ...(wind && { wind }) };
        }
      }
    });
  }
  return best;
}

function sumOf(columns: readonly Float64Array[]): Float64Array {
  return columns[0]!.map((_, i) => columns.reduce((sum, column) => sum + column[i]!, 0));
}
