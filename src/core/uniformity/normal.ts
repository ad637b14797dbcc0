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
  0.0352624965998911, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871, 221.213596169931,
  220.206867912376,
];
const TAIL_BOTTOM = [
  0.0883883476483184, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674, 637.333633378831,
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
  2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946, 1971.5909503065513,
  133.14166789178438, 3.3871328727963665,
];
const CENTRE_BOTTOM = [
  5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751, 687.1870074920579,
  42.31333070160091, 1,
];
const MIDDLE_TOP = [
  0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
  5.769497221460691, 4.630337846156546, 1.4234371107496835,
];
const MIDDLE_BOTTOM = [
  1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
  1.6763848301838038, 2.053191626637759, 1,
];
const FAR_TOP = [
  2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124, 0.29656057182850487,
  1.7848265399172913, 5.463784911164114, 6.657904643501103,
];
const FAR_BOTTOM = [
  2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133, 0.014875361290850615,
  0.1369298809227358, 0.599832206555888, 1,
];

function polynomial(coefficients: number[], x: number): number {
  let value = 0;
  for (const coefficient of coefficients) value = value * x + coefficient;
  return value;
}
