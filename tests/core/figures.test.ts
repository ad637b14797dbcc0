import { expect, it, vi } from "vitest";
import type { Figure } from "../../src/core/figures/figure";

const CHANGED = {
  DU: "Evenness of the test label",
  Fertiliser: "Cost of the test label",
  TIME: "Minutes of the test label",
  SHORT: "Evenness in short",
};

vi.mock("../../src/core/figures/measures", async (original) => {
  const { MEASURES } = await original<typeof import("../../src/core/figures/measures")>();
  return { MEASURES: { ...MEASURES, DU: { ...MEASURES.DU, name: CHANGED.DU, short: CHANGED.SHORT } } };
});
vi.mock("../../src/core/figures/costs", async (original) => {
  const { COSTS, ...others } = await original<typeof import("../../src/core/figures/costs")>();
  return { ...others, COSTS: { ...COSTS, Fertiliser: { ...COSTS.Fertiliser, name: CHANGED.Fertiliser } } };
});
vi.mock("../../src/core/figures/run-time", async (original) => {
  const { RUN_TIME } = await original<typeof import("../../src/core/figures/run-time")>();
  return { RUN_TIME: { ...RUN_TIME, TIME: { ...RUN_TIME.TIME, name: CHANGED.TIME } } };
});

const { AUDIT_SHEETS } = await import("../../src/workbook/audit/audit");
const { DEFINITIONS } = await import("../../src/share/copy/definitions");
const { summary } = await import("../../src/core/summary/summary");
const { BUILT_IN_LIMITS } = await import("../../src/core/figures/limits");
const { SET_LINES } = await import("../../src/workbook/audit/limits/limit-sets");
const { MEASURES: INSERTED } = await import("../../src/taskpane/results/measures");
const { figureLabel } = await import("../../src/share/check/figure-label");
const { REGISTER_COLUMNS } = await import("../../src/workbook/nursery/register/columns");
const { REGISTER_ANSWERS } = await import("../../src/workbook/nursery/register/answers");
const { ROWS } = await import("../../src/taskpane/plan/layout-figures");
const { CAN_ROWS } = await import("../../src/taskpane/plan/cans/at-cans");
const { canWords } = await import("../../src/taskpane/plan/cans/can-words");
const table = await Promise.all([
  import("../../src/core/figures/measures"),
  import("../../src/core/figures/run-time"),
  import("../../src/core/figures/water"),
  import("../../src/core/figures/costs"),
]);

const labelIn = (sheet: string, name: string) => {
  const { cells } = AUDIT_SHEETS.find((one) => one.name === sheet)!;
  const row = cells.find((cell) => cell.name === name)!.at.replace(/^[A-Z]+(\d+).*/, "$1");
  return cells.find(({ at, kind }) => kind === "label" && new RegExp(`^[AN]${row}\\b`).test(at))?.value;
};

it("a label changed in the table changes on the sheets, in the summary, the limits, Evidence, the check and the pane", () => {
  expect(labelIn("Results", "Used_DU")).toBe(CHANGED.DU);
  expect(labelIn("Working", "Result_DU_Quarter")).toBe(CHANGED.DU);
  expect(labelIn("Cost", "Cost_Fertiliser_Now_Likely")).toBe(CHANGED.Fertiliser);
  expect(labelIn("Cost", "Saved_Fertiliser_Likely")).toBe(CHANGED.Fertiliser);
  expect(labelIn("Run time", "Result_Run_Time_min")).toBe(CHANGED.TIME);
  expect(DEFINITIONS.map(({ label }) => label)).toContain(`${CHANGED.DU} [%]`);
  expect(summary([1, 2, 3, 4], 1).map(({ measure }) => measure)).toContain(CHANGED.DU);
  expect(BUILT_IN_LIMITS.map(({ measure }) => measure)).toContain(CHANGED.DU);
  expect(SET_LINES.filter(({ measure }) => measure === CHANGED.DU).length).toBeGreaterThan(1);
  expect(INSERTED.map(({ label }) => label)).toEqual(expect.arrayContaining([CHANGED.DU, CHANGED.TIME]));
  expect(figureLabel(AUDIT_SHEETS, "Used_DU").label).toBe(CHANGED.DU);
});

it("so does its name in tight places: the register, the layouts, the cans of a layout", () => {
  const { heading, wrong } = REGISTER_COLUMNS.find(({ id }) => id === "du")!;
  expect(heading).toBe(`${CHANGED.DU} [%]`);
  expect(wrong![1]).toContain(CHANGED.DU);
  expect(REGISTER_ANSWERS.find(({ id }) => id === "du")!.heading).toBe(`${CHANGED.SHORT}, change [points]`);
  expect(ROWS).toContain(`${CHANGED.DU} [%]`);
  expect(CAN_ROWS).toContain(`${CHANGED.SHORT} at the cans [%]`);
  const indices = { meanRate: 8, christiansen: 80, distribution: 70, driestCoefficient: 1.5 };
  expect(canWords({ bed: indices, weighted: indices } as never)).toContain(`${CHANGED.SHORT} right`);
  const report = AUDIT_SHEETS.find(({ name }) => name === "Report")!.cells.flatMap(({ value, formula }) => [
    value,
    formula,
  ]);
  expect(report.filter((text) => String(text).includes(CHANGED.SHORT))).not.toEqual([]);
});

it("the old label is left nowhere in the sheets", () => {
  const report = AUDIT_SHEETS.flatMap(({ name, cells }) =>
    cells.flatMap(({ at, value, formula }) =>
      [value, formula].some((text) => /DU \(low quarter\)|Fertiliser that drains/.test(String(text)))
        ? [`${name}!${at}`]
        : [],
    ),
  );
  expect(report).toEqual([]);
});

it("every figure has a name, a definition, a source, whole digits, and ends in order", () => {
  const figures = table.flatMap((part) => Object.values(part).flatMap((rows) => Object.values(rows) as Figure[]));
  expect(figures.length).toBeGreaterThan(20);
  for (const { name, short, definition, source, digits, least, most } of figures) {
    expect([name, short, definition, source].every((words) => words.trim().length > 1)).toBe(true);
    expect(Number.isInteger(digits) && digits >= 0).toBe(true);
    expect((least ?? Number.NEGATIVE_INFINITY) < (most ?? Number.POSITIVE_INFINITY)).toBe(true);
  }
});
