import type { AnswerFacts } from "./answer-sentence";
import { shown } from "./shown";

/** Rates [mm/h] outside of which something is mistyped; those of the check on the sheet Cans. */
const LIKELY = [2, 60] as const;

/** That the rate breaks its limit, and what to do about it; "" where it keeps it, and while there is no setting. */
export function rateWords({ rate, setting }: Pick<AnswerFacts, "rate" | "setting">): string {
  if (!rate || !setting) return "";
  const start = `The rate, ${shown(rate.value)} mm/h, is`;
  if (rate.value < LIKELY[0] || rate.value > LIKELY[1]) {
    return `${start} hard to believe: check can opening, minutes and that readings are mL before you set anything.`;
  }
  const is = (side: string) => `${start} ${side} the limit of ${shown(rate.limit)}:`;
  if (rate.value < rate.limit) return `${is("under")} runs are long, so check pressure and nozzles.`;
  if (setting.pulses > 1) return `${is("over")} keep to the pulses, or water runs off.`;
  return `${is("over")} water may run off, so split the run into pulses.`;
}
