/** A value that someone else printed, and how ours compares with it. */
export interface Expectation {
  /** As printed: the default tolerance is half a unit of its last digit. */
  expected: string;
  /** A wider tolerance; `why` says the reason. */
  tolerance?: number;
  why?: string;
}

export interface Comparison {
  agrees: boolean;
  /** How far ours is from the printed value, in tolerances. */
  misses: number;
  message: string;
}

/** Rounding of binary fractions that must not decide at the very edge, as a share of the tolerance. */
const EDGE = 1e-9;

/** Half a unit of the last digit of a number as printed, such as 0.005 for "90.67". */
export function halfLastDigit(printed: string): number {
  const parts = /^-?\d*(?:\.(\d+))?(?:e([+-]?\d+))?$/.exec(printed);
  if (!parts || !/\d/.test(printed)) throw new Error(`"${printed}" is not a printed number`);
  return 0.5 * 10 ** (Number(parts[2] ?? 0) - (parts[1]?.length ?? 0));
}

/** Compares a value of ours with a printed one. */
export function compare(ours: unknown, { expected, tolerance, why }: Expectation): Comparison {
  const allowed = tolerance ?? halfLastDigit(expected);
  if (!(allowed > 0 && allowed < Infinity)) throw new Error(`the tolerance of "${expected}" must be more than 0`);
  if (allowed > halfLastDigit(expected) && !why) throw new Error(`the wider tolerance of "${expected}" needs a why`);
  if (typeof ours !== "number" || !Number.isFinite(ours)) {
    return { agrees: false, misses: Infinity, message: `expected ${expected}, got ${String(ours)}` };
  }
  const misses = Math.abs(ours - Number(expected)) / allowed;
  return {
    agrees: misses <= 1 + EDGE,
    misses,
    message: `expected ${expected} to ${allowed}, got ${ours}`,
  };
}
