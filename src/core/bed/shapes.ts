/** Steps of a table of rates from the head to the end of its throw. */
const STEPS = 160;

/** A head's rate against distance/throw in equal steps, for a throw of 1 m and 1 L/h: its volume is 1. */
export type Shape = Float64Array;

/** Rate falling to 0 at the throw without a corner: 1 up to about `from`, half of it at `from` + 0.1. */
const edge = (u: number, from: number) => (u >= 1 ? 0 : 1 / (1 + Math.exp((u - from - 0.1) / 0.035)));
const bell = (u: number, centre: number, width: number) => Math.exp(-(((u - centre) / width) ** 2));

const SOUND: ((u: number) => number)[] = [(u) => (1 - u) ** 2, (u) => 1 - u, (u) => 1 - u * u, (u) => edge(u, 0.8)];
const HOLLOW: ((u: number) => number)[] = [
  (u) => (0.5 + 0.5 * Math.min(1, u / 0.6)) * edge(u, 0.8),
  (u) => (0.15 + bell(u, 0.6, 0.25)) * edge(u, 0.85),
  (u) => (0.1 + bell(u, 0.72, 0.16)) * edge(u, 0.85),
  (u) => (0.05 + bell(u, 0.8, 0.1)) * edge(u, 0.88),
];

/** The table of a rate against distance/throw, scaled to a volume of 1. */
export function shapeOf(rate: (u: number) => number): Shape {
  const table = Float64Array.from({ length: STEPS + 2 }, (_, i) => Math.max(0, i > STEPS ? 0 : rate(i / STEPS)));
  let volume = 0;
  for (let i = 0; i < STEPS; i += 1) {
    const [near, far] = [table[i] as number, table[i + 1] as number];
    volume += (near * i + far * (i + 1)) * (Math.PI / STEPS / STEPS);
  }
  return table.map((value) => value / volume);
}

/** Peaked, slope, dome and table: heads at their pressure. */
export const SOUND_SHAPES: readonly Shape[] = SOUND.map(shapeOf);
/** From lightly hollow to a narrow ring: heads under their pressure. */
export const HOLLOW_SHAPES: readonly Shape[] = HOLLOW.map(shapeOf);
/** All eight. */
export const ALL_SHAPES: readonly Shape[] = [...SOUND_SHAPES, ...HOLLOW_SHAPES];

/** The rate of a shape at a part of the throw, straight lines between the steps; 0 beyond it. */
export function shapeAt(shape: Shape, u: number): number {
  if (!(u < 1)) return 0;
  const place = u * STEPS;
  const step = Math.floor(place);
  const near = shape[step] as number;
  return near + ((shape[step + 1] as number) - near) * (place - step);
}
