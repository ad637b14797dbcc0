import { annuity } from "../../cost/annuity";
import { annualCost } from "../../cost/price";
import { annualWater } from "../../cost/water";
import { InputError } from "../../errors";
import { checkedCells, type Plan } from "../coverage";
import { headCounts } from "../heads";
import { DRY_SPOTS, type Judgement } from "../judgement";
import { waterFactor } from "../multiplier";
import { symmetricJudgement } from "../symmetric-judgement";
import { brokenLimits, type LimitName } from "./broken-limits";
import { checkSearch, type PricedHead, type SearchInput } from "./input";
import { upgradeCapital } from "./upgrade-capital";

const MOST_CANDIDATES = 10_000;

/** One layout that was tried. */
export interface Candidate {
  /** Name of its head. */
  head: string;
  plan: Plan;
  judgement: Judgement;
  /** Pipe [m]. */
  pipe: number;
  /** Heads, risers and pipe [currency]. */
  capital: number;
  /** The same a year [currency a year]. */
  yearlyCapital: number;
  /** Water of all heads [kL a year]. */
  water: number | typeof DRY_SPOTS;
  /** Its price [currency a year]. */
  waterCost: number | typeof DRY_SPOTS;
  /** Water and capital [currency a year]. */
  yearlyCost: number | typeof DRY_SPOTS;
  /** Limits that it breaks. */
  breaks: LimitName[];
}

/** A search that is ready to run. */
export interface Search {
  /** How many candidates there are. */
  total: number;
  /** The candidates, each calculated when it is asked for. */
  candidates: Iterable<Candidate>;
}

/**
 * Search for a layout.
 *
 *     every head with every pair of spacings and every arrangement; pairs that come to the same gaps are one candidate
 *     yearly cost = water a year * price + annuity of the capital        water: water factor * depth * area * days
 *
 * Nothing is calculated before a candidate is asked for, so that the caller can show progress and stop.
 *
 * @param input Bed, heads, spacings, arrangements, prices, needs and limits
 * @returns Number of candidates, and the candidates one by one; "dry spots" where the basis gets next to nothing
 * @throws InputError before any work if a list is empty, a number is out of range, or there are over 10,000 candidates
 * @source own reasoning: every candidate is tried
 * @example search({ width: 8, length: 8, cell: 0.5, spacings: [4, 4.1], rowSpacings: [4], riserPrice: 1, pipePrice: 1,
 *   heads: [{ name: "A", profile: namedProfile("triangular", 4, 400), price: 1 }], waterPrice: 1, life: 9,
 *   stands: [{ arrangement: "border", arcs: "full" }, { arrangement: "inset", arcs: "full" }], discountRate: 0, depth: 5,
 *   days: 300, basis: "driest", limits: {} }).total // 2
 */
export function search(input: SearchInput): Search {
  checkSearch(input);
  const plans = plansOf(input);
  for (const { plan } of plans) checkedCells(plan);
  return { total: plans.length, candidates: candidatesOf(plans, input) };
}

interface Try {
  head: PricedHead;
  plan: Plan;
}

function plansOf({ heads, spacings, rowSpacings, stands, width, length, cell }: SearchInput): Try[] {
  const most = heads.length * spacings.length * rowSpacings.length * stands.length;
  if (!(most <= MOST_CANDIDATES)) {
    throw new InputError("candidates", "be at most 10,000 (heads x spacings x row spacings x layouts)", most);
  }
  const plans = new Map<string, Omit<Plan, "profile">>();
  for (const stand of stands) {
    for (const rowSpacing of rowSpacings) {
      for (const spacing of spacings) {
        const plan = { width, length, cell, spacing, rowSpacing, ...stand };
        const name = [stand.arrangement, stand.arcs, ...headCounts(plan)].join(" ");
        if (!plans.has(name)) plans.set(name, plan);
      }
    }
  }
  return heads.flatMap((head) =>
    [...plans.values()].map((plan) => ({ head, plan: { ...plan, profile: head.profile } })),
  );
}

function* candidatesOf(plans: Try[], input: SearchInput): Generator<Candidate> {
  for (const { head, plan } of plans) yield candidate(head, plan, symmetricJudgement(plan), input);
}

function candidate(head: PricedHead, plan: Plan, judgement: Judgement, input: SearchInput): Candidate {
  const prices = { head: head.price, riser: input.riserPrice, pipe: input.pipePrice };
  const { pipe, capital } = upgradeCapital(plan, prices);
  const yearlyCapital = annuity(capital, input.life, input.discountRate);
  const factor = waterFactor(judgement, input.basis);
  const dry = factor === DRY_SPOTS;
  const water = dry ? DRY_SPOTS : annualWater(plan.width * plan.length, input.depth, input.days, factor, 1);
  const waterCost = water === DRY_SPOTS ? DRY_SPOTS : annualCost(water, input.waterPrice);
  const yearlyCost = waterCost === DRY_SPOTS ? DRY_SPOTS : waterCost + yearlyCapital;
  const breaks = brokenLimits(judgement, input.basis, input.limits);
  return { head: head.name, plan, judgement, pipe, capital, yearlyCapital, water, waterCost, yearlyCost, breaks };
}
