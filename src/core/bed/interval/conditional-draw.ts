import { solved } from "../cholesky";
import type { BedPlaces } from "./bed-places";
import type { Covariances } from "./covariance";
import type { HeadColumns } from "./head-columns";
import type { Normals } from "./normals";
import type { Setting } from "./settings";
import type { SmoothField } from "./smooth-field";

/** All that a draw needs and that draws share. */
export interface Ground {
  places: BedPlaces;
  readings: Float64Array;
  /** How alike each place is to each can, place after place. */
  alike: Float64Array;
  field: SmoothField;
  normals: Normals;
}

/** A model at the cans and the cells. */
export interface PlacedModel {
  columns: HeadColumns;
  level: Float64Array;
  parts: Covariances;
  prior: number;
}

/** What each column is times, besides a standard normal number. */
function scales({ width, outputsFrom, profileFrom }: HeadColumns, { output, profile }: Setting): Float64Array {
  return new Float64Array(width).fill(1).fill(output, outputsFrom, profileFrom).fill(profile, profileFrom);
}

/**
 * One bed drawn given the readings of its cans.
 *
 *     z' = z + J' V^-1 (y - m - J z - g - e)        z, g, e: drawn before any reading; g' likewise
 *     bed = m + J z' + g', none under 0
 *
 * @param ground The bed's places and readings, y
 * @param model m and J at its cans and cells
 * @param setting What scales J, g and e
 * @param factor Cholesky factor of V
 * @returns Rates at the cells, over the mean of the readings
 * @source conditional draws by moving joint ones: Hoffman and Ribak, Astrophysical Journal 380 (1991)
 */
export function conditionalDraw(
  ground: Ground,
  model: PlacedModel,
  setting: Setting,
  factor: Float64Array,
): Float64Array {
  const { places, readings, alike, field, normals } = ground;
  const { level } = model;
  const { mean, columns, width } = model.columns;
  const size = readings.length;
  const scale = scales(model.columns, setting);
  const z = normals.fill(new Float64Array(width));
  const lattice = field.draw(normals);
  const before = z.map((value, k) => value * scale[k]!);
  const left = readings.map((reading, i) => {
    const smooth = setting.field * level[i]! * lattice[places.at[i]!]!;
    const error = setting.reading * level[i]! * normals.next();
    return reading - mean[i]! - product(columns, i, before) - smooth - error;
  });
  const force = solved(factor, left);
  const after = before.slice();
  for (let i = 0; i < size; i += 1) {
    for (let k = 0; k < width; k += 1) after[k]! += scale[k]! ** 2 * columns[i * width + k]! * force[i]!;
  }
  const pull = force.map((value, i) => setting.field ** 2 * level[i]! * value);
  const cells = new Float64Array(mean.length - size);
  for (let p = size; p < mean.length; p += 1) {
    const smooth = setting.field * lattice[places.at[p]!]! + product(alike, p, pull);
    cells[p - size] = Math.max(0, mean[p]! + product(columns, p, after) + level[p]! * smooth);
  }
  return cells;
}

/** Row of a list, as wide as the numbers, times these numbers. */
function product(list: Float64Array, row: number, numbers: Float64Array): number {
  let sum = 0;
  for (let k = 0, at = row * numbers.length; k < numbers.length; k += 1, at += 1) sum += list[at]! * numbers[k]!;
  return sum;
}
