import { type Origin, originOf, overlapColumns } from "./overlap-columns";
import type { ReadBed } from "./read-bed";
import { type Shape, shapeAt } from "./shapes";

/** Relative error of one reading, and the share of the mean under which it no longer shrinks. Common practice, no source. */
const READING_ERROR = 0.07;
const LEAST_READ = 0.35;
/** What sound beds differ by, as standard deviations. Common practice, no source. */
const OUTPUT = 0.05;
const THROW = 0.04;
const ALL_THROWS = 0.02;
const LIGHT_WIND = 0.1;
const PROFILE = 0.1;
const MODEL = 0.03;
/** Place of a can [m]. */
const CAN_PLACE_M = 0.03;
/** Hats that a profile may be raised by, over the throw. */
const HATS = 6;
const LOG_STEP = 0.03;
const SHIFT = 0.05;

/** A fitted overlap without a fault: the amount of each shape and one throw [m]. */
export interface PlainFit {
  shapes: readonly Shape[];
  amounts: Float64Array;
  throwM: number;
}

/** Variance of reading of each can, in parts of the mean, squared. */
export function readingVariances({ cans, mean }: ReadBed): Float64Array {
  return Float64Array.from(cans, ({ caught }) => (READING_ERROR * Math.max(caught / mean, LEAST_READ)) ** 2);
}

function mixed(shapes: readonly Shape[], amounts: Float64Array): Shape {
  return shapes[0]!.map((_, step) => shapes.reduce((sum, shape, s) => sum + amounts[s]! * shape[step]!, 0));
}

/** What head by head comes to each can, for a throw and a shift of the whole throw by wind. */
function byHead(bed: ReadBed, shape: Shape, throwM: number): Float64Array[] {
  return bed.heads.map(
    (head) => overlapColumns([head], bed.cans, { outputs: [1], throws: [throwM] }, [shape])[0] as Float64Array,
  );
}

function difference(one: Float64Array, other: Float64Array, scale: number): Float64Array {
  return one.map((value, i) => scale * (value - (other[i] as number)));
}

function total(columns: readonly Float64Array[], n: number): Float64Array {
  const sum = new Float64Array(n);
  for (const column of columns) for (let i = 0; i < n; i += 1) sum[i] = (sum[i] as number) + (column[i] as number);
  return sum;
}

/**
 * Covariance of the catches of a sound bed about its fitted overlap, in parts of the mean.
 *
 *     V = diag(d²) + 0.05² Σ bb' + 0.04² Σ gg' + 0.02² (Σg)(Σg)' + 0.10² Σ hh' + 0.10² Σ ff' + 0.03² diag(m²) + diag(s²)
 *
 * d: reading; b: a head's share, g its change by ln throw; h: change by wind in parts of the throw; f: by raising the profile
 * in one of six hats; m: the overlap; s: its change within 0.03 m, the place of a can
 */
export function covariance(bed: ReadBed, { shapes, amounts, throwM }: PlainFit): Float64Array {
  const n = bed.cans.length;
  const shape = mixed(shapes, amounts);
  const heads = byHead(bed, shape, throwM);
  const shorter = byHead(bed, shape, throwM * (1 - LOG_STEP));
  const grow = byHead(bed, shape, throwM * (1 + LOG_STEP)).map((column, k) =>
    difference(column, shorter[k]!, 1 / (2 * LOG_STEP)),
  );
  const states = { outputs: bed.heads.map(() => 1), throws: bed.heads.map(() => throwM) };
  const blown = (x: number, y: number) =>
    overlapColumns(bed.heads, bed.cans, { ...states, wind: { x, y, drift: 0 } }, [shape])[0] as Float64Array;
  const windX = difference(blown(SHIFT, 0), blown(-SHIFT, 0), 1 / (2 * SHIFT));
  const windY = difference(blown(0, SHIFT), blown(0, -SHIFT), 1 / (2 * SHIFT));
  const m = total(heads, n);
  const matrix = new Float64Array(n * n);
  readingVariances(bed).forEach((variance, i) => {
    const moved = (CAN_PLACE_M / throwM) ** 2 * (windX[i]! ** 2 + windY[i]! ** 2);
    matrix[i * n + i] = variance + (MODEL * m[i]!) ** 2 + moved;
  });
  const add = (column: Float64Array, sd: number) => {
    for (let i = 0; i < n; i += 1) {
      const a = sd * sd * (column[i] as number);
      if (a === 0) continue;
      for (let j = 0; j <= i; j += 1) matrix[i * n + j] = (matrix[i * n + j] as number) + a * (column[j] as number);
    }
  };
  for (const column of heads) add(column, OUTPUT);
  for (const column of grow) add(column, THROW);
  add(total(grow, n), ALL_THROWS);
  add(windX, LIGHT_WIND);
  add(windY, LIGHT_WIND);
  for (const column of raised(bed, shape, throwM)) add(column, PROFILE);
  for (let i = 0; i < n; i += 1) for (let j = 0; j < i; j += 1) matrix[j * n + i] = matrix[i * n + j] as number;
  return matrix;
}

/** The change of the overlap by raising the profile by its own height in each hat over the throw. */
function raised(bed: ReadBed, shape: Shape, throwM: number): Float64Array[] {
  const columns = Array.from({ length: HATS }, () => new Float64Array(bed.cans.length));
  const origin: Origin = { u: 0, share: 0 };
  for (const head of bed.heads) {
    bed.cans.forEach((can, i) => {
      originOf(head, throwM, can, undefined, origin);
      if (origin.share === 0) return;
      const place = origin.u * (HATS - 1);
      const hat = Math.floor(place);
      const rate = origin.share * shapeAt(shape, origin.u);
      columns[hat]![i] = columns[hat]![i]! + rate * (1 - (place - hat));
      if (hat + 1 < HATS) columns[hat + 1]![i] = columns[hat + 1]![i]! + rate * (place - hat);
    });
  }
  return columns;
}
