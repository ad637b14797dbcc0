import { namedProfile, rateAt } from "../../src/core/layout/profile";
import { normalDeviate, randomNumbers } from "./random";

/** The bed of the example audit: invented, 12 x 16 m, 12 heads at 4 m, 2 m inside the edge. */
export const EXAMPLE_BED = {
  width: 12,
  length: 16,
  spacing: 4,
  /** Places of the cans [m]. */
  across: [0.5, 3.25, 6, 8.75, 11.5],
  along: [0.5, 3.5, 6.5, 9.5, 12.5, 15.5],
  /** Throw [m] and flow [L/h] of a head at 200 kPa, most water at 0.7 of the throw. */
  radius: 5,
  flow: 200,
  /** Pressure at each row of heads, from the top [kPa]; flow goes with its square root. */
  pressures: [213, 204, 196, 188],
  /** Mouth of the cans [mm] and minutes of the test. */
  mouth: 100,
  minutes: 20,
  /** Relative error of reading a can, one standard deviation; readings are whole millilitres. */
  error: 0.03,
  seed: 7,
};

/** What the cans of the example bed are read as [mL], row after row. */
export function exampleReadings(): number[][] {
  const { width, spacing, across, along, radius, flow, pressures, mouth, minutes, error, seed } = EXAMPLE_BED;
  const heads = pressures.flatMap((pressure, row) =>
    Array.from({ length: width / spacing }, (_, column) => ({
      x: (column + 0.5) * spacing,
      y: (row + 0.5) * spacing,
      profile: namedProfile("ring", radius, flow * Math.sqrt(pressure / 200)),
    })),
  );
  const random = randomNumbers(seed);
  return along.map((y) =>
    across.map((x) => {
      const rate = heads.reduce((sum, head) => sum + rateAt(head.profile, Math.hypot(x - head.x, y - head.y)), 0);
      const depth = ((rate * minutes) / 60) * (1 + error * normalDeviate(random));
      return Math.round((depth * Math.PI * mouth ** 2) / 4 / 1000);
    }),
  );
}
