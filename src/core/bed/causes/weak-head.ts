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

/** The best overlap with one head that gives too much, for each head: no cause of the nine, so that it is not taken for one. */
export function strongHead(setting: Setting, plainFits: readonly Fitted[]): Fitted[] {
  return oneHead(setting, plainFits, STRONG);
}

function oneHead(setting: Setting, plainFits: readonly Fitted[], others: readonly number[]): Fitted[] {
  const { heads, cans } = setting.bed;
  const penalty = Math.log(setting.count) + 2 * Math.log(heads.length) + PENALTY;
  const best: Fitted[] = [];
  const tried = [...plainFits].sort((one, other) => one.score - other.score).slice(0, THROWS_TRIED);
  for (const { throws, outputs, shapes, ratio, wind } of tried) {
    const alone = heads.map((head) =>
      overlapColumns([head], cans, { outputs: [1], throws: [throws[0] as number], ...(wind && { wind }) }, shapes).map(
        (column) => setting.free(column),
      ),
    );
    const whole = shapes.map((_, s) => sumOf(alone.map((columns) => columns[s]!)));
    const gram = gramOf(whole);
    const target = Float64Array.from(whole, (column) => dot(column, setting.catches));
    alone.forEach((columns, k) => {
      const own = gramOf(columns);
      const cross = gramOf(whole, columns);
      const ownTarget = Float64Array.from(columns, (column) => dot(column, setting.catches));
      for (const output of others) {
        const lost = 1 - output;
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
