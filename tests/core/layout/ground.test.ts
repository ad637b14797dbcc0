import { afterAll, describe, expect, it } from "vitest";
import { canPlaces } from "../../../src/core/layout/cans/places";
import { canPlan } from "../../../src/core/layout/cans/plan";
import { readAt } from "../../../src/core/layout/cans/read-at";
import { coverage } from "../../../src/core/layout/coverage";
import { namedProfile } from "../../../src/core/layout/profile";
import { canAreas } from "../../../src/core/pattern/can-areas";
import { mean } from "../../../src/core/readings";
import { multiplier } from "../../../src/core/uniformity/multiplier";
import { weightedMean } from "../../../src/core/uniformity/weighted";

const WANTED = 0.9;
const BED = { width: 12, length: 15 };

interface Miss {
  bed: string;
  cans: number;
  /** Share of the ground that gets the depth when the run time is set by 90 %, in points from that. */
  equalShare: number;
  areaShare: number;
  /** Mean of the cans against that of the ground [%]. */
  equalMean: number;
  areaMean: number;
}

/** How far cans by the can plan are from the ground of a simulated bed of overlapping heads, no wind. */
function missOf(arrangement: "border" | "inset", spacing: number, shape: "triangular" | "ring"): Miss {
  const profile = namedProfile(shape, 1.25 * spacing, 300);
  const bed = coverage({ ...BED, spacing, rowSpacing: spacing, arrangement, arcs: "full", profile, cell: 0.25 });
  const plan = canPlan({ ...BED, headSpacing: spacing, headRowSpacing: spacing });
  const places = canPlaces(plan);
  const caught = readAt(bed, places);
  const strips = canAreas(plan.across, plan.along, BED.width, BED.length);
  const areas = places.map(({ row, column }) => strips[row]![column]!);
  const ground = bed.rates.values;
  const points = (times: number, m: number) => {
    const reached = ground.filter((rate) => rate * times >= m * (1 - 1e-9)).length / ground.length;
    return 100 * (reached - WANTED);
  };
  const [equal, byArea] = [mean(caught, 1), weightedMean(caught, areas)];
  const off = (m: number) => 100 * (m / mean(ground, 1) - 1);
  return {
    bed: `${arrangement}, ${spacing} m, ${shape}`,
    cans: plan.count,
    equalShare: points(multiplier(caught, WANTED), equal),
    areaShare: points(multiplier(caught, WANTED, areas), byArea),
    equalMean: off(equal),
    areaMean: off(byArea),
  };
}

const misses = (["inset", "border"] as const).flatMap((arrangement) =>
  [3, 4, 5].flatMap((spacing) => (["triangular", "ring"] as const).map((shape) => missOf(arrangement, spacing, shape))),
);
const size = (of: keyof Miss) => misses.reduce((sum, miss) => sum + Math.abs(miss[of] as number), 0) / misses.length;

afterAll(() => console.table(misses));

describe("cans by the can plan on simulated beds of overlapping heads", () => {
  it("find the share of the ground within 7 points by area, and nearer than with equal weight", () => {
    for (const { bed, areaShare } of misses) expect(Math.abs(areaShare), bed).toBeLessThan(7);
    expect(size("areaShare")).toBeLessThan(0.6 * size("equalShare"));
  });

  it("find the mean of the ground within 5.5 % by area, and nearer than with equal weight on every bed", () => {
    for (const { bed, areaMean, equalMean } of misses) {
      expect(Math.abs(areaMean), bed).toBeLessThan(5.5);
      expect(Math.abs(areaMean), bed).toBeLessThan(Math.abs(equalMean));
    }
  });
});
