import { createGenerator } from "../../src/core/uniformity/generator";

const uniform = (next: () => number) => (next() + 0.5) / 2 ** 32;

/** A standard normal deviate by Box and Muller (1958). */
export function normalDeviate(next: () => number): number {
  return Math.sqrt(-2 * Math.log(uniform(next))) * Math.cos(2 * Math.PI * uniform(next));
}

/** Invented readings for the benches: normal about 50 mL, CV 20 %, none below 1 mL, as Excel hands a range over. */
export function inventedRange(rows: number, columns: number, seed: number): number[][] {
  const next = createGenerator(seed);
  return Array.from({ length: rows }, () =>
    Array.from({ length: columns }, () => Math.max(1, 50 + 10 * normalDeviate(next))),
  );
}
