import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { compare } from "../../src/core/layout/compare";
import { coverage, type Plan } from "../../src/core/layout/coverage";
import { judgement } from "../../src/core/layout/judgement";
import { namedProfile } from "../../src/core/layout/profile";
import { doubleLoop } from "../core/layout/double-loop";
import { measured, printed, type Row } from "./table";

const NUMPY = fileURLToPath(new URL("layout-numpy.py", import.meta.url));
const ROUNDS = 60;

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

/** Candidates of a 20 x 60 m bed: spacings, throws and flows of each arrangement, judged. */
async function candidates(): Promise<void> {
  const bed = { width: 20, length: 60, cell: 0.25 };
  const steps = Array.from({ length: 250 }, (_, i) => i);
  const thousand = () =>
    steps.map((i) => {
      const spacing = 3 + (i % 25) * 0.2;
      const profile = namedProfile("triangular", spacing * (1 + Math.floor(i / 25) * 0.03), 400 + i);
      return compare({ ...bed, spacing, rowSpacing: spacing, profile });
    });
  const rows = await measured([{ name: "Canfall, 1,000 candidates judged", run: thousand }], 3);
  const middling: Plan = {
    ...HECTARE,
    ...bed,
    spacing: 5.4,
    rowSpacing: 5.4,
    profile: namedProfile("triangular", 6, 400),
  };
  rows.push(row("numpy, 200 times a middling one of them judged", 200 * numpy(middling, 5).judged));
  printed("Search on 20 x 60 m, cells of 0.25 m", rows, "Canfall, 1,000 candidates judged");
}

export async function layoutBench(): Promise<void> {
  await hectare();
  await candidates();
}

if (process.argv[1] === fileURLToPath(import.meta.url)) layoutBench();
