import type { BedHead, BedPlace } from "../bed-heads";
import { addHat, HATS, hatFactors } from "./profile-hats";
import { type Shape, valueAt } from "./shapes";

/** Standard deviation of a head's throw, over the throw. */
const THROW_SD = 0.03;
/** Of the drift over the throw: growing outwards, across and along, and equal, across and along. */
export const DRIFT_SDS = [0.1, 0.1, 0.09, 0.09] as const;
/** Of how uneven heads throw downwind, and the distance over throw at which the second law of it is whole. */
const TILT_SD = 0.09;
const TILT_NEAR = 0.3;
const SCALE_SD = 0.6;
/** Beyond this distance over throw, before drift, no water is looked for. */
const FARTHEST = 1.7;
const DRIFTS = DRIFT_SDS.length;
const SHARED = 1 + DRIFTS + 4;

/** A shape at a throw, and the outputs and the drift about which it is made linear. */
export interface HeadModel {
  heads: readonly BedHead[];
  shape: Shape;
  /** Throw [m]. */
  reach: number;
  /** Output of each head over that of a sound one. */
  outputs: Float64Array;
  /** Drift over throw, as in DRIFT_SDS. */
  drift: Float64Array;
  /** What makes the mean over the cans 1. */
  scale: number;
}

/** What a model says of places: a mean, and columns that each a standard normal number times. */
export interface HeadColumns {
  /** Rate with the outputs and the drift of the model. */
  base: Float64Array;
  /** Mean before any reading: outputs 1, no drift. */
  mean: Float64Array;
  /** Place after place: scale, drift, uneven throw and the throw of each head; then the output of each head; then the profile. */
  columns: Float64Array;
  width: number;
  outputsFrom: number;
  profileFrom: number;
}

function wets({ arc, faces }: BedHead, dx: number, dy: number): boolean {
  if (arc >= 360) return true;
  const turned = (Math.atan2(dy, dx) * 180) / Math.PI - faces;
  return Math.abs(turned - 360 * Math.round(turned / 360)) <= arc / 2 + 1e-9;
}

/**
 * The columns of a model at places.
 *
 *     rate = c sum(q t p(v) / R^2)        v: distance over throw R from where the drift puts the head; t: as in `BedHead`
 *     columns: derivatives of it by each unknown, times its standard deviation
 */
export function headColumns(model: HeadModel, places: readonly BedPlace[]): HeadColumns {
  const { heads, shape, reach, outputs, drift } = model;
  const count = heads.length;
  const outputsFrom = SHARED + count;
  const profileFrom = outputsFrom + count;
  const width = profileFrom + HATS;
  const base = new Float64Array(places.length);
  const mean = new Float64Array(places.length);
  const columns = new Float64Array(places.length * width);
  const hats = new Float64Array(HATS);
  const factors = hatFactors(shape);
  const shared = new Float64Array(SHARED);
  places.forEach(({ x, y }, i) => {
    const row = i * width;
    hats.fill(0);
    shared.fill(0);
    for (let k = 0; k < count; k += 1) {
      const head = heads[k]!;
      const dx = (x - head.x) / reach;
      const dy = (y - head.y) / reach;
      const still = Math.sqrt(dx * dx + dy * dy);
      if (still > FARTHEST || !wets(head, dx, dy)) continue;
      const ex = dx - drift[0]! * still - drift[2]!;
      const ey = dy - drift[1]! * still - drift[3]!;
      const v = Math.sqrt(ex * ex + ey * ey);
      const cos = v > 0 ? ex / v : 0;
      const sin = v > 0 ? ey / v : 0;
      const unit = (model.scale * head.times) / (reach * reach);
      const given = unit * outputs[k]!;
      const rate = valueAt(shape.rates, v);
      const slope = valueAt(shape.slopes, v);
      const far = given * rate * Math.min(v, 1);
      const near = given * rate * Math.min(v / TILT_NEAR, 1);
      base[i]! += given * rate;
      mean[i]! += unit * rate;
      shared[1]! -= given * slope * cos * still;
      shared[2]! -= given * slope * sin * still;
      shared[3]! -= given * slope * cos;
      shared[4]! -= given * slope * sin;
      shared[5]! += TILT_SD * far * cos;
      shared[6]! += TILT_SD * far * sin;
      shared[7]! += TILT_SD * near * cos;
      shared[8]! += TILT_SD * near * sin;
      columns[row + SHARED + k] = THROW_SD * given * (-v * slope - 2 * rate);
      columns[row + outputsFrom + k] = unit * rate;
      addHat(hats, v, given);
    }
    shared[0] = SCALE_SD * base[i]!;
    for (let m = 0; m < DRIFTS; m += 1) {
      mean[i]! -= drift[m]! * shared[1 + m]!;
      shared[1 + m]! *= DRIFT_SDS[m]!;
    }
    columns.set(shared, row);
    for (let j = 0; j < HATS; j += 1) {
      for (let m = 0; m <= j; m += 1) columns[row + profileFrom + m]! += hats[j]! * factors[j * HATS + m]!;
    }
  });
  return { base, mean, columns, width, outputsFrom, profileFrom };
}
