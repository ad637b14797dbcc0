import { cholesky, LEAST_PIVOT, solved } from "./cholesky";

/** Sum of products. */
export function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < one.length; i += 1) sum += (one[i] as number) * (other[i] as number);
  return sum;
}

/** Solves G x = c on a subset of the unknowns by Cholesky with a floor on the pivots. */
function solveOn(gram: Float64Array, target: Float64Array, size: number, free: number[]): number[] {
  const m = free.length;
  const small = new Float64Array(m * m);
  for (let a = 0; a < m; a += 1) {
    for (let b = 0; b < m; b += 1) small[a * m + b] = gram[free[a]! * size + free[b]!] as number;
  }
  const right = Float64Array.from(free, (at) => target[at] as number);
  return Array.from(solved(cholesky(small, m, LEAST_PIVOT), right));
}

/** Amounts of 0 or more, and the sum of squares that they leave. */
export interface Amounts {
  amounts: Float64Array;
  rest: number;
}

/**
 * Non-negative least squares on normal equations.
 *
 *     least |y - A x|², x >= 0        given G = A'A, c = A'y and y'y
 *
 * @param gram G, row after row, `size` unknowns
 * @param target c
 * @param total y'y
 * @returns Amounts x and the rest |y - A x|²
 * @source Lawson and Hanson (1974), ch. 23
 * @example nonNegative(Float64Array.of(1, 0, 0, 1), Float64Array.of(2, -1), 5).amounts // Float64Array.of(2, 0)
 */
export function nonNegative(gram: Float64Array, target: Float64Array, total: number): Amounts {
  const size = target.length;
  const amounts = new Float64Array(size);
  const free: number[] = [];
  for (let turn = 0; turn < 3 * size; turn += 1) {
    let best = -1;
    let steepest = 1e-9 * Math.max(1, total);
    for (let s = 0; s < size; s += 1) {
      if (free.includes(s)) continue;
      let slope = target[s] as number;
      for (let t = 0; t < size; t += 1) slope -= (gram[s * size + t] as number) * (amounts[t] as number);
      const scale = Math.sqrt(gram[s * size + s] as number);
      if (scale > 0 && slope / scale > steepest) {
        steepest = slope / scale;
        best = s;
      }
    }
    if (best < 0) break;
    free.push(best);
    let x = solveOn(gram, target, size, free);
    while (x.some((value) => value <= 0)) {
      let step = 1;
      free.forEach((s, i) => {
        const now = amounts[s] as number;
        if (x[i]! <= 0) step = Math.min(step, now / (now - x[i]! || 1));
      });
      free.forEach((s, i) => {
        amounts[s] = (amounts[s] as number) + step * (x[i]! - (amounts[s] as number));
      });
      const kept = free.filter((s, i) => x[i]! > 0 || (amounts[s] as number) > 1e-12);
      const dropped = kept.length < free.length ? kept : free.slice(0, -1);
      for (const s of free) if (!dropped.includes(s)) amounts[s] = 0;
      free.splice(0, free.length, ...dropped);
      if (free.length === 0) break;
      x = solveOn(gram, target, size, free);
    }
    free.forEach((s, i) => {
      amounts[s] = x[i]!;
    });
  }
  let rest = total;
  for (let s = 0; s < size; s += 1) {
    const a = amounts[s] as number;
    if (a === 0) continue;
    rest -= 2 * a * (target[s] as number);
    for (let t = 0; t < size; t += 1) rest += a * (gram[s * size + t] as number) * (amounts[t] as number);
  }
  return { amounts, rest: Math.max(0, rest) };
}
