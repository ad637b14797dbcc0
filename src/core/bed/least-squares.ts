/** Least share of a diagonal that a pivot may be. */
const LEAST_PIVOT = 1e-10;

/** Lower triangle L of a symmetric positive matrix V = L L', row after row. */
export function cholesky(matrix: Float64Array, n: number): Float64Array {
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = matrix[i * n + j] as number;
      for (let k = 0; k < j; k += 1) sum -= (lower[i * n + k] as number) * (lower[j * n + k] as number);
      if (i === j) lower[i * n + i] = Math.sqrt(Math.max(sum, LEAST_PIVOT * (matrix[i * n + i] as number)));
      else lower[i * n + j] = sum / (lower[j * n + j] as number);
    }
  }
  return lower;
}

/** A column without the correlations: L⁻¹ of it. */
export function whitened(lower: Float64Array, column: Float64Array): Float64Array {
  const n = column.length;
  const out = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    let sum = column[i] as number;
    const row = i * n;
    for (let k = 0; k < i; k += 1) sum -= (lower[row + k] as number) * (out[k] as number);
    out[i] = sum / (lower[row + i] as number);
  }
  return out;
}

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
  const lower = cholesky(small, m);
  const x = Array.from(
    whitened(
      lower,
      Float64Array.from(free, (at) => target[at] as number),
    ),
  );
  for (let i = m - 1; i >= 0; i -= 1) {
    let sum = x[i]!;
    for (let k = i + 1; k < m; k += 1) sum -= (lower[k * m + i] as number) * x[k]!;
    x[i] = sum / (lower[i * m + i] as number);
  }
  return x;
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
