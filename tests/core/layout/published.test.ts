import { describe, expect, it } from "vitest";
import { cellsOfBed } from "../../../src/core/layout/cells";
import { coverage } from "../../../src/core/layout/coverage";
import type { Arrangement, Head } from "../../../src/core/layout/heads";
import { judgement } from "../../../src/core/layout/judgement";
import { overlap } from "../../../src/core/layout/overlap";
import { flowAtPressure } from "../../../src/core/layout/pressure";
import { measuredProfile, namedProfile, type ShapeName } from "../../../src/core/layout/profile";
import { published } from "../../support/case-files";
import { compare } from "../../support/published";

interface Conical {
  tolerances: Record<"christiansen" | "distribution" | "meanRate", number>;
  why: string;
  patterns: {
    pattern: string;
    spacingOverDiameter: number;
    christiansen: string;
    distribution: string;
    meanRate: string;
  }[];
}

interface Nozzles {
  why: string;
  nozzles: { nozzle: string; pressures: number[]; flows: string[]; tolerance: number }[];
}

interface Integrated {
  measured: { distances: number[]; rates: number[] };
  peaks: { shape: string; radius: number; flow: number; peak: string }[];
  layouts: {
    plan: {
      width: number;
      length: number;
      spacing: number;
      rowSpacing: number;
      arrangement: Arrangement;
      shape: string;
      radius: number;
      flow: number;
      cell: number;
    };
    expected: Record<string, string>;
  }[];
}

const PSI_IN_KPA = 6.894757;
const conical = published("layout-conical.json") as Conical;
const nozzles = published("layout-nozzles.json") as Nozzles;
const integrated = published("layout-scipy.json") as Integrated;

function agrees(ours: unknown, expected: string, tolerance?: number, why?: string): void {
  const { agrees, message } = compare(ours, { expected, ...(tolerance && { tolerance }), ...(why && { why }) });
  expect(agrees, message).toBe(true);
}

/** Every head that can reach the repeat cell of cones of radius 1; triangles have each other row half a spacing on. */
function neighbours(spacing: number, row: number, staggered: boolean): Head[] {
  const far = Math.ceil(1 / row) + 3;
  const steps = Array.from({ length: 2 * far + 1 }, (_, i) => i - far);
  return steps.flatMap((j) =>
    steps.map((i) => {
      const shift = staggered && j % 2 !== 0 ? 0.5 : 0;
      return { x: (i + shift) * spacing, y: j * row, flow: Math.PI / 3, times: 1, across: 0, along: 0 };
    }),
  );
}

describe("a field of cones", () => {
  it.each(conical.patterns)(
    "in a $pattern at $spacingOverDiameter of the diameter has the CU, DU and rate computed elsewhere",
    (case_) => {
      const staggered = case_.pattern === "triangle";
      const spacing = 2 * case_.spacingOverDiameter;
      const row = staggered ? spacing * Math.sqrt(0.75) : spacing;
      const cells = cellsOfBed(spacing, staggered ? 2 * row : row, spacing / 150);
      const heads = neighbours(spacing, row, staggered);
      const found = judgement({ heads, ...overlap(cells, heads, namedProfile("triangular", 1, Math.PI / 3)) });
      const { tolerances, why } = conical;
      agrees(found.christiansen, case_.christiansen, tolerances.christiansen, why);
      agrees(found.distribution, case_.distribution, tolerances.distribution, why);
      agrees(found.meanRate, case_.meanRate, tolerances.meanRate, why);
    },
  );
});

describe("the middle of a large staggered bed", () => {
  it.each(conical.patterns.filter(({ pattern }) => pattern === "triangle"))(
    "at $spacingOverDiameter of the diameter has the CU, DU and rate of a triangle computed elsewhere",
    ({ spacingOverDiameter, ...case_ }) => {
      const spacing = 2 * spacingOverDiameter;
      const rowSpacing = spacing * Math.sqrt(0.75);
      const profile = namedProfile("triangular", 1, Math.PI / 3);
      const stand = {
        width: 6 * spacing,
        length: 6 * rowSpacing,
        spacing,
        rowSpacing,
        arrangement: "staggered",
      } as const;
      // 600 rows of cells, and 6 / 0.866 x 100 = 693 columns: the middle third each way is two repeat cells, 2 gaps off
      // every edge, which is at least 1.39 throws
      const bed = coverage({ ...stand, arcs: "full", profile, cell: rowSpacing / 100 });
      const { rows, columns, cellWidth, cellLength } = bed.cells;
      expect([rows, columns]).toEqual([600, 693]);
      const middle = Array.from({ length: 200 }, (_, row) => {
        const start = (200 + row) * columns + 231;
        return Array.from(bed.rates.values.subarray(start, start + 231));
      });
      const part = { rows: 200, columns: 231 };
      const values = Float64Array.from(middle.flat());
      const cells = { ...part, cellWidth, cellLength };
      const found = judgement({ ...bed, rates: { ...part, values }, cells });
      const { tolerances, why } = conical;
      agrees(found.christiansen, case_.christiansen, tolerances.christiansen, why);
      agrees(found.distribution, case_.distribution, tolerances.distribution, why);
      agrees(found.meanRate, case_.meanRate, tolerances.meanRate, why);
    },
  );
});

describe("the flow of a nozzle", () => {
  it.each(nozzles.nozzles)("of $nozzle follows the square root of the pressure", ({ pressures, flows, tolerance }) => {
    const kilopascals = pressures.map((pressure) => pressure * PSI_IN_KPA);
    pressures.forEach((_, i) => {
      const flow = flowAtPressure(Number(flows[0]), kilopascals[0]!, kilopascals[i]!);
      agrees(flow, flows[i]!, tolerance, nozzles.why);
    });
  });
});

describe("the integrals of scipy and the sums of numpy", () => {
  const profileOf = (shape: string, radius: number, flow: number) =>
    shape === "measured"
      ? measuredProfile(integrated.measured.distances, integrated.measured.rates, flow)
      : namedProfile(shape as ShapeName, radius, flow);

  it.each(integrated.peaks)("give the $shape profile a peak of $peak mm/h", ({ shape, radius, flow, peak }) => {
    agrees(Math.max(...profileOf(shape, radius, flow).rates), peak);
  });

  it.each(integrated.layouts)("agree for $plan.arrangement, $plan.shape", ({ plan, expected }) => {
    const { shape, radius, flow, ...stand } = plan;
    const found = judgement(coverage({ ...stand, arcs: "full", profile: profileOf(shape, radius, flow) }));
    for (const [name, value] of Object.entries(expected)) {
      const byCells = name === "inBedShare";
      const why = byCells ? "scipy integrates without cells" : "the last printed digit of numpy's sum";
      agrees(found[name as keyof typeof found], value, byCells ? 0.001 : 1e-6 * Number(value), why);
    }
  });
});
