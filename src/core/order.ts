import { numbers } from "./readings";

/** A digit of the radix selection has 15 bits, so three digits cover either half of a double. */
const DIGIT_BITS = 15;
/** From this many on a digit costs less than splitting. */
const FEW = 8192;
/** A digit that leaves at most this share of the numbers is worth copying them out. */
const WORTH_A_COPY = 1 / 16;
/** Makes -0 the same as 0. */
const WITHOUT_SIGN = 0x7fffffff;

/** Where one half of the wanted bit pattern lies: from `first` to `first + span`. */
interface Span {
  first: number;
  span: number;
}

/**
 * The k-th smallest of finite numbers that are each 0 or more; k counts from 1. The values stay as they are.
 *
 * A radix selection: the bit pattern of such a double, read as a whole number, is in the same order as the doubles.
 */
export function kthSmallest(values: ArrayLike<number>, k: number): number {
  let left = numbers(values);
  if (left.length <= FEW) return splitting(left.slice(), k - 1);
  const upper: Span = { first: 0, span: WITHOUT_SIGN };
  const lower: Span = { first: 0, span: 0xffffffff };
  const counts = new Uint32Array(2 ** DIGIT_BITS);
  let rank = k;
  while (upper.span > 0 || lower.span > 0) {
    const half = upper.span > 0 ? upper : lower;
    const shift = Math.max(0, 32 - Math.clz32(half.span) - DIGIT_BITS);
    countDigits(left, upper, lower, shift, counts.fill(0));
    let digit = 0;
    while ((counts[digit] as number) < rank) {
      rank -= counts[digit] as number;
      digit += 1;
    }
    const start = digit * 2 ** shift;
    half.first += start;
    half.span = Math.min(2 ** shift - 1, half.span - start);
    const found = counts[digit] as number;
    if (found <= left.length * WORTH_A_COPY) left = within(left, upper, lower, found);
    if (left.length <= FEW) return splitting(left.slice(), rank - 1);
  }
  return new Float64Array(Uint32Array.of(lower.first, upper.first).buffer)[0] as number;
}

/** The mean of the k smallest of numbers that are each 0 or more; of a part of the last one where k is not whole. */
export function lowestMean(values: ArrayLike<number>, k: number): number {
  const catches = numbers(values);
  const top = kthSmallest(catches, Math.ceil(k));
  let twiceShort = 0;
  for (let i = 0; i < catches.length; i += 1) {
    const gap = top - (catches[i] as number);
    twiceShort += gap + Math.abs(gap);
  }
  return top - twiceShort / 2 / k;
}

function countDigits(left: Float64Array, upper: Span, lower: Span, shift: number, counts: Uint32Array): void {
  const words = wordsOf(left);
  const fromUpper = upper.span > 0;
  const { first, span } = upper;
  for (let i = 0; i < words.length; i += 2) {
    const above = (((words[i + 1] as number) & WITHOUT_SIGN) - first) >>> 0;
    if (above > span) continue;
    const place = fromUpper ? above : ((words[i] as number) - lower.first) >>> 0;
    if (!fromUpper && place > lower.span) continue;
    const digit = place >>> shift;
    counts[digit] = (counts[digit] as number) + 1;
  }
}

function within(left: Float64Array, upper: Span, lower: Span, count: number): Float64Array {
  const words = wordsOf(left);
  const { first, span } = upper;
  const kept = new Float64Array(count);
  let filled = 0;
  for (let i = 0; i < left.length; i += 1) {
    const above = (((words[2 * i + 1] as number) & WITHOUT_SIGN) - first) >>> 0;
    if (above > span || ((words[2 * i] as number) - lower.first) >>> 0 > lower.span) continue;
    kept[filled] = left[i] as number;
    filled += 1;
  }
  return kept;
}

function wordsOf(numbers: Float64Array): Uint32Array {
  return new Uint32Array(numbers.buffer, numbers.byteOffset, 2 * numbers.length);
}

/** The number at an index in rising order, by splitting what is left of the list again and again (Hoare 1961); it reorders them. */
function splitting(list: Float64Array, index: number): number {
  let low = 0;
  let high = list.length - 1;
  while (low < high) {
    const middle = middleOf(list[low] as number, list[(low + high) >> 1] as number, list[high] as number);
    let i = low;
    let j = high;
    while (i <= j) {
      while ((list[i] as number) < middle) i += 1;
      while ((list[j] as number) > middle) j -= 1;
      if (i > j) break;
      const swapped = list[i] as number;
      list[i] = list[j] as number;
      list[j] = swapped;
      i += 1;
      j -= 1;
    }
    if (index > j && index < i) break;
    if (index <= j) high = j;
    else low = i;
  }
  return list[index] as number;
}

function middleOf(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}
