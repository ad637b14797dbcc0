import { normalDeviate, randomNumbers } from "../support/random";

/** Invented readings for the benches: normal about 50 mL, CV 20 %, none below 1 mL, as Excel hands a range over. */
export function inventedRange(rows: number, columns: number, seed: number): number[][] {
  const random = randomNumbers(seed);
  return Array.from({ length: rows }, () =>
    Array.from({ length: columns }, () => Math.max(1, 50 + 10 * normalDeviate(random))),
  );
}
