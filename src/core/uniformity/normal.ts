/**
 * Standard normal distribution function.
 *
 *     p = integral from -infinity to z of exp(-t^2 / 2) / sqrt(2 pi) dt
 *
 * @param z Any number
 * @returns p, from 0 to 1; 0.5 at 0
 * @source Hart (1968), algorithm 5666, as given by West, Better approximations to cumulative normal functions (2005)
 * @example normalCdf(0) // 0.5
 */
export function normalCdf(z: number): number {
  const size = Math.abs(z);
  const tail = size > FARTHEST ? 0 : Math.exp((-size * size) / 2) * tailOverDensity(size);
  return z > 0 ? 1 - tail : tail;
}

const FARTHEST = 37;
const FRACTION_FROM = 7.07106781186547;
const ROOT_TWO_PI = 2.506628274631;

function tailOverDensity(size: number): number {
  if (size < FRACTION_FROM) return polynomial(TAIL_TOP, size) / polynomial(TAIL_BOTTOM, size);
  const fraction = size + 1 / (size + 2 / (size + 3 / (size + 4 / (size + 0.65))));
  return 1 / (fraction * ROOT_TWO_PI);
}

/** Coefficients from the highest power down. */
const TAIL_TOP = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871, 221.213596169931,
  220.206867912376,
];
const TAIL_BOTTOM = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674, 637.333633378831,
  793.826512519948, 440.413735824752,
];

/**
 * Standard normal quantile.
 *
 *     z such that normalCdf(z) = p
 *
 * @param p Probability, more than 0 and less than 1
 * @returns z; 0 at 0.5
 * @source Wichura, Algorithm AS 241, PPND16, Applied Statistics 37 (1988)
 * @example normalQuantile(0.5) // 0
 */
export function normalQuantile(p: number): number {
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * polynomial(CENTRE_TOP, r)) / polynomial(CENTRE_BOTTOM, r);
  }
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const size =
    r <= 5
      ? polynomial(MIDDLE_TOP, r - 1.6) / polynomial(MIDDLE_BOTTOM, r - 1.6)
      : polynomial(FAR_TOP, r - 5) / polynomial(FAR_BOTTOM, r - 5);
  return q < 0 ? -size : size;
}

const CENTRE_TOP = [
  2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457, 13731.693765509461125,
  1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
];
const CENTRE_BOTTOM = [
  5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867, 5394.1960214247511077,
  687.1870074920579083, 42.313330701600911252, 1,
];
const MIDDLE_TOP = [
  7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
  3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
];
const MIDDLE_BOTTOM = [
  1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459,
  0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1,
];
const FAR_TOP = [
  2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
  0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
];
const FAR_BOTTOM = [
  2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
  0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1,
];

function polynomial(coefficients: number[], x: number): number {
  let value = 0;
  for (const coefficient of coefficients) value = value * x + coefficient;
  return value;
}
