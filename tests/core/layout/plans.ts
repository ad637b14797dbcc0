import type { Plan } from "../../../src/core/layout/coverage";
import type { Arcs, Arrangement } from "../../../src/core/layout/heads";
import { measuredProfile, namedProfile, type Profile } from "../../../src/core/layout/profile";
import fc from "../../support/properties";

/** A bed of 12 x 30 m with heads of 400 L/h and 4 m throw every 4 m on its border, cut into 0.25 m. */
export function planOf(changes: Partial<Plan> = {}): Plan {
  return {
    width: 12,
    length: 30,
    spacing: 4,
    rowSpacing: 4,
    arrangement: "border",
    arcs: "full",
    profile: namedProfile("triangular", 4, 400),
    cell: 0.25,
    ...changes,
  };
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const stands = fc.constantFrom<{ arrangement: Arrangement; arcs: Arcs }>(
  { arrangement: "border", arcs: "full" },
  { arrangement: "border", arcs: "matched" },
  { arrangement: "border", arcs: "unmatched" },
  { arrangement: "inset", arcs: "full" },
  { arrangement: "centre", arcs: "full" },
  { arrangement: "staggered", arcs: "full" },
  { arrangement: "staggered", arcs: "matched" },
  { arrangement: "staggered", arcs: "unmatched" },
);

/** Profiles that fall to 0 at the throw, so that rounding cannot move a step over a cell's centre. */
export function smoothProfile(radius: number, flow: number): fc.Arbitrary<Profile> {
  const points = fc
    .array(fc.tuple(between(0.1, 1), fc.oneof(fc.constant(0), between(0.01, 5))), { minLength: 1, maxLength: 6 })
    .filter((steps) => steps.length === 1 || (steps.at(-1)?.[1] as number) > 0)
    .map((steps) => {
      const distances = [0];
      for (const [step] of steps) distances.push((distances.at(-1) as number) + step);
      const last = distances.at(-1) as number;
      return measuredProfile(
        distances.map((distance) => (distance / last) * radius),
        [1, ...steps.slice(1).map(([, rate]) => rate), 0],
        flow,
      );
    });
  return fc.oneof(
    fc.constant(namedProfile("triangular", radius, flow)),
    fc.constant(namedProfile("ring", radius, flow)),
    points,
  );
}

/** Layouts of the trade: beds up to 15 x 25 m, throws of 2 to 6 m. */
export const anyPlan: fc.Arbitrary<Plan> = fc
  .record({
    width: between(1, 15),
    length: between(1, 25),
    spacing: between(1.5, 8),
    rowSpacing: between(1.5, 8),
    stand: stands,
    radius: between(2, 6),
    flow: between(20, 2000),
    cell: between(0.2, 1),
  })
  .chain(({ stand, radius, flow, ...rest }) =>
    smoothProfile(radius, flow).map((profile) => ({ ...rest, ...stand, profile })),
  );
