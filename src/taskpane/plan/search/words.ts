import { MEASURES } from "../../../core/figures/measures";
import type { LimitName } from "../../../core/layout/search/broken-limits";
import type { Found } from "../worker/messages";

const LIMITS: Record<LimitName, string> = {
  drySpots: "dry spots",
  coefficient: "SC",
  lowRate: `the lowest ${MEASURES.MAR.short}`,
  highRate: `the highest ${MEASURES.MAR.short}`,
  flow: "the pump's flow",
};

export const limitWords = (limits: readonly LimitName[]): string => limits.map((limit) => LIMITS[limit]).join(", ");

const layouts = (count: number) => `${count} ${count === 1 ? "layout" : "layouts"}`;

/** What a search found and what ruled the others out, in sentences. */
export function searchWords({ ranking, tried, total }: Found): string {
  const { within, ruledOut } = ranking;
  const stopped = tried < total ? `Stopped after ${tried} of ${total}. ` : "";
  const found = `${layouts(tried)} tried, ${within.length} within every limit.`;
  const out = ruledOut.map(
    ({ limit, alone, withOthers }) => `${LIMITS[limit]} ruled out ${alone + withOthers} (${alone} by itself)`,
  );
  return `${stopped}${found}${out.length > 0 ? ` Of the others, ${out.join("; ")}.` : ""}`;
}
