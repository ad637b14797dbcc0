/** Repeatable numbers between 0 and 1, neither included: the "minimal standard" of Park and Miller (1988, 1993). */
export function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** A standard normal deviate by Box and Muller (1958). */
export function normalDeviate(random: () => number): number {
  return Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
}
