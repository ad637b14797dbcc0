import { describe, expect, it } from "vitest";
import { canPlan } from "../../src/core/layout/cans/plan";
import { fieldSheet } from "../../src/taskpane/plan/cans/field-sheet";
import { FIRST_LAYOUT } from "../../src/taskpane/plan/layout-entries";
import { planOf } from "../../src/taskpane/plan/layout-plan";
import { layoutSheet } from "../../src/taskpane/plan/live-layout";
import { FIRST_SEARCH, searchOf } from "../../src/taskpane/plan/search/entries";
import type { Said } from "../../src/taskpane/plan/worker/messages";
import { PlanService } from "../../src/taskpane/plan/worker/service";

const FINE = { ...FIRST_LAYOUT, cell: "0.1" };

describe("the layout worker", () => {
  it("stops a search when asked and ranks what was tried until then", async () => {
    const said: Said[] = [];
    const service: PlanService = new PlanService((one) => {
      said.push(one);
      if (one.kind === "progress") void service.answer({ id: 1, kind: "stop" });
    });
    await service.answer({ id: 1, kind: "search", input: searchOf(FIRST_SEARCH, FINE) });
    const last = said.at(-1)!;
    if (last.kind !== "found") throw new Error(`got ${last.kind}`);
    const { tried, total, ranking } = last.found;
    expect(tried).toBeLessThan(total);
    expect(ranking.within.length + ranking.outside.length).toBe(tried);
  });

  it("answers what is wrong with the quantity's name", async () => {
    const said: Said[] = [];
    await new PlanService((one) => said.push(one)).answer({
      id: 7,
      kind: "plan",
      plan: { ...planOf(FIRST_LAYOUT), cell: 9 },
    });
    expect(said).toEqual([
      { id: 7, kind: "failed", message: "cell must be at most the throw, 4 m, got 9", parameter: "cell" },
    ]);
  });
});

describe("a layout as typed", () => {
  it("takes the flow at the heads' pressure", () => {
    // 100 to 400 kPa doubles the flow
    expect(planOf({ ...FIRST_LAYOUT, flow: "150", statedPressure: "100", pressure: "400" }).profile.flow).toBe(300);
  });

  it("takes a measured profile, and says which line of it is wrong", () => {
    const measured = { ...FIRST_LAYOUT, shape: "measured" as const };
    const { profile } = planOf({ ...measured, profile: "0 5\n2,5 4\n5 0" });
    expect([...profile.distances]).toEqual([0, 2.5, 5]);
    expect(() => planOf({ ...measured, profile: "0 5\n2 four" })).toThrow(
      'profile must be numbers, got "four" in line 2',
    );
    expect(() => planOf({ ...measured, profile: "0 5\n2" })).toThrow(
      'profile must hold a distance and a rate in each line, got "2" in line 2',
    );
  });
});

describe("a number as typed", () => {
  it("may have a decimal comma, but not one that could part thousands", () => {
    expect(planOf({ ...FIRST_LAYOUT, width: "12,5" }).width).toBe(12.5);
    expect(() => planOf({ ...FIRST_LAYOUT, flow: "6,000" })).toThrow('flow must be a number, got "6,000"');
    expect(() => searchOf({ ...FIRST_SEARCH, spacings: "3 4,000" }, FIRST_LAYOUT)).toThrow(
      'spacings must be numbers, got "4,000" in place 2',
    );
  });
});

describe("sheets of a layout", () => {
  it("hold functions that read the sizes beside them", () => {
    const rows = layoutSheet(FIRST_LAYOUT);
    expect(rows[3]!.slice(0, 3)).toEqual(["Bed width", 12, "m"]);
    expect(rows[14]![0]).toBe("=CANFALL.LAYOUT.COMPARE(B4,B5,B6,B8,B9,B12,B13)");
    expect(rows.at(-1)![0]).toBe("=CANFALL.LAYOUT.COVERAGE(B4,B5,B6,B8,B9,B10,B11,B12,B13,B7)");
  });

  it("keep a measured profile clear of what the functions fill", () => {
    const lines = Array.from({ length: 30 }, (_, index) => `${index / 5} ${30 - index}`).join("\n");
    const rows = layoutSheet({ ...FIRST_LAYOUT, shape: "measured", profile: lines });
    const compareRow = rows.findIndex(([first]) => String(first).startsWith("=CANFALL.LAYOUT.COMPARE"));
    const lastPoint = Math.max(...rows.map((row, index) => (typeof row[4] === "number" ? index : 0)));
    expect(rows[3]!.slice(4)).toEqual([0, expect.any(Number)]);
    expect(lastPoint).toBe(32);
    expect(compareRow).toBeGreaterThan(lastPoint);
    expect(rows[compareRow]![0]).toContain("E4:F33");
  });

  it("list every can for the field, in walking order", () => {
    const plan = canPlan({ width: 8, length: 12, headSpacing: 4, headRowSpacing: 4 });
    const { cells } = fieldSheet("Field sheet", plan);
    const at = (address: string) => cells.find((cell) => cell.at === address)?.value;
    expect([at("A7"), at("B7"), at("C7")]).toEqual([1, 0.3, 0.3]);
    expect(cells.filter(({ kind }) => kind === "reading")).toHaveLength(plan.count);
    // the second row is walked back: the can after the first row's last is in the same column
    expect(at(`B${7 + plan.across.length}`)).toBe(at(`B${6 + plan.across.length}`));
  });
});
