import { coverage } from "../coverage";
import { driestPatchCoefficient } from "../driest-patch";
import { DRY_SPOTS } from "../judgement";
import type { LimitName } from "./broken-limits";
import type { Candidate } from "./search";

const LIMITS: LimitName[] = ["drySpots", "coefficient", "lowRate", "highRate", "flow"];
const FINALISTS = 10;

/** How many candidates a limit ruled out. */
export interface RuledOut {
  limit: LimitName;
  /** Those that break no other limit. */
  alone: number;
  /** Those that break others too. */
  withOthers: number;
}

/** Candidates in the order of their yearly cost. */
export interface Ranking {
  /** Those within every limit, cheapest first. */
  within: Candidate[];
  /** The others, cheapest first, those with dry spots last. */
  outside: Candidate[];
  /** What ruled them out; limits that ruled out none are left out. */
  ruledOut: RuledOut[];
}

/** Ranks candidates: all of a search, or those of one that was stopped. */
export function ranking(candidates: Candidate[]): Ranking {
  const ordered = [...candidates].sort((a, b) => costOf(a) - costOf(b) || a.capital - b.capital);
  const outside = ordered.filter(({ breaks }) => breaks.length > 0);
  const ruledOut = LIMITS.map((limit) => {
    const broken = outside.filter(({ breaks }) => breaks.includes(limit));
    const alone = broken.filter(({ breaks }) => breaks.length === 1).length;
    return { limit, alone, withOthers: broken.length - alone };
  });
  return {
    within: ordered.filter(({ breaks }) => breaks.length === 0),
    outside,
    ruledOut: ruledOut.filter(({ alone, withOthers }) => alone + withOthers > 0),
  };
}

/** SC of the driest patch of the best ten within the limits, in their order. */
export function finalistPatches({ within }: Ranking, share: number): (number | typeof DRY_SPOTS)[] {
  return within.slice(0, FINALISTS).map(({ plan }) => driestPatchCoefficient(coverage(plan), share));
}

function costOf({ yearlyCost }: Candidate): number {
  return yearlyCost === DRY_SPOTS ? Number.MAX_VALUE : yearlyCost;
}
