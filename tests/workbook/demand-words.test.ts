import { beforeAll, describe, expect, it } from "vitest";
import type { Entries } from "../../src/workbook/form/build";
import { calculatedPlans, DEMAND_SHEETS, type PlanBook } from "../support/plan-book";

const HERBS: Entries = { Demand_Groups: [["herbs"]], Demand_Tops_mm: [[140]] };
const COVERED: Entries = { ...HERBS, Demand_Rained: [["no"]] };
const FIGURE: Entries = { Demand_Coefficients: [[1]], Demand_Areas_m2: [[0.02]] };
const TYPED: Entries = { Weather_Typed: [["", "", "", "", "", "", 5]] };
const WEIGHED: Entries = {
  Weighings_Typed: [
    ["herbs", 1, 1000, 900, 24],
    ["herbs", 1, 1000, 900, 24],
  ],
};
const hot = (latitude: number, ...line: number[]): Entries => ({
  ...HERBS,
  ...FIGURE,
  Latitude_deg: latitude,
  Weather_Typed: [line],
});
const PLANS = {
  covered: COVERED,
  "covered, weather typed": { ...COVERED, ...TYPED },
  "covered, weighed in January": { ...COVERED, ...WEIGHED },
  "covered, by a coefficient": { ...COVERED, ...FIGURE, ...TYPED },
  "covered, by both": { ...COVERED, ...FIGURE, ...TYPED, ...WEIGHED },
  "Tmin above Tmax": hot(-27.5, 25, 20),
  "a latitude too far": hot(70, 20, 25),
  "a latitude at the end": hot(-66.5, 20, 25),
} satisfies Record<string, Entries>;

describe("Demand says in words, calculated by LibreOffice,", () => {
  const books = new Map<string, PlanBook>();
  beforeAll(async () => {
    const found = await calculatedPlans(Object.values(PLANS), DEMAND_SHEETS);
    Object.keys(PLANS).forEach((title, index) => {
      books.set(title, found[index]!);
    });
  }, 300_000);
  /** Of the first group: a mm of ET0, depth of January, how it came about. */
  const said = (title: keyof typeof PLANS) =>
    ["Demand_Millimetre_mL", "Demand_Depths", "Demand_How"].map((name) => books.get(title)!.cells(name)[0]);
  const WEIGH = "needs weighings: weather does not hold under cover";

  it("that a group under cover wants weighings before a coefficient", () => {
    expect(said("covered")).toEqual([WEIGH, "needs weighings", WEIGH]);
    expect(said("covered, weather typed")).toEqual([WEIGH, "needs weighings", WEIGH]);
    const [millimetre, depth, how] = said("covered, weighed in January");
    expect(millimetre).toBe("from weighings only (under cover)");
    expect(depth).toBeCloseTo(100_000 / (140 ** 2 * (Math.PI / 4)), 9); // 100 mL a day
    expect(how).toBe("only 2 pots weighed: 100 ± 0 mL");
    const book = books.get("covered, weighed in January")!;
    expect(book.cells("Demand_Depths")[6]).toBe("needs weighings");
  });

  it("that its depth by a coefficient is in doubt, unless pots were weighed", () => {
    expect(said("covered, by a coefficient")[2]).toBe("weather: 100 mL, in doubt under cover");
    expect(said("covered, by both")[2]).toBe("only 2 pots weighed: 100 ± 0 mL");
  });

  it("where to read what is wrong with the weather", () => {
    for (const title of ["Tmin above Tmax", "a latitude too far"] as const) {
      expect(said(title).slice(1)).toEqual(["needs Weather!N6", "Weather!N6 says why"]);
      expect(books.get(title)!.cells("Demand_Depths")[6]).toBe("needs weather");
    }
  });

  it("beside the latitude whether it can be used", () => {
    const beside = (title: keyof typeof PLANS) => books.get(title)!.at("Nursery!E8");
    expect(beside("a latitude too far")).toBe("Cannot be used: must be from -66.5 to 66.5.");
    expect(beside("a latitude at the end")).toMatch(/^South negative/);
    expect(typeof said("a latitude at the end")[1]).toBe("number");
    const [check] = DEMAND_SHEETS[0]!.checks!.filter(({ range }) => range === "C8");
    expect(check).toMatchObject({
      rule: { kind: "number", least: -66.5, most: 66.5 },
      message: "A number from -66.5 to 66.5 degrees.",
    });
  });

  it("and shows no error value", () => {
    expect([...books.values()].flatMap(({ errors }) => errors)).toEqual([]);
  });
});
