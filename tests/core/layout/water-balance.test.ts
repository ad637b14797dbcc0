import { describe, it } from "vitest";
import { coverage } from "../../../src/core/layout/coverage";
import { namedProfile, type ShapeName } from "../../../src/core/layout/profile";
import fc from "../../support/properties";
import { planOf } from "./plans";

const STANDS = [
  { arrangement: "border", arcs: "full" },
  { arrangement: "border", arcs: "matched" },
  { arrangement: "border", arcs: "unmatched" },
  { arrangement: "inset", arcs: "full" },
  { arrangement: "centre", arcs: "full" },
] as const;

/** The throw of each case, in beds whose sides are whole cells, so that a cell is exactly a part of the throw. */
const RADIUS = 4;
const between = (min: number, max: number) => fc.integer({ min, max });

function miss(
  shape: ShapeName,
  parts: number,
  stand: (typeof STANDS)[number],
  bed: [number, number],
  gaps: [number, number],
): number {
  const cell = RADIUS / parts;
  const [width, length] = [bed[0] * (RADIUS / 10), bed[1] * (RADIUS / 10)];
  const profile = namedProfile(shape, RADIUS, 400);
  const plan = planOf({
    ...stand,
    width,
    length,
    spacing: width / gaps[0],
    rowSpacing: length / gaps[1],
    profile,
    cell,
  });
  const { heads, inside, outside } = coverage(plan);
  return Math.abs((inside + outside) / heads.reduce((sum, head) => sum + head.flow, 0) - 1);
}

describe.each(STANDS)("the water of $arrangement heads with $arcs arcs", (stand) => {
  it.each([
    ["triangular", 10, 0.01],
    ["triangular", 40, 0.001],
    ["ring", 10, 0.01],
    ["ring", 40, 0.001],
    ["uniform", 10, 0.02],
    ["uniform", 40, 0.005],
  ] as const)("lands in or beside the bed: %s, cell a %i-th of the throw, to %d", (shape, parts, most) => {
    const sizes = fc.tuple(between(5, 60), between(5, 60));
    const gaps = fc.tuple(between(1, 4), between(1, 4));
    fc.assert(
      fc.property(sizes, gaps, (bed, count) => miss(shape, parts, stand, bed, count) <= most),
      { numRuns: 60 },
    );
  });
});
