import { describe, expect, it } from "vitest";
import { cellIndices } from "../../../src/core/bed/interval/cell-indices";
import { systematicShares } from "../../../src/core/bed/interval/systematic-shares";
import {
  parseWholeBedIndex,
  WHOLE_BED_INDICES,
  type WholeBed,
  wholeBed,
} from "../../../src/core/bed/interval/whole-bed";
import { type BedInput, readBed } from "../../../src/core/bed/read-bed";
import { christiansen } from "../../../src/core/uniformity/christiansen";
import { distributionUniformity } from "../../../src/core/uniformity/distribution";
import { normalDeviate, randomNumbers } from "../../support/random";

const ACROSS = [0.3, 2.2, 4.1, 5.9, 7.7];
const ALONG = [0.3, 2.3, 4.3, 6.3, 8.3, 10.3, 11.7];

/** Twelve heads on the border of 8 × 12 m, water that falls off as a cone to 5 m; each reading off by about 5 %. */
function coneBed(change: Partial<BedInput> = {}): BedInput {
  const random = randomNumbers(20_261);
  const heads = [0, 4, 8, 12].flatMap((y) => [0, 4, 8].map((x) => ({ x, y })));
  const rate = (x: number, y: number) =>
    heads.reduce((sum, head) => sum + Math.max(0, 1 - Math.hypot(x - head.x, y - head.y) / 5), 0);
  const grid = ALONG.map((y) => ACROSS.map((x) => 10 * rate(x, y) * (1 + 0.05 * normalDeviate(random))));
  const stand = { width: 8, length: 12, spacing: 4, rowSpacing: 4, radius: 5 };
  return { grid, across: ACROSS, along: ALONG, ...stand, arrangement: "border", arcs: "full", ...change };
}

const whole = (change: Partial<BedInput> = {}, level?: number) => wholeBed(readBed(coneBed(change)), level);
const found = whole();
const width = (of: WholeBed, index: (typeof WHOLE_BED_INDICES)[number]) => of[index].high - of[index].low;

describe("the interval of a whole bed", () => {
  it("has its estimate inside, CU and DU at most 100", () => {
    for (const index of WHOLE_BED_INDICES) {
      const { low, estimate, high } = found[index];
      expect(low).toBeGreaterThan(0);
      expect(low).toBeLessThan(estimate);
      expect(estimate).toBeLessThan(high);
      if (index !== "MEAN") expect(high).toBeLessThanOrEqual(100);
    }
  });

  it("is the same every time", () => {
    expect(whole()).toEqual(found);
  });

  it("is wider at a higher level", () => {
    const [half, most] = [whole({}, 0.5), whole({}, 0.99)];
    for (const index of WHOLE_BED_INDICES) {
      expect(width(half, index)).toBeLessThan(width(found, index));
      expect(width(most, index)).toBeGreaterThan(width(found, index));
    }
  });

  it("takes the unit of the readings for the mean, and CU and DU do not change with it", () => {
    const scaled = whole({ grid: coneBed().grid.map((line) => line.map((value) => 2.5 * value!)) });
    for (const end of ["low", "estimate", "high"] as const) {
      expect(scaled.MEAN[end] / found.MEAN[end]).toBeCloseTo(2.5, 9);
      expect(scaled["CU.CHRISTIANSEN"][end]).toBeCloseTo(found["CU.CHRISTIANSEN"][end], 9);
      expect(scaled["DU.QUARTER"][end]).toBeCloseTo(found["DU.QUARTER"][end], 9);
    }
  });

  it("is that of the mirror image, but for other draws", () => {
    const grid = coneBed().grid.map((line) => line.slice().reverse());
    const mirrored = whole({ grid, across: ACROSS.map((x) => 8 - x).reverse() });
    for (const index of WHOLE_BED_INDICES) {
      // an end is a 5 % quantile of 240 draws: its standard error is 0.14 of their standard deviation, a third of that
      // of the half width 1.645 sd; five standard errors of a difference of two are 0.6 of the half width
      const allowed = 0.3 * width(found, index);
      for (const end of ["low", "estimate", "high"] as const) {
        expect(Math.abs(mirrored[index][end] - found[index][end])).toBeLessThan(allowed);
      }
    }
  });

  it("holds cans that all caught the same", () => {
    const { "DU.QUARTER": distribution, MEAN: mean } = whole({ grid: ALONG.map(() => ACROSS.map(() => 7)) });
    expect(distribution.high).toBeLessThanOrEqual(100);
    expect(mean.low).toBeLessThan(7);
    expect(mean.high).toBeGreaterThan(7);
  });
});

