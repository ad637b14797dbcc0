import { execFileSync } from "node:child_process";
import { coverage, type Plan } from "../../src/core/layout/coverage";
import { judgement } from "../../src/core/layout/judgement";
import { namedProfile } from "../../src/core/layout/profile";
import type { SearchInput } from "../../src/core/layout/search/input";
import { ranking } from "../../src/core/layout/search/ranking";
import { search } from "../../src/core/layout/search/search";
import { doubleLoop } from "../core/layout/double-loop";
import { measured, printed, type Row } from "./table";

const NUMPY = "tests/bench/layout-numpy.py";
const ROUNDS = 60;
const SEARCHES = 7;

const HECTARE: Plan = {
  width: 100,
  length: 100,
  spacing: 4,
  rowSpacing: 4,
  arrangement: "border",
  arcs: "full",
  profile: namedProfile("triangular", 4, 400),
  cell: 0.25,
};

/** Debian's numpy over heads on the border, of the rates and of their judgement; its mean rate must be ours. */
function numpy(plan: Plan, rounds: number): { rates: number; judged: number } {
  const { distances, flow } = plan.profile;
  const given = [plan.width, plan.length, plan.spacing, distances.at(-1), flow, plan.cell, rounds].map(String);
  const printed = execFileSync("/usr/bin/python3", [NUMPY, ...given], { encoding: "utf8" });
  const [rates, judged, mean] = printed.trim().split(" ").map(Number) as [number, number, number];
  const { meanRate } = judgement(coverage(plan));
  if (!(Math.abs(mean / meanRate - 1) < 1e-9)) throw new Error(`numpy's mean rate must be ${meanRate}, got ${mean}`);
  return { rates, judged };
}

function row(name: string, milliseconds: number): Row {
  return { name, milliseconds, failure: undefined };
}

async function hectare(): Promise<void> {
  const rows = await measured(
    [
      { name: "Canfall", run: () => coverage(HECTARE) },
      { name: "Canfall, twice the area", run: () => coverage({ ...HECTARE, length: 200 }) },
    ],
    ROUNDS,
  );
  const started = performance.now();
  doubleLoop(HECTARE);
  rows.push(row("plain double loop, once", performance.now() - started));
  rows.push(row("numpy, sum over heads", numpy(HECTARE, 3).rates));
  printed("1 ha, heads every 4 m, cells of 0.25 m", rows, "Canfall");
}

/** Ten heads on 20 x 60 m, with 3 gaps across and 10 along on the border, with part circles and inset, and 10 in the middle. */
const THOUSAND: SearchInput = {
  width: 20,
  length: 60,
  cell: 0.25,
  heads: Array.from({ length: 10 }, (_, i) => {
    const profile = namedProfile("triangular", 4.2 + 0.37 * i, 350 + 40 * i);
    return { name: `example head ${i + 1}`, profile, price: 5 + i };
  }),
  spacings: [3, 4, 5].map((gaps) => 20 / gaps),
  rowSpacings: Array.from({ length: 10 }, (_, i) => 60 / (8 + i)),
  stands: [
    { arrangement: "border", arcs: "full" },
    { arrangement: "border", arcs: "matched" },
    { arrangement: "inset", arcs: "full" },
    { arrangement: "centre", arcs: "full" },
  ],
  riserPrice: 4,
  pipePrice: 2.5,
  waterPrice: 3,
  life: 10,
  discountRate: 0.06,
  depth: 6,
  days: 300,
  basis: "driest",
  limits: { coefficient: 1.5 },
};

/** Bed and cell of the candidates, with as many heads as they have in the mean, all alike. */
const MIDDLING: Plan = {
  ...HECTARE,
  ...{ width: 20, length: 60, spacing: 5.8, rowSpacing: 5.8 },
  profile: namedProfile("triangular", 6, 500),
};

/** A search of 1,000 candidates and 200 judgements by numpy, by turns, so that both meet the machine as it is. */
function candidates(): void {
  const rounds = Array.from({ length: SEARCHES }, () => {
    const started = performance.now();
    const found = [...search(THOUSAND).candidates];
    ranking(found);
    const own = performance.now() - started;
    return { own, numpy: 200 * numpy(MIDDLING, 5).judged, found };
  });
  const { found } = rounds[0] as (typeof rounds)[number];
  const heads = found.reduce((sum, { judgement }) => sum + judgement.heads, 0) / found.length;
  const name = `Canfall, ${found.length} candidates, ${heads.toFixed(0)} heads in the mean`;
  const rows = [
    row(name, median(rounds.map(({ own }) => own))),
    row(
      `numpy, 200 of one with ${coverage(MIDDLING).heads.length} heads`,
      median(rounds.map(({ numpy: time }) => time)),
    ),
  ];
  printed("Search on 20 x 60 m, cells of 0.25 m", rows, name);
  const ratios = rounds.map(({ own, numpy: time }) => time / own).sort((a, b) => a - b);
  console.log(`numpy over Canfall in each of ${SEARCHES} turns: ${ratios.map((ratio) => ratio.toFixed(1)).join(", ")}`);
}

function median(times: number[]): number {
  return times.sort((a, b) => a - b)[times.length >> 1] as number;
}

hectare().then(candidates);
