import type { Plan, PlannedCoverage } from "../../../core/layout/coverage";
import type { DRY_SPOTS, Judgement } from "../../../core/layout/judgement";
import type { SearchInput } from "../../../core/layout/search/input";
import type { Ranking } from "../../../core/layout/search/ranking";

/** A layout with all that is known of it. */
export interface Planned {
  plan: Plan;
  coverage: PlannedCoverage;
  judgement: Judgement;
  /** SC of the driest patch; null where there are too many cells to look for it at once. */
  patch: number | typeof DRY_SPOTS | null;
  /** What a person should know of it; "" where there is nothing. */
  caution: string;
}

/** What a search found, also one that was stopped. */
export interface Found {
  ranking: Ranking;
  /** SC of the driest patch of the best, in their order. */
  patches: (number | typeof DRY_SPOTS)[];
  tried: number;
  total: number;
}

/** What is asked of the worker; a stop goes to the search of the same number. */
export type Ask =
  | { id: number; kind: "plan"; plan: Plan }
  | { id: number; kind: "search"; input: SearchInput }
  | { id: number; kind: "stop" };

/** What the worker says of the asking with the same number. */
export type Said =
  | { id: number; kind: "planned"; planned: Planned }
  | { id: number; kind: "progress"; tried: number; total: number }
  | { id: number; kind: "found"; found: Found }
  | { id: number; kind: "failed"; message: string; parameter: string };
