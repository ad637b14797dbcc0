import { InputError } from "../../errors";
import { cholesky, logLikelihood, misfit } from "../cholesky";
import type { ReadBed } from "../read-bed";
import { bedPlaces } from "./bed-places";
import { type CellIndices, cellIndices } from "./cell-indices";
import { conditionalDraw, type Ground, type PlacedModel } from "./conditional-draw";
import { covariance, covariances, floored } from "./covariance";
import { errorsOf, fittedModels } from "./fitted-models";
import { headColumns } from "./head-columns";
import { Normals } from "./normals";
import { SETTINGS } from "./settings";
import { alikeness, SmoothField } from "./smooth-field";
import { systematicShares } from "./systematic-shares";

const SEED = 20_261_129;
/** Squared misfit a can of the likeliest model, 1 on average, above which no model is like the bed. */
const MOST_MISFIT = 3;

/** A whole bed that was drawn. */
export interface DrawnBed {
  indices: CellIndices;
  /** Rates at the middles of equal cells, row after row, over the mean of the readings. */
  cells: Float64Array;
  /** Relative error of reading that it was drawn with. */
  reading: number;
}

/**
 * Whole beds drawn given the readings of their cans.
 *
 *     each of the likeliest models with each setting as often as exp(-(e' V^-1 e + ln |V|) / 2) and its prior say
 *
 * @param bed The bed
 * @param count How many beds
 * @returns Rates, and mean [over the mean of the readings], CU and DU [%] of each; the same for the same readings, since the seed is fixed
 * @throws InputError if no head reaches a can, or no model is like the readings
 * @source own reasoning
 */
export function drawnBeds(bed: ReadBed, count: number): DrawnBed[] {
  const readings = Float64Array.from(bed.cans, ({ caught }) => caught / bed.mean);
  const places = bedPlaces(bed);
  const alike = alikeness(places.all, bed.cans, bed.radius);
  const size = readings.length;
  const models = fittedModels(bed, readings, alike).map(({ model, prior }): PlacedModel => {
    const columns = headColumns(model, places.all);
    return { columns, level: floored(columns.base), parts: covariances(columns, alike, size), prior };
  });
  const choices = models.flatMap((model) => SETTINGS.map((setting) => ({ model, setting })));
  const factorOf = ({ model, setting }: (typeof choices)[number]) => cholesky(covariance(model.parts, setting), size);
  const weights = choices.map((choice) => {
    const { columns, prior } = choice.model;
    return logLikelihood(factorOf(choice), errorsOf(readings, columns)) + prior;
  });
  checkMisfit(weights.indexOf(weights.reduce((top, weight) => Math.max(top, weight))));
  const field = new SmoothField(places.across, places.along, bed.radius);
  const ground: Ground = { places, readings, alike, field, normals: new Normals(SEED) };
  return systematicShares(weights, count).flatMap((times, i) => {
    if (times === 0) return [];
    const { model, setting } = choices[i]!;
    const factor = factorOf(choices[i]!);
    return Array.from({ length: times }, () => {
      const cells = conditionalDraw(ground, model, setting, factor);
      return { indices: cellIndices(cells.slice()), cells, reading: setting.reading };
    });
  });

  function checkMisfit(likeliest: number): void {
    const choice = choices[likeliest]!;
    const times = misfit(factorOf(choice), errorsOf(readings, choice.model.columns)) / size;
    if (times <= MOST_MISFIT) return;
    const rule = `agree with the heads: the misfit must be at most ${MOST_MISFIT} times what is expected`;
    throw new InputError("grid", rule, Number(times.toFixed(1)), { missing: true });
  }
}
