import { describe, expect, it } from "vitest";
import { flowAtPressure } from "../../../src/core/layout/pressure";
import { measuredProfile, namedProfile, parseShape, rateAt } from "../../../src/core/layout/profile";

describe("the profile of a head", () => {
  it("peaks at 3Q/(pi R2) when it is triangular", () => {
    // 3 400 / (pi 16) = 23.873
    expect(rateAt(namedProfile("triangular", 4, 400), 0)).toBeCloseTo(23.873, 3);
  });

  it("is Q/(pi R2) everywhere when it is uniform", () => {
    // 400 / (pi 16) = 7.958
    const profile = namedProfile("uniform", 4, 400);
    for (const distance of [0, 1, 4]) expect(rateAt(profile, distance)).toBeCloseTo(7.9577, 4);
    expect(rateAt(profile, 4.001)).toBe(0);
  });

  it("rises from 0.4 of its peak at the head to the peak at 0.7 of the throw when it is a ring", () => {
    const profile = namedProfile("ring", 10, 400);
    const peak = rateAt(profile, 7);
    expect(rateAt(profile, 0) / peak).toBeCloseTo(0.4, 12);
    expect(rateAt(profile, 3.5) / peak).toBeCloseTo(0.7, 12);
    expect(rateAt(profile, 8.5) / peak).toBeCloseTo(0.5, 12);
  });

  it("is the triangle again when a triangle is measured, in any unit, with dry cans beyond it", () => {
    const measured = measuredProfile([0, 2, 4, 5], [60, 30, 0, 0], 400);
    const named = namedProfile("triangular", 4, 400);
    for (const distance of [0, 0.7, 2, 3.9, 4.5, 6]) {
      expect(rateAt(measured, distance)).toBeCloseTo(rateAt(named, distance), 10);
    }
    expect([...measured.distances]).toEqual([0, 2, 4]);
  });

  it("refuses what cannot be a profile, and says where", () => {
    const cases: [number[], number[], string][] = [
      [[0], [1], "profile must have at least 2 rows, got 1"],
      [[0, 1], [1], "profile must have 2 rates, one a distance, got 1"],
      [[0.5, 1], [1, 0], "profile must start at distance 0 m, got 0.5 in row 1, column 1"],
      [[0, 2, 1], [1, 1, 0], "profile must have distances that rise from row to row, got 1 in row 3, column 1"],
      [[0, 2, 2], [1, 1, 0], "profile must have distances that rise from row to row, got 2 in row 3, column 1"],
      [[0, 2], [1, -1], "profile must have rates of 0 or from 1e-9 to 1e9, got -1 in row 2, column 2"],
      [[0, 2], [0, 0], "profile must have a rate above 0, got 0"],
    ];
    for (const [distances, rates, message] of cases) {
      expect(() => measuredProfile(distances, rates, 400)).toThrow(expect.objectContaining({ message: message }));
    }
    expect(() => namedProfile("triangular", 0, 400)).toThrow(
      expect.objectContaining({ message: "radius must be more than 0 m, got 0" }),
    );
    expect(() => namedProfile("triangular", 4, -1)).toThrow(
      expect.objectContaining({ message: "flow must be more than 0 L/h, got -1" }),
    );
    expect(() => namedProfile("uniform", 0.001, 400)).toThrow(
      expect.objectContaining({
        message: "flow must be smaller or the throw longer (at most 1e6 mm/h near a head), got 400",
      }),
    );
    expect(() => parseShape("cone")).toThrow(
      expect.objectContaining({
        message: 'profile must be "triangular", "uniform", "ring" or two columns, distance and rate, got "cone"',
      }),
    );
    expect(() => rateAt(namedProfile("uniform", 1, 1), -1)).toThrow(
      expect.objectContaining({ message: "distance must be 0 m or more, got -1" }),
    );
  });
});

it("four times the pressure gives twice the flow", () => {
  expect(flowAtPressure(500, 100, 400)).toBe(1000);
});
