import { beforeAll, describe, expect, it } from "vitest";
import { firstCell } from "../../src/cells/places";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { symbolCell } from "../../src/workbook/audit/coverage/places";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { type Entries, namesOf } from "../../src/workbook/form/build";
import { type Calculated, calculated } from "../support/audits";
import { DATA_CHECKS } from "./data-check-cases";

const named = AUDIT_SHEETS.flatMap((spec) => {
  const typed = new Set(
    spec.cells.flatMap(({ at, kind }) => (kind === "input" || kind === "reading" ? [firstCell(at)] : [])),
  );
  return [...namesOf(spec)].flatMap(([name, range]) => (typed.has(firstCell(range)) ? [name] : []));
});
const everywhere = (value: string | number): Entries => Object.fromEntries(named.map((name) => [name, value]));
const over = (value: string | number): Entries => ({
  ...EXAMPLE_ENTRIES,
  ...everywhere(value),
  Cans_Readings: EXAMPLE_ENTRIES.Cans_Readings!,
});
const BELOW_ZERO = (EXAMPLE_ENTRIES.Cans_Readings as (string | number)[][]).map((line, i) =>
  line.map((reading, j) => (i === 1 && j === 2 ? -3 : reading)),
);
/** Column and row of each can with the mark of a head, from 0. */
const marked = ({ at }: Calculated) =>
  Array.from({ length: 30 }, (_, k) => [k % 5, Math.floor(k / 5)] as const)
    .filter(([j, i]) => String(at(`Coverage!${symbolCell(i, j)}`)).includes("●"))
    .map(([j, i]) => `${j}${i}`)
    .join(" ");
const errors = ({ places, at }: Calculated) =>
  places.filter((place) => /^(#|Err:)/.test(String(at(place)))).map((place) => `${place} ${at(place)}`);

describe("a whole audit, calculated by LibreOffice", () => {
  let blank: Calculated;
  let example: Calculated;
  let zeros: Calculated;
  let negatives: Calculated;
  let texts: Calculated;
  let belowZero: Calculated;
  let moved: Calculated;
  beforeAll(async () => {
    [blank, example, zeros, negatives, texts, belowZero, moved] = (await calculated([
      {},
      EXAMPLE_ENTRIES,
      over(0),
      over(-1),
      over("twelve"),
      { ...EXAMPLE_ENTRIES, Cans_Readings: BELOW_ZERO },
      {
        ...EXAMPLE_ENTRIES,
        ...{ Head_Layout: "staggered", Head_Across_m: [[6]], Head_Along_m: [[15.9]], Head_Arc_deg: [[""], [0]] },
      },
    ])) as [Calculated, Calculated, Calculated, Calculated, Calculated, Calculated, Calculated];
  });

  it("shows no error value while nothing is filled in", () => {
    expect(errors(blank)).toEqual([]);
  });

  it("shows no error value on the example, and no data check speaks", () => {
    expect(errors(example)).toEqual([]);
    expect(DATA_CHECKS.filter(([sheet, label]) => !["", "ok"].includes(example.check(sheet, label)))).toEqual([]);
  });

  it("has no data check that speaks on the blank form", () => {
    expect(DATA_CHECKS.filter(([sheet, label]) => blank.check(sheet, label) !== "")).toEqual([]);
  });

  it("shows no error value where zeros, negatives or words were pasted over the checks of typing", () => {
    expect([errors(zeros), errors(negatives), errors(texts)]).toEqual([[], [], []]);
  });

  it("marks a reading below 0 on Coverage, and the data check on Cans says where it is", () => {
    expect(errors(belowZero)).toEqual([]);
    expect(belowZero.at(`Coverage!${symbolCell(1, 2)}`)).toBe("< 0");
    expect(belowZero.check("Cans", "Readings")).toContain("(below 0): type again.");
  });

  // half-way lines across: 1.875, 4.625, 7.375, 10.125 m; along: 2, 5, 8, 11, 14 m
  it("marks the cans that have a head of the layout on their ground: heads at 2, 6, 10 m by 2, 6, 10, 14 m", () => {
    expect(marked(example)).toBe("11 21 31 12 22 32 13 23 33 15 25 35");
  });

  // staggered: 0, 4, 8, 12 m at 0, 8, 16 m and 2, 6, 10 m at 4, 12 m; head 1 (0, 0) is at (6, 15.9), head 2 (4, 0) is none
  it("moves a mark to where its head was typed, and has none for an arc of 0", () => {
    expect(errors(moved)).toEqual([]);
    expect(marked(moved)).toBe("30 40 11 21 31 03 13 33 43 14 24 34 05 15 25 35 45");
  });
});
