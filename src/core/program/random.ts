/** Repeatable whole numbers from 0 to below a size: the "minimal standard" generator of Park and Miller (1988, 1993). */
export function randomBelow(seed: number): (size: number) => number {
  let state = seed;
  return (size) => {
    state = (state * 48_271) % 2_147_483_647;
    return Math.floor((state / 2_147_483_647) * size);
  };
}
