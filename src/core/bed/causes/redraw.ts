import { Normals } from "../interval/normals";
import type { ReadBed } from "../read-bed";
import { type BedCauses, causes } from "./causes";
import { fittedAt } from "./ground";
import { Setting } from "./setting";

const REDRAWS = 30;
const SEED = 20_261_130;

/** How many of the beds that were drawn so far show as clear a sign of a fault. */
export interface Redrawn {
  done: number;
  as: number;
  of: number;
}

/** The causes that a fault of heads, pressure or wind makes. */
const FAULTS: readonly string[] = ["one weak head", "pressure falls along the line", "wind", "pressure too low"];

/** How much better the best fit with a fault is than the plain one. */
function sign({ causes: all }: BedCauses): number {
  const best = (fault: boolean) =>
    Math.min(...all.flatMap(({ cause, fitted }) => (fitted && FAULTS.includes(cause) === fault ? [fitted.score] : [])));
  return best(false) - best(true);
}

/**
 * A second opinion: beds without a fault, drawn from the plain fit with all that sound beds differ by, are read as the bed was.
 *
 *     y = m + L z, none under 0        m: plain fit; L L': covariance of a sound bed; z: normal
 *
 * @param bed The bed
 * @returns After each of 30 beds, how many of them show as clear a sign of a fault as the bed does, from the cans alone
 * @source parametric bootstrap (Efron and Tibshirani 1993, ch. 6)
 */
export function* redrawn(bed: ReadBed): Generator<Redrawn, void> {
  const own = causes(bed);
  const plain = own.causes.find(({ cause, fitted }) => fitted && !FAULTS.includes(cause))!.fitted!;
  const setting = new Setting(bed);
  const mean = fittedAt(bed, plain, bed.cans);
  const normals = new Normals(SEED);
  let as = 0;
  for (let done = 1; done <= REDRAWS; done += 1) {
    const spread = setting.correlated(normals.fill(new Float64Array(bed.cans.length)));
    const cans = bed.cans.map((can, i) => ({ ...can, caught: bed.mean * Math.max(0, mean[i]! + spread[i]!) }));
    const average = cans.reduce((sum, { caught }) => sum + caught, 0) / cans.length;
    if (average > 0 && sign(causes({ ...bed, cans, mean: average })) >= sign(own)) as += 1;
    yield { done, as, of: REDRAWS };
  }
}
