import { InputError } from "../errors";

/** Least share of its diagonal that a pivot is taken as where a matrix may be nearly singular. */
export const LEAST_PIVOT = 1e-10;

/**
 * Cholesky factor of a symmetric positive definite matrix.
 *
 *     A = L L'        L: lower triangle
 *
 * @param matrix A, row after row; only its lower triangle is looked at
 * @param size Number of rows
 * @param floor Least share of its diagonal that a pivot is taken as, for a matrix that is nearly singular; 0: none
 * @returns L, row after row, 0 above the diagonal
 * @throws InputError if the matrix is not positive definite and there is no floor
 * @source Golub and Van Loan, Matrix computations, 4th ed. (2013), section 4.2
 * @example cholesky(Float64Array.of(4, 2, 2, 10), 2) // Float64Array.of(2, 0, 1, 3)
 */
export function cholesky(matrix: Float64Array, size: number, floor = 0): Float64Array {
  const factor = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    const row = i * size;
    for (let j = 0; j <= i; j += 1) {
      const other = j * size;
      let left = matrix[row + j] as number;
      for (let k = 0; k < j; k += 1) left -= (factor[row + k] as number) * (factor[other + k] as number);
      if (i === j) left = Math.max(left, floor * (matrix[row + j] as number));
      if (i > j) factor[row + j] = left / (factor[other + j] as number);
      else if (left > 0) factor[row + j] = Math.sqrt(left);
      else throw new InputError("matrix", "be positive definite", left, { place: `row ${i + 1}` });
    }
  }
  return factor;
}

/**
 * Solution of a linear system by its Cholesky factor.
 *
 *     L L' x = b
 *
 * @param factor L, row after row
 * @param right b
 * @returns x
 * @source Golub and Van Loan, Matrix computations, 4th ed. (2013), section 4.2
 * @example solved(Float64Array.of(2, 0, 1, 3), Float64Array.of(8, 22)) // Float64Array.of(1, 2)
 */
export function solved(factor: Float64Array, right: Float64Array): Float64Array {
  const size = right.length;
  const x = lowerSolved(factor, right);
  for (let i = size - 1; i >= 0; i -= 1) {
    const value = (x[i] as number) / (factor[i * size + i] as number);
    x[i] = value;
    for (let k = 0; k < i; k += 1) x[k] = (x[k] as number) - (factor[i * size + k] as number) * value;
  }
  return x;
}

/**
 * Solution of a system by a lower triangle: numbers freed of what they have in common.
 *
 *     L x = b
 *
 * @param factor L, row after row
 * @param right b
 * @returns x
 * @source Golub and Van Loan, Matrix computations, 4th ed. (2013), section 3.1
 * @example lowerSolved(Float64Array.of(2, 0, 1, 3), Float64Array.of(4, 8)) // Float64Array.of(2, 2)
 */
export function lowerSolved(factor: Float64Array, right: Float64Array): Float64Array {
  const size = right.length;
  const x = Float64Array.from(right);
  for (let i = 0; i < size; i += 1) {
    let left = x[i] as number;
    for (let k = 0; k < i; k += 1) left -= (factor[i * size + k] as number) * (x[k] as number);
    x[i] = left / (factor[i * size + i] as number);
  }
  return x;
}

/**
 * Squared misfit of numbers that are normal together.
 *
 *     e' V^-1 e        as many as there are numbers, on average
 *
 * @param factor Cholesky factor of V
 * @param errors e, numbers less their means
 * @returns The sum of the squares
 * @source the chi-squared statistic of the multivariate normal distribution
 * @example misfit(Float64Array.of(1, 0, 0, 1), Float64Array.of(3, 4)) // 25
 */
export function misfit(factor: Float64Array, errors: Float64Array): number {
  return lowerSolved(factor, errors).reduce((sum, value) => sum + value ** 2, 0);
}

/**
 * Log likelihood of numbers that are normal together.
 *
 *     l = -(e' V^-1 e + ln |V|) / 2        without the constant, which all models share
 *
 * @param factor Cholesky factor of V
 * @param errors e, numbers less their means
 * @returns l
 * @source the density of the multivariate normal distribution
 * @example logLikelihood(Float64Array.of(1, 0, 0, 1), Float64Array.of(3, 4)) // -12.5
 */
export function logLikelihood(factor: Float64Array, errors: Float64Array): number {
  const size = errors.length;
  let sum = misfit(factor, errors) / 2;
  for (let i = 0; i < size; i += 1) sum += Math.log(factor[i * size + i] as number);
  return -sum;
}
