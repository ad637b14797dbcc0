import type { CauseName } from "../../../src/core/bed/causes/cause-names";
import type { BedInput } from "../../../src/core/bed/read-bed";
import { normalDeviate, randomNumbers } from "../../support/random";

// Beds made by a sum over heads of a cone, rate 1 - r/throw, or of a ring: 9 × 12 m, heads 3 m apart, 7 × 9 cans.

const [WIDTH, LENGTH, GAP, THROW] = [9, 12, 3, 3.2];
const ACROSS = Array.from({ length: 7 }, (_, i) => 0.4 + (i * 8.2) / 6);
const ALONG = Array.from({ length: 9 }, (_, i) => 0.4 + (i * 11.2) / 8);

interface Made {
  heads: [number, number][];
  output?: (x: number, y: number) => number;
  reach?: (x: number, y: number) => number;
  shift?: [number, number];
  ring?: boolean;
  width?: number;
}

function lattice(inset: number): [number, number][] {
  const line = (size: number) =>
    Array.from({ length: Math.round((size - 2 * inset) / GAP) + 1 }, (_, i) => inset + i * GAP);
  return line(LENGTH).flatMap((y) => line(WIDTH).map((x): [number, number] => [x, y]));
}

const BORDER = lattice(0);
const corner = ([x, y]: [number, number]) => (x === 0 || x === WIDTH) && (y === 0 || y === LENGTH);

/** One clear case of each cause; where it is, in words. */
export const CLEAR: Record<CauseName, Made & { where?: string; scale?: number }> = {
  "nothing wrong found": { heads: BORDER },
  "one weak head": { heads: BORDER, output: (x, y) => (x === 3 && y === 6 ? 0.1 : 1), where: "head at 3.0, 6.0 m" },
  "pressure falls along the line": {
    heads: BORDER,
    output: (_, y) => Math.sqrt(0.35 + 0.65 * (1 - y / LENGTH) ** 2),
    reach: (_, y) => (0.35 + 0.65 * (1 - y / LENGTH) ** 2) ** 0.3,
    where: "towards the bottom",
  },
  wind: { heads: BORDER, shift: [0, -1.5], where: "towards the top" },
  "pressure too low": { heads: BORDER, ring: true, reach: () => 0.85 },
  "heads inside the edge": { heads: lattice(1.5) },
  "one line of heads": { heads: lattice(1.5).filter(([x]) => x === 4.5) },
  "no heads in the corners": { heads: BORDER.filter((head) => !corner(head)) },
  "heads too far apart": { heads: BORDER, reach: () => 0.65, scale: 0.65 },
};

/** The bed of a cause, read with an error of 4 %; `seed` chooses the errors. */
export function clearBed(cause: CauseName, seed = 5): BedInput {
  const { heads, output, reach, shift, ring, scale } = CLEAR[cause];
  const random = randomNumbers(seed);
  const rate = (u: number) => (u >= 1 ? 0 : ring ? (0.1 + u ** 2) * (1 - u ** 6) : 1 - u);
  const grid = ALONG.map((y) =>
    ACROSS.map((x) => {
      const caught = heads.reduce((sum, [hx, hy]) => {
        const far = THROW * (reach?.(hx, hy) ?? 1);
        const r = Math.hypot(x - hx - (shift?.[0] ?? 0), y - hy - (shift?.[1] ?? 0));
        return sum + ((output?.(hx, hy) ?? 1) * rate(r / far)) / far ** 2;
      }, 0);
      return 100 * caught * (1 + 0.04 * normalDeviate(random));
    }),
  );
  return {
    ...{ grid, across: ACROSS, along: ALONG, width: WIDTH, length: LENGTH, spacing: GAP, rowSpacing: GAP },
    ...{ radius: THROW * (scale ?? 1), arrangement: "border", arcs: "full" },
    heads: heads.map(([x, y]) => ({ x, y })),
  };
}
