import { InputError } from "../../errors";
import { cholesky, logLikelihood, solved } from "../cholesky";
import type { ReadBed } from "../read-bed";
import { covariance, covariances } from "./covariance";
import { DRIFT_SDS, type HeadColumns, type HeadModel, headColumns } from "./head-columns";
import { MIDDLE } from "./settings";
import { SHAPES } from "./shapes";

/** Throws over that typed, in equal ratios. */
const RATIOS = Array.from({ length: 10 }, (_, i) => 0.72 * (1.35 / 0.72) ** (i / 9));
/** How far the true throw is from the typed one: standard deviation of the logarithm of their ratio. */
const RATIO_SD = 0.12;
const KEPT = 14;
const ROUNDS = 2;
/** Log weight behind the likeliest model at which one is left out in the end. */
const LEFT_BEHIND = 5;
/** Farthest that a model is made linear about. */
const MOST_OUTPUT = 2;
const MOST_DRIFT = 0.35;

/** A model with the logarithm of its weight before the readings. */
export interface PriorModel {
  model: HeadModel;
  prior: number;
}

interface Candidate extends PriorModel {
  columns: HeadColumns;
  factor: Float64Array;
  errors: Float64Array;
}

/** Readings less what a model expects of them; the first places of the model are the cans. */
export function errorsOf(readings: Float64Array, { mean }: HeadColumns): Float64Array {
  return readings.map((reading, i) => reading - mean[i]!);
}

function candidate(bed: ReadBed, readings: Float64Array, alike: Float64Array, given: PriorModel): Candidate {
  const columns = headColumns(given.model, bed.cans);
  const factor = cholesky(covariance(covariances(columns, alike, readings.length), MIDDLE), readings.length);
  return { ...given, columns, factor, errors: errorsOf(readings, columns) };
}

function firstModels({ cans, heads, radius }: ReadBed): PriorModel[] {
  return SHAPES.flatMap((shape) =>
    RATIOS.flatMap((ratio) => {
      const outputs = new Float64Array(heads.length).fill(1);
      const drift = new Float64Array(DRIFT_SDS.length);
      const model = { heads, shape, reach: ratio * radius, outputs, drift, scale: 1 };
      const { base } = headColumns(model, cans);
      const mean = base.reduce((sum, rate) => sum + rate, 0) / base.length;
      return mean > 0
        ? [{ model: { ...model, scale: 1 / mean }, prior: -((Math.log(ratio) / RATIO_SD) ** 2) / 2 }]
        : [];
    }),
  );
}

/** The model about the outputs and the drift that the readings make likeliest. */
function moved({ model, columns: { columns, width, outputsFrom }, factor, errors }: Candidate): HeadModel {
  const force = solved(factor, errors);
  const pull = (column: number) => force.reduce((sum, f, i) => sum + f * columns[i * width + column]!, 0);
  const outputs = model.outputs.map((_, k) => {
    return Math.min(MOST_OUTPUT, Math.max(0, 1 + MIDDLE.output ** 2 * pull(outputsFrom + k)));
  });
  const drift = model.drift.map((_, m) => {
    return Math.min(MOST_DRIFT, Math.max(-MOST_DRIFT, DRIFT_SDS[m]! * pull(1 + m)));
  });
  return { ...model, outputs, drift };
}

/**
 * The likeliest models of a bed, each about its likeliest outputs and drift.
 *
 *     9 shapes at 10 throws, each by exp(-(e' V^-1 e + ln |V|) / 2) and its prior; the best 14, made linear twice more
 *
 * @param bed The bed
 * @param readings Catches over their mean
 * @param alike How alike the cans are, one by one
 * @returns Models with the logarithm of their prior
 * @throws InputError if no head reaches a can
 */
export function fittedModels(bed: ReadBed, readings: Float64Array, alike: Float64Array): PriorModel[] {
  const first = firstModels(bed).map((given) => candidate(bed, readings, alike, given));
  if (first.length === 0) throw new InputError("radius", "reach a can from a head", bed.radius);
  let kept = best(first, Infinity).slice(0, KEPT);
  for (let round = 0; round < ROUNDS; round += 1) {
    kept = kept.map((found) => candidate(bed, readings, alike, { model: moved(found), prior: found.prior }));
  }
  return best(kept, LEFT_BEHIND).map(({ model, prior }) => ({ model, prior }));
}

/** Candidates from the likeliest down, without those whose log weight is further behind it. */
function best(candidates: Candidate[], behind: number): Candidate[] {
  const scored = candidates
    .map((found) => ({ found, score: logLikelihood(found.factor, found.errors) + found.prior }))
    .sort((one, other) => other.score - one.score);
  return scored.filter(({ score }) => score >= scored[0]!.score - behind).map(({ found }) => found);
}
