import type { BedPlace } from "../bed-heads";
import type { ReadBed } from "../read-bed";
import { bedPlaces } from "./bed-places";
import type { DrawnBed } from "./drawn-beds";

const MORE_CANS = 4;
/** A new can is not put nearer to one that is there [m]. */
const APART_M = 0.4;
const DU = 2;

/** What a further measurement would do to the interval of DU. */
export interface NextCans {
  /** Where four more cans narrow it most [m]. */
  places: BedPlace[];
  /** Width of the interval with them, and with three pairs of twin cans, over that of now. */
  withCans: number;
  withTwins: number;
}

/** Covariances of DU, first, and of rates at cells over drawn beds. */
function covariances(drawn: readonly DrawnBed[], cells: readonly number[]): Float64Array {
  const size = cells.length + 1;
  const rows = drawn.map(({ indices, cells: rates }) => [indices[DU], ...cells.map((cell) => rates[cell]!)]);
  const means = Array.from({ length: size }, (_, i) => rows.reduce((sum, row) => sum + row[i]!, 0) / rows.length);
  const matrix = new Float64Array(size * size);
  for (const row of rows) {
    for (let i = 0; i < size; i += 1) {
      const a = (row[i]! - means[i]!) / rows.length;
      for (let j = 0; j < size; j += 1) matrix[i * size + j]! += a * (row[j]! - means[j]!);
    }
  }
  return matrix;
}

/** Takes in a reading of one of the numbers: the covariances of the others given it. */
function given(matrix: Float64Array, size: number, read: number, noise: number): void {
  const column = Float64Array.from({ length: size }, (_, i) => matrix[i * size + read]!);
  const variance = column[read]! + noise;
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < size; j += 1) matrix[i * size + j]! -= (column[i]! * column[j]!) / variance;
  }
}

const meanSquare = (drawn: readonly DrawnBed[]) =>
  drawn.reduce((sum, { reading }) => sum + reading ** 2, 0) / drawn.length;

/** Share of the variance of DU that is left once the error of reading is known. */
function withinReadings(drawn: readonly DrawnBed[]): number {
  const variance = (some: readonly DrawnBed[]) => {
    const mean = some.reduce((sum, { indices }) => sum + indices[DU], 0) / some.length;
    return some.reduce((sum, { indices }) => sum + (indices[DU] - mean) ** 2, 0);
  };
  const groups = [...new Set(drawn.map(({ reading }) => reading))];
  const within = groups.reduce((sum, one) => sum + variance(drawn.filter(({ reading }) => reading === one)), 0);
  const all = variance(drawn);
  return all > 0 ? within / all : 1;
}

/**
 * Where four more cans would narrow the interval of DU most, and by how much.
 *
 *     one can after the other at the one of every third cell whose reading leaves the least variance of DU: v - c²/(w + e²)
 *
 * v: variance of DU; c: its covariance with the rate at the cell; w: variance of that rate; e: error of reading. The places are
 * chosen on every second drawn bed, the width is that of the others. Twin cans tell the error of reading.
 *
 * @param bed The bed
 * @param drawn Whole beds drawn given its readings
 * @returns The places [m], and the width that is left, as shares
 * @source conditional variance of normal numbers; own reasoning
 */
export function nextCans(bed: ReadBed, drawn: readonly DrawnBed[]): NextCans {
  const [choosing, judging] = [0, 1].map((part) => drawn.filter((_, i) => i % 2 === part)) as [DrawnBed[], DrawnBed[]];
  const noise = meanSquare(drawn);
  const places = bedPlaces(bed);
  const placeOf = (cell: number): BedPlace => places.all[places.cans + cell]!;
  const free = Array.from({ length: places.columns * places.rows }, (_, cell) => cell).filter((cell) => {
    const [column, row] = [cell % places.columns, Math.floor(cell / places.columns)];
    const { x, y } = placeOf(cell);
    return (column + row) % 3 === 0 && bed.cans.every((can) => Math.hypot(can.x - x, can.y - y) >= APART_M);
  });
  const size = free.length + 1;
  const matrix = covariances(choosing, free);
  const chosen: number[] = [];
  while (chosen.length < Math.min(MORE_CANS, free.length)) {
    const gain = (i: number) => matrix[i]! ** 2 / (matrix[i * size + i]! + noise);
    const clear = (i: number) =>
      chosen.every((cell) => {
        const [one, other] = [placeOf(cell), placeOf(free[i - 1]!)];
        return Math.hypot(one.x - other.x, one.y - other.y) >= 2 * APART_M;
      });
    let best = 0;
    for (let i = 1; i < size; i += 1) if (clear(i) && (best === 0 || gain(i) > gain(best))) best = i;
    if (best === 0) break;
    chosen.push(free[best - 1]!);
    given(matrix, size, best, noise);
  }
  const judged = covariances(judging, chosen);
  const before = judged[0]!;
  for (let i = 1; i <= chosen.length; i += 1) given(judged, chosen.length + 1, i, noise);
  return {
    places: chosen.map(placeOf),
    withCans: before > 0 ? Math.sqrt(Math.max(0, judged[0]!) / before) : 1,
    withTwins: Math.sqrt(withinReadings(drawn)),
  };
}
