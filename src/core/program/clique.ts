const MOST_STEPS = 50_000;

/**
 * Heaviest set of members that all exclude each other, or the heaviest found within 50,000 steps.
 *
 * @param weights Weight of each member, 0 or more
 * @param exclude Whether two members exclude each other
 * @returns Total weight of the set; 0 where there is no member
 * @source branch and bound, from memory
 * @example heaviestClique([3, 4, 5], (a, b) => a + b !== 3) // 8
 */
export function heaviestClique(weights: readonly number[], exclude: (a: number, b: number) => boolean): number {
  const heaviestFirst = weights.map((_, i) => i).sort((a, b) => (weights[b] as number) - (weights[a] as number));
  let best = 0;
  let steps = 0;
  const grow = (weight: number, left: readonly number[]): void => {
    best = Math.max(best, weight);
    let reach = left.reduce((sum, member) => sum + (weights[member] as number), weight);
    for (const [i, member] of left.entries()) {
      steps += 1;
      if (reach <= best || steps > MOST_STEPS) return;
      grow(
        weight + (weights[member] as number),
        left.slice(i + 1).filter((other) => exclude(member, other)),
      );
      reach -= weights[member] as number;
    }
  };
  grow(0, heaviestFirst);
  return best;
}
