import { describe, expect, it } from "vitest";
import { cholesky, logLikelihood, solved } from "../../src/core/bed/cholesky";
import { bedPlaces } from "../../src/core/bed/interval/bed-places";
import { conditionalDraw } from "../../src/core/bed/interval/conditional-draw";
import { covariance, covariances, floored } from "../../src/core/bed/interval/covariance";
import { errorsOf } from "../../src/core/bed/interval/fitted-models";
import { headColumns } from "../../src/core/bed/interval/head-columns";
import { Normals } from "../../src/core/bed/interval/normals";
import type { Setting } from "../../src/core/bed/interval/settings";
import { SHAPES } from "../../src/core/bed/interval/shapes";
import { alikeness, SmoothField } from "../../src/core/bed/interval/smooth-field";
import { readBed } from "../../src/core/bed/read-bed";
import { published } from "../support/case-files";

interface Numpy {
  bed: Record<"width" | "length" | "throw", number> & {
    across: number[];
    along: number[];
    heads: [number, number][];
    catches: number[][];
    setting: Setting;
  };
  logLikelihood: number;
  cells: { cell: number; mean: number; sd: number }[];
  matrix: number[][];
  factor: number[][];
  solution: number[];
}

const numpy = published("whole-bed-numpy.json") as Numpy;
const DRAWS = 2000;
const [CONE] = SHAPES;

function placed() {
  const { width, length, across, along, heads, catches, setting } = numpy.bed;
  const bed = readBed({
    ...{ grid: catches, across, along, width, length, spacing: 6, rowSpacing: 4, radius: numpy.bed.throw },
    ...{ arrangement: "border", arcs: "full", heads: heads.map(([x, y]) => ({ x, y })) },
  });
  const readings = Float64Array.from(bed.cans, ({ caught }) => caught / bed.mean);
  const [outputs, drift] = [new Float64Array(heads.length).fill(1), new Float64Array(4)];
  const model = { heads: bed.heads, shape: CONE!, reach: numpy.bed.throw, outputs, drift, scale: 1 };
  const mean = headColumns(model, bed.cans).base.reduce((sum, rate) => sum + rate, 0) / readings.length;
  const places = bedPlaces(bed);
  const columns = headColumns({ ...model, scale: 1 / mean }, places.all);
  const alike = alikeness(places.all, bed.cans, bed.radius);
  const parts = covariances(columns, alike, readings.length);
  const factor = cholesky(covariance(parts, setting), readings.length);
  const field = new SmoothField(places.across, places.along, bed.radius);
  const ground = { places, readings, alike, field, normals: new Normals(1) };
  return { ground, placedModel: { columns, level: floored(columns.base), parts, prior: 0 }, factor, setting };
}

describe("the linear model of a bed, against numpy", () => {
  const { ground, placedModel, factor, setting } = placed();

  it("has the log likelihood of the same joint normal distribution", () => {
    // numpy takes derivatives by differences of an exact cone, ours is kept at steps of 0.01: 0.05 of a log unit
    const ours = logLikelihood(factor, errorsOf(ground.readings, placedModel.columns));
    expect(Math.abs(ours - numpy.logLikelihood)).toBeLessThan(0.05);
  });

  it("draws beds whose mean and spread are those given the cans", () => {
    const draws = Array.from({ length: DRAWS }, () => conditionalDraw(ground, placedModel, setting, factor));
    for (const { cell, mean, sd } of numpy.cells) {
      const values = draws.map((rates) => rates[cell]!);
      const ours = values.reduce((sum, value) => sum + value, 0) / DRAWS;
      const spread = Math.sqrt(values.reduce((sum, value) => sum + (value - ours) ** 2, 0) / (DRAWS - 1));
      // five standard errors of a mean and of a standard deviation over 2,000 draws, and 0.002 for the steps of the cone
      expect(Math.abs(ours - mean), `mean of cell ${cell}`).toBeLessThan((5 * sd) / Math.sqrt(DRAWS) + 0.002);
      expect(Math.abs(spread - sd), `spread of cell ${cell}`).toBeLessThan((5 * sd) / Math.sqrt(2 * DRAWS) + 0.002);
    }
  });
});

describe("the Cholesky factor, against numpy.linalg", () => {
  const size = numpy.matrix.length;
  const factor = cholesky(Float64Array.from(numpy.matrix.flat()), size);

  it("is the same lower triangle", () => {
    numpy.factor.flat().forEach((value, at) => {
      expect(Math.abs(factor[at]! - value)).toBeLessThan(1e-12);
    });
  });

  it("solves the same system", () => {
    const solution = solved(factor, Float64Array.of(1, 2, 3, 4));
    numpy.solution.forEach((value, i) => {
      expect(Math.abs(solution[i]! / value - 1)).toBeLessThan(1e-9);
    });
  });
});
