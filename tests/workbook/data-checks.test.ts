import { beforeAll, describe, expect, it } from "vitest";
import { firstCell } from "../../src/cells/places";
import { BLOCK } from "../../src/workbook/audit/block/block";
import { CANS } from "../../src/workbook/audit/cans/cans";
import { PROBLEM_LINES } from "../../src/workbook/audit/cans/problems";
import { HEADS } from "../../src/workbook/audit/heads/heads";
import { namesOf } from "../../src/workbook/form/build";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";
import { type Calculated, calculated } from "../support/audits";
import { SQUARE_AUDIT } from "../support/square-audit";
import { CAN_CASES } from "./can-check-cases";
import { DATA_CHECKS } from "./data-check-cases";
import { HEAD_CASES } from "./head-check-cases";

/** The rate that the Results sheet gives, with equal weight: these cases have arithmetic with it. */
const RATE: SheetSpec = {
  name: "Results",
  widths: [],
  cells: [
    { at: "A1", kind: "answer", name: "Used_MAR", formula: "Mean_Rate_mmh" },
    { at: "A2", kind: "answer", name: "By_Area", formula: "FALSE" },
    { at: "A4", kind: "answer", name: "Pots_Problem", formula: '""' },
    { at: "A3", kind: "answer", name: "Weighted_Reading", formula: '""' },
    ...PROBLEM_LINES.map(([, name, formula], index) => ({
      at: `B${index + 1}`,
      kind: "answer" as const,
      name,
      formula,
    })),
  ],
};
const SHEETS = [BLOCK, CANS, HEADS, RATE];
const TYPED = new Set(SHEETS.flatMap((sheet) => [...namesOf(sheet).keys()]));
const EXAMPLE_TYPED = Object.fromEntries(Object.entries(SQUARE_AUDIT).filter(([name]) => TYPED.has(name)));
const CASES = [...CAN_CASES, ...HEAD_CASES];

describe("data checks, calculated by LibreOffice", () => {
  let audits: Map<string, Calculated>;
  beforeAll(async () => {
    const all = CASES.map(({ typed }) => ({ ...EXAMPLE_TYPED, ...typed }));
    const results = await calculated(all, SHEETS);
    audits = new Map(CASES.map(({ title }, i) => [title, results[i]!]));
  });
  const said = (title: string, sheet: string, label: string) => audits.get(title)!.check(sheet, label);

  it.each(CASES)("say what to do about $title", ({ title, said: expected }) => {
    expect(expected.map(([sheet, label]) => [sheet, label, said(title, sheet, label)])).toEqual(expected);
  });

  it("ask beside the cell about an odd opening and a spacing that no throw reaches, and are silent else", () => {
    const beside = (title: string, sheet: SheetSpec, words: RegExp) =>
      sheet.cells
        .filter(({ kind, formula }) => kind === "note" && formula?.startsWith("IF("))
        .map(({ at }) => String(audits.get(title)!.at(`${sheet.name}!${firstCell(at)}`)))
        .filter((text) => words.test(text));
    expect(beside("a can opening of 1000 mm", CANS, /^Is the opening of a can 1000 mm across/)).toHaveLength(2); // and among the checks
    expect(
      beside("heads farther apart than twice the throw", BLOCK, /^Wider than twice the throw, 2 × 4 m/),
    ).toHaveLength(1);
    expect(beside("a can opening of 1000 mm", BLOCK, /^Wider than twice/)).toEqual([]);
    expect(beside("heads farther apart than twice the throw", CANS, /^Is the opening/)).toEqual([]);
  });

  it("each have a case", () => {
    const tried = CASES.flatMap(({ said }) => said.map(([sheet, label]) => `${sheet} ${label}`));
    expect(DATA_CHECKS.filter(([sheet, label]) => !tried.includes(`${sheet} ${label}`))).toEqual([]);
  });
});
