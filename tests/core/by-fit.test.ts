import { describe, expect, it } from "vitest";
import { parseLimit } from "../../src/core/figures/limits";
import { rowsByFit } from "../../src/core/summary/by-fit";
import { summary } from "../../src/core/summary/summary";

/** The 16 cups of a Florida lecture (tests/published/uf-yeager-16cups.json): DU 81.373 %. */
const CUPS = [53, 56, 61, 66, 47, 49, 57, 61, 42, 43, 50, 53, 40, 41, 48, 49];
const LIMITS = [
  { measure: "DU (low quarter)", ...parseLimit(">= 75"), source: "", year: "" },
  { measure: "CU (Christiansen)", ...parseLimit(">= 85"), source: "", year: "" },
];
const BED = {
  MEAN: { estimate: 15, low: 14, high: 16 },
  "CU.CHRISTIANSEN": { estimate: 82, low: 79, high: 84 },
  "DU.QUARTER": { estimate: 80, low: 62.5, high: 84 },
};

describe("rows by fit", () => {
  const rows = rowsByFit(summary(CUPS, 0.3, LIMITS), BED, LIMITS, 24);
  const row = (start: string) => rows.find(({ measure }) => measure.startsWith(start))!;

  it("keep the value from the cans, and take ends and verdict from the fit", () => {
    expect(row("DU")).toMatchObject({ estimate: 80, low: 62.5, high: 84, verdict: "too close to call" });
    expect(row("DU").value).toBeCloseTo(81.373, 3);
    expect(row("CU")).toMatchObject({ estimate: 82, low: 79, high: 84, verdict: "outside" });
    expect(row("Mean")).toMatchObject({ estimate: 15, low: 14, high: 16, verdict: "" });
  });

  it("give SC (low quarter) as 100 over DU: 100/80, 100/84 and 100/62.5", () => {
    expect(row("SC (low")).toMatchObject({ estimate: 1.25, low: 100 / 84, high: 1.6 });
  });

  it("leave figures that the fit does not give, and all of them where there is no fit", () => {
    const plain = summary(CUPS, 0.3, LIMITS);
    expect(row("SC (driest")).toEqual(plain.find(({ measure }) => measure.startsWith("SC (driest")));
    expect(rowsByFit(plain, undefined, LIMITS, 24)).toEqual(plain);
  });
});
