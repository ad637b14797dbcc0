import type { BedCan } from "../read-bed";
import { oddCan } from "./odd-can";
import { otherArcs } from "./other-arcs";
import type { Fitted, Setting } from "./setting";
import { stuckHead } from "./stuck-head";
import { moreWeakHeads, strongHead } from "./weak-head";

/** Weak heads that are tried beside the first. */
const MORE_WEAK = 2;

/** What may be wrong that is none of the nine causes, and its score. */
export type Outside =
  | { what: "can"; can: BedCan; score: number }
  | { what: "arcs" | "head"; score: number }
  | { what: "heads"; heads: number[]; score: number };

/** The likeliest of what is none of the nine causes: a can misread, other part circles, several weak heads, a strong or a stuck head. */
export function outside(setting: Setting, plainFits: readonly Fitted[], weakFits: readonly Fitted[]): Outside {
  const best = (fits: readonly Fitted[]) => fits.reduce((low, fit) => (fit.score < low.score ? fit : low));
  const weak = moreWeakHeads(setting, best(weakFits), MORE_WEAK);
  const heads = Array.from(weak.outputs).flatMap((output, k) => (output < 1 ? [k] : []));
  const head = Math.min(best(strongHead(setting, plainFits)).score, stuckHead(setting, best(plainFits)).score);
  const all: Outside[] = [
    { what: "can", ...oddCan(setting, plainFits) },
    { what: "arcs", score: otherArcs(setting, plainFits) },
    { what: "head", score: head },
    ...(heads.length > 1 ? [{ what: "heads" as const, heads, score: weak.score }] : []),
  ];
  return all.reduce((likeliest, one) => (one.score < likeliest.score ? one : likeliest));
}
