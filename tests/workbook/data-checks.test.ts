import { beforeAll, describe, expect, it } from "vitest";
import { EXAMPLE_ENTRIES } from "../../src/workbook/example";
import { type Calculated, calculated } from "../support/audits";
import { CAN_CASES } from "./can-check-cases";
import { HEAD_CASES } from "./head-check-cases";

const CANS = [
  "Readings",
  "Positions",
  "Blank places",
  "Number of cans",
  "Can spacing",
  "Edge cans",
  "Mean catch",
  "Wind",
  "Rate",
  "Cans against heads",
  "Clock",
  "A very wet can",
];
const HEADS = [
  "Pressure",
  "Before and after",
  "Buckets",
  "Flow from head to head",
  "Flow against the maker's",
  "Meter",
  "Caught / metered",
];

const CHECKS = [...CANS.map((label) => ["Cans", label] as const), ...HEADS.map((label) => ["Heads", label] as const)];
const CASES = [...CAN_CASES, ...HEAD_CASES];

describe("data checks, calculated by LibreOffice", () => {
  let audits: Map<string, Calculated>;
  beforeAll(async () => {
    const results = await calculated([
      {},
      EXAMPLE_ENTRIES,
      ...CASES.map(({ typed }) => ({ ...EXAMPLE_ENTRIES, ...typed })),
    ]);
    const titles = ["the blank form", "the example", ...CASES.map(({ title }) => title)];
    audits = new Map(titles.map((title, i) => [title, results[i]!]));
  });
  const said = (title: string, sheet: string, label: string) => audits.get(title)!.check(sheet, label);

  it.each(CASES)("say what to do about $title", ({ title, said: expected }) => {
    expect(expected.map(([sheet, label]) => [sheet, label, said(title, sheet, label)])).toEqual(expected);
  });

  it("raise nothing on the example", () => {
    const raised = CHECKS.filter(([sheet, label]) => !["", "ok"].includes(said("the example", sheet, label)));
    expect(raised).toEqual([]);
  });

  it("say nothing on the blank form", () => {
    expect(CHECKS.filter(([sheet, label]) => said("the blank form", sheet, label) !== "")).toEqual([]);
  });

  it("each have a case", () => {
    const tried = CASES.flatMap(({ said }) => said.map(([sheet, label]) => `${sheet} ${label}`));
    expect(CHECKS.filter(([sheet, label]) => !tried.includes(`${sheet} ${label}`))).toEqual([]);
  });
});
