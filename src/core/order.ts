import { numbers } from "./readings";

const DIGITS = 2048;
const FEW = 2048;
const LAST_WORD = 0xffffffff;
const ALL_BITS = -1;
/** Makes -0 the same as 0. */
const WITHOUT_SIGN = 0x7fffffff;

const scratch = new Float64Array(1);
const scratchWords = new Uint32Array(scratch.buffer);

/**
 * The k-th smallest of finite numbers that are each 0 or more; k counts from 1. The values stay as they are.
 *
 * A radix selection: the bit pattern of such a double, read as a whole number, is in the same order as the doubles.
 */
export function kthSmallest(values: ArrayLike<number>, k: number): number {
  const catches = numbers(values);
  if (catches.length <= FEW) return ranked(catches, 0, Infinity, catches.length, k);
  const words = new Uint32Array(catches.buffer, catches.byteOffset, 2 * catches.length);
  const counts = new Uint32Array(DIGITS);
  let low = 0;
  let high = Infinity;
  let rank = k;
  for (;;) {
    [low, high] = tightened(catches, low, high);
    if (low === high) return low;
    const upper = wordOf(low, 1) !== wordOf(high, 1);
    const half = upper ? 1 : 0;
    const mask = upper ? WITHOUT_SIGN : ALL_BITS;
    const first = wordOf(low, half);
    const shift = Math.max(0, 32 - Math.clz32(wordOf(high, half) - first) - 11);
    counts.fill(0);
    for (let i = 0; i < catches.length; i += 1) {
      const x = catches[i] as number;
      if (x >= low && x <= high) {
        const digit = (((words[2 * i + half] as number) & mask) - first) >>> shift;
        counts[digit] = (counts[digit] as number) + 1;
      }
    }
    let digit = 0;
    while ((counts[digit] as number) < rank) {
      rank -= counts[digit] as number;
      digit += 1;
    }
    const start = first + digit * 2 ** shift;
    const end = Math.min(start + 2 ** shift - 1, LAST_WORD);
    const base = wordOf(low, 1);
    const nextLow = upper ? double(start, 0) : double(base, start);
    const nextHigh = upper ? double(end, LAST_WORD) : double(base, end);
    low = Math.max(low, nextLow);
    high = Math.min(high, nextHigh);
    if ((counts[digit] as number) <= FEW) return ranked(catches, low, high, counts[digit] as number, rank);
  }
}

/** The mean of the k smallest of numbers that are each 0 or more. */
export function lowestMean(values: ArrayLike<number>, k: number): number {
  const catches = numbers(values);
  const top = kthSmallest(catches, k);
  let short = 0;
  for (let i = 0; i < catches.length; i += 1) short += Math.max(0, top - (catches[i] as number));
  return top - short / k;
}

function tightened(catches: Float64Array, low: number, high: number): [number, number] {
  let least = Infinity;
  let most = 0;
  for (let i = 0; i < catches.length; i += 1) {
    const x = catches[i] as number;
    if (x >= low && x <= high) {
      if (x < least) least = x;
      if (x > most) most = x;
    }
  }
  return [least + 0, most];
}

function ranked(catches: Float64Array, low: number, high: number, count: number, rank: number): number {
  const few = new Float64Array(count);
  let filled = 0;
  for (let i = 0; i < catches.length; i += 1) {
    const x = catches[i] as number;
    if (x >= low && x <= high) {
      few[filled] = x;
      filled += 1;
    }
  }
  return few.sort()[rank - 1] as number;
}

function wordOf(value: number, half: 0 | 1): number {
  scratch[0] = value;
  return scratchWords[half] as number;
}

function double(upper: number, lower: number): number {
  scratchWords[1] = upper;
  scratchWords[0] = lower;
  return scratch[0] as number;
}
