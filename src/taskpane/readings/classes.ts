/** One class of the histogram: catches from `from` up to, but not at, `to`; the last class holds its upper end too. */
export interface CatchClass {
  from: number;
  to: number;
  cans: number;
}

const MOST_CLASSES = 8;
/** Catches that differ by less than this share of the highest make one class. */
const ALIKE = 1e-6;

/** The narrowest width of 1, 2 or 5 times a power of ten that needs no more than eight classes. */
function classWidth(low: number, high: number): number {
  const power = 10 ** Math.floor(Math.log10((high - low) / MOST_CLASSES));
  const needed = (width: number) => Math.floor(high / width + 1e-9) - Math.floor(low / width + 1e-9) + 1;
  return [1, 2, 5, 10, 20].map((step) => step * power).find((width) => needed(width) <= MOST_CLASSES)!;
}

export function catchClasses(catches: ArrayLike<number>): CatchClass[] {
  let low = Infinity;
  let high = -Infinity;
  for (let index = 0; index < catches.length; index += 1) {
    low = Math.min(low, catches[index]!);
    high = Math.max(high, catches[index]!);
  }
  if (!(high - low > high * ALIKE)) return catches.length > 0 ? [{ from: low, to: low, cans: catches.length }] : [];
  const width = classWidth(low, high);
  const first = Math.floor(low / width + 1e-9);
  const last = Math.floor(high / width + 1e-9);
  const rounded = (step: number) => Number((step * width).toPrecision(12));
  const classes = Array.from({ length: last - first + 1 }, (_, index) => ({
    from: rounded(first + index),
    to: rounded(first + index + 1),
    cans: 0,
  }));
  for (let index = 0; index < catches.length; index += 1) {
    classes[Math.floor(catches[index]! / width + 1e-9) - first]!.cans += 1;
  }
  return classes;
}