describe("an interval of a whole bed is refused", () => {
  const refused = (name: string, message: string, work: () => unknown) => {
    it(name, () => expect(work).toThrow(expect.objectContaining({ name: "InputError", message, missing: true })));
  };
  const few = coneBed().grid.map((line, row) => line.map((value, column) => (row * 5 + column < 15 ? value : null)));
  refused("with 15 cans", "grid must have at least 16 cans for an interval by fit, got 15", () => whole({ grid: few }));

  const places = (count: number, size: number) => Array.from({ length: count }, (_, i) => ((i + 0.5) * size) / count);
  const many = { across: places(15, 8), along: places(14, 12), grid: places(14, 1).map(() => places(15, 1)) };
  refused("with 210 cans", "grid must have at most 200 cans for an interval by fit, got 210", () => whole(many));

  it("where no head reaches a can, and the parameter is the throw", () => {
    const message = "radius must reach a can from a head, got 0.1";
    expect(() => whole({ radius: 0.1 })).toThrow(expect.objectContaining({ name: "InputError", message }));
  });

  it("where readings have nothing to do with the heads, at any level", () => {
    const grid = ALONG.map((_, row) => ACROSS.map((_, column) => ((row * 7 + column * 3) % 5) ** 2 + 0.5));
    const words = /^grid must agree with the heads: the misfit must be at most 3 times what is expected, got [\d.]+$/;
    for (const level of [0.5, 0.9]) {
      expect(() => whole({ grid }, level)).toThrow(
        expect.objectContaining({ name: "InputError", message: expect.stringMatching(words), missing: true }),
      );
    }
  });

  it("where few cans far from the heads leave it too wide to be of use, at any level", () => {
    const sparse = coneBed({ spacing: 8, rowSpacing: 12, radius: 5 });
    const words =
      /^grid must give a 90 % interval of the (DU at most 14 points|mean at most 18 % of it) wide, or it is too wide to be of use, got [\d.]+$/;
    const grid = sparse.grid.map((line, row) =>
      line.map((value, column) => ((row + column) % 2 === 0 ? Math.max(0.5, value! - 12) : null)),
    );
    for (const level of [0.5, 0.9]) {
      expect(() => whole({ ...sparse, grid }, level)).toThrow(
        expect.objectContaining({ name: "InputError", message: expect.stringMatching(words), missing: true }),
      );
    }
  });

  it.each([0.49, 1, Number.NaN])("at the level %d", (level) => {
    const message = `level must be from 0.5 to 0.99, got ${level}`;
    expect(() => whole({}, level)).toThrow(expect.objectContaining({ name: "InputError", message }));
  });

  it("for an index that it has not", () => {
    expect(parseWholeBedIndex("MEAN")).toBe("MEAN");
    const message = 'index must be "MEAN", "CU.CHRISTIANSEN" or "DU.QUARTER", got "SC.CAN"';
    expect(() => parseWholeBedIndex("SC.CAN")).toThrow(expect.objectContaining({ message }));
  });
});

describe("the indices of equal cells", () => {
  it("are those of as many cans", () => {
    const random = randomNumbers(5);
    const rates = Float64Array.from({ length: 64 }, () => 10 * random());
    const mean = rates.reduce((sum, rate) => sum + rate, 0) / 64;
    const [ours, cu, du] = cellIndices(rates.slice());
    expect(ours).toBeCloseTo(mean, 12);
    expect(cu).toBeCloseTo(christiansen(rates), 9);
    expect(du).toBeCloseTo(distributionUniformity(rates), 9);
  });
});

describe("systematic shares", () => {
  it("give out every draw, each within one of its due", () => {
    const weights = [5, 0.2, 1, 3.3, 0.05, 2].map(Math.log);
    const counts = systematicShares(weights, 240);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(240);
    counts.forEach((count, i) => {
      expect(Math.abs(count - (240 * Math.exp(weights[i]!)) / 11.55)).toBeLessThanOrEqual(1);
    });
  });
});
