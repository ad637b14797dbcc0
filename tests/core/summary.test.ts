import { describe, expect, it } from "vitest";
import { type Limit, parseLimit } from "../../src/core/figures/limits";
import { type SummaryRow, summary } from "../../src/core/summary/summary";
import { interval } from "../../src/core/uniformity/interval";

/** The 16 cups of a Florida lecture (tests/published/uf-yeager-16cups.json). */
const CUPS = [53, 56, 61, 66, 47, 49, 57, 61, 42, 43, 50, 53, 40, 41, 48, 49];

function row(rows: SummaryRow[], measure: string): SummaryRow {
  const found = rows.find((each) => each.measure === measure);
  if (!found) throw new Error(`no row "${measure}" in ${rows.map((each) => each.measure).join(", ")}`);
  return found;
}

function limit(measure: string, text: string): Limit {
  return { measure, ...parseLimit(text), source: "", year: "" };
}

describe("summary", () => {
  it("has its rows in their order, with units", () => {
    const rows = summary(CUPS, 0.3);
    expect(rows.map(({ measure, unit }) => [measure, unit])).toEqual([
      ["Cans counted", "cans"],
      ["Dry cans", "cans"],
      ["Mean application rate", "mm/h"],
      ["CU (Christiansen)", "%"],
      ["DU (low quarter)", "%"],
      ["SC (driest of 16 cans)", ""],
      ["SC (low quarter)", ""],
    ]);
  });

  it("has the values of the single functions, worked by hand", () => {
    // mean 51; 51 x 0.3 = 15.3; deviations 2+5+10+15+4+2+6+10+9+8+1+2+11+10+3+2 = 100, 100 (1 - 100/816) = 87.745;
    // low quarter 41.5: 81.373 and 1.2289; 51/40 = 1.275
    const values = summary(CUPS, 0.3).map(({ value }) => value);
    const expected = [16, 0, 15.3, 87.745, 81.373, 1.275, 1.2289];
    values.forEach((value, i) => void expect(value).toBeCloseTo(expected[i]!, 3));
  });

  it("has 90 % intervals where there are some, and blanks elsewhere", () => {
    const rows = summary(CUPS, 0.3);
    const ends = (measure: string) => [row(rows, measure).low, row(rows, measure).high];
    const [low, high] = interval(CUPS, "MEAN", 0.9);
    expect(ends("Mean application rate")).toEqual([low * 0.3, high * 0.3]);
    expect(ends("CU (Christiansen)")).toEqual(interval(CUPS, "CU.CHRISTIANSEN", 0.9));
    expect(ends("DU (low quarter)")).toEqual(interval(CUPS, "DU.QUARTER", 0.9));
    expect(ends("SC (low quarter)")).toEqual(interval(CUPS, "SC.QUARTER", 0.9));
    expect(ends("SC (driest of 16 cans)")).toEqual(["", ""]);
    expect(ends("Cans counted")).toEqual(["", ""]);
  });

  it("can leave the intervals out", () => {
    const rows = summary(CUPS, 0.3, undefined, { intervals: false });
    expect(rows.every(({ low, high }) => low === "" && high === "")).toBe(true);
    expect(row(rows, "DU (low quarter)").verdict).toBe("within (indicative)");
  });

  it("shows the built-in limits, and verdicts that say indicative from 16 to 23 cans", () => {
    const verdicts = summary(CUPS, 0.3).map(({ limit, verdict }) => [limit, verdict]);
    expect(verdicts).toEqual([
      ["", ""],
      ["", ""],
      ["5 to 12", "outside (indicative)"],
      [">= 85", "too close to call (indicative)"],
      [">= 80", "too close to call (indicative)"],
      ["<= 1.5", "within (indicative)"],
      ["", ""],
    ]);
  });

  it("gives plain verdicts from 24 cans and none under 16", () => {
    const many = Array.from({ length: 24 }, (_, i) => 20 + (i % 2));
    expect(row(summary(many, 0.3), "CU (Christiansen)").verdict).toBe("within");
    expect(row(summary(many.slice(0, 15), 0.3), "CU (Christiansen)").verdict).toBe("too few cans");
    expect(row(summary(many.slice(0, 23), 0.3), "CU (Christiansen)").verdict).toBe("within (indicative)");
  });

  it("takes limits by the names of the measures", () => {
    const limits = [
      limit("SC (low quarter)", "<= 1.1"),
      limit("SC (driest can)", ">= 1.275"),
      limit("Dry cans", "<= 0"),
    ];
    const rows = summary(CUPS, 0.3, limits);
    expect(row(rows, "SC (low quarter)").verdict).toBe("outside (indicative)");
    expect(row(rows, "SC (driest of 16 cans)").verdict).toBe("within (indicative)");
    expect(row(rows, "Dry cans").verdict).toBe("within (indicative)");
    expect(row(rows, "CU (Christiansen)")).toMatchObject({ limit: "", verdict: "" });
  });

  it("says that a can is dry", () => {
    const rows = summary([0, ...CUPS], 0.3);
    expect(row(rows, "Dry cans").value).toBe(1);
    expect(row(rows, "SC (driest of 17 cans)")).toMatchObject({ value: "a can is dry", verdict: "outside" });
    expect(row(summary([0, ...CUPS], 0.3, []), "SC (driest of 17 cans)").verdict).toBe("");
  });

  it("says that the low quarter is dry", () => {
    const rows = summary([0, 5, 6, 7], 0.3, [limit("SC (low quarter)", "<= 1.5")]);
    expect(row(rows, "SC (low quarter)")).toMatchObject({ value: "the low quarter is dry", verdict: "outside" });
    expect(row(rows, "DU (low quarter)").value).toBe(0);
  });

  it("needs 4 cans for a low quarter and 2 for anything", () => {
    const rows = summary([5, 6, 7], 0.3);
    expect(row(rows, "DU (low quarter)")).toMatchObject({ value: "needs 4 cans", verdict: "too few cans" });
    expect(row(rows, "SC (low quarter)")).toMatchObject({ value: "needs 4 cans", verdict: "" });
    expect(() => summary([5], 0.3)).toThrow("readings must have at least 2 cans, got 1");
    expect(() => summary([5, 6], 0)).toThrow("rate of one unit must be more than 0 mm/h, got 0");
  });

  it("leaves an interval blank that cannot be had, and judges by the value", () => {
    const rows = summary([...Array.from({ length: 22 }, () => 0), 9, 9], 1);
    expect(row(rows, "CU (Christiansen)")).toMatchObject({ low: "", high: "", verdict: "outside" });
    expect(row(rows, "Mean application rate").low).not.toBe("");
  });
});
