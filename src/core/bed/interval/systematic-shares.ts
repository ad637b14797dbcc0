/**
 * How many of a number of draws each choice gets.
 *
 *     systematic: as near to count * w / sum(w) as whole numbers come whose running sums are off by half at most
 *
 * @param logWeights Logarithms of the weights w
 * @param count Draws
 * @returns Draws of each choice, together `count`
 * @source Kitagawa, Journal of Computational and Graphical Statistics 5 (1996), systematic resampling
 * @example systematicShares([Math.log(3), Math.log(1)], 4) // [3, 1]
 */
export function systematicShares(logWeights: readonly number[], count: number): number[] {
  const top = logWeights.reduce((most, weight) => Math.max(most, weight), -Infinity);
  const weights = logWeights.map((weight) => Math.exp(weight - top));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  let sum = 0;
  let given = 0;
  return weights.map((weight) => {
    sum += weight;
    const upTo = Math.min(count, Math.round((sum / total) * count));
    const times = upTo - given;
    given = upTo;
    return times;
  });
}
