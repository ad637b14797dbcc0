import { DRY_SPOTS, type Judgement } from "../../core/layout/judgement";
import type { Needs } from "./layout-figures";

/** Two layouts are called equal where one needs less than this part more than the other. */
const EQUAL = 0.01;

/** Water that the heads throw over what the low quarter gets; undefined where that says nothing or the pump is too small. */
function factorOf({ quarterWater, flow }: Judgement, { pump }: Needs): number | undefined {
  return quarterWater === DRY_SPOTS || (pump !== undefined && flow > pump) ? undefined : quarterWater;
}

const heads = (count: number) => `${count} ${count === 1 ? "head" : "heads"}`;

/**
 * Which of several layouts needs least water, and why; the first one is the person's own. Water is compared for the same
 * depth in the low quarter of the bed, without wind.
 */
export function bestWords(all: readonly { judgement: Judgement }[], needs: Needs): string {
  const known = all.flatMap(({ judgement }, index) => {
    const factor = factorOf(judgement, needs);
    return factor === undefined ? [] : [{ index, factor, judgement }];
  });
  const why = `dry spots${needs.pump === undefined ? "" : " or needs more than the pump gives"}`;
  if (known.length === 0) return `None is best: each has ${why}.`;
  const best = known.reduce((least, one) => (one.factor < (1 - EQUAL) * least.factor ? one : least));
  const throws = (factor: number) => `${factor.toFixed(2)} times what the driest quarter of the bed gets`;
  if (best.index === 0) return `Your layout needs least water: its heads throw ${throws(best.factor)}.`;
  const own = known.find(({ index }) => index === 0);
  const start = `${best.index + 1} needs least water: its heads throw ${throws(best.factor)}`;
  const number = `It has ${heads(best.judgement.heads)}, yours ${all[0]!.judgement.heads}.`;
  if (!own) return `${start}; yours has ${why}. ${number}`;
  const less = Math.round(100 * (1 - best.factor / own.factor));
  return `${start}, yours ${own.factor.toFixed(2)}, so ${less} % less water for the same depth. ${number}`;
}
