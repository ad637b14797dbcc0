import { beforeAll, describe, expect, it } from "vitest";
import { BUILT_IN_LIMITS, parseLimit } from "../../src/core/figures/limits";
import { LIMITS } from "../../src/workbook/audit/limits/limits";
import type { Entries } from "../../src/workbook/form/build";
import { type Calculated, calculated } from "../support/audits";

const MEASURES = {
  MAR: "Mean application rate",
  CU: "CU (Christiansen)",
  DU: "DU (low quarter)",
  SC: "SC (driest can)",
  SCQ: "SC (low quarter)",
};
type Short = keyof typeof MEASURES;
const SHORT = Object.keys(MEASURES) as Short[];
const SETS = [
  "General",
  "Queensland industry",
  "Queensland notes",
  "Florida nurseries",
  "Rule of thumb",
  "Common practice",
  "None",
];

const FIRST_LINE = Number(/\d+/.exec(LIMITS.areas!.Limits_Table!)![0]);

/** Limits as somebody may type them, for MAR, CU, DU, SC and SC of the low quarter. */
const READABLE = [
  ["5 to 12", ">= 85", ">=80.5", "<= 1.5", "<=1.25"],
  ["0.5 to 0.5", "≥ 7", "  >= 60 ", "≤1.4", "<= 2"],
  ["<= 15", ">= 0", ">= 100", "<= 10", "<= 0"],
  [">= 4.25", "", ">= 80", "", "<= 1.05"],
];
const UNREADABLE = [
  ["12 to 5", "85", ">= 80 %", "about 1.5", "<= 1,3"],
  ["5 - 12", "<= 85", "80 to 95", ">= 1.5", "<= -1"],
  ["5 to", ">= 8e1", ">= 8.0.0", "< 1.5", "<= .5"],
  ["1 2 to 13", ">= 1/2", ">= ten", "<=", "1.2 to 1.3"],
];

const typed = (limits: readonly string[]): Entries => ({ Limits_Own: limits.map((limit) => [limit]) });
const low = (short: Short, audit: Calculated) => (short.startsWith("SC") ? "" : audit.named(`Limit_${short}_Low`));
const high = (short: Short, audit: Calculated) =>
  short === "CU" || short === "DU" ? "" : audit.named(`Limit_${short}_High`);

describe("the Limits sheet, calculated by LibreOffice", () => {
  let sets: Calculated[];
  let readable: Calculated[];
  let unreadable: Calculated[];
  let ownSource: Calculated;
  beforeAll(async () => {
    const all = await calculated(
      [
        ...SETS.map((Limit_Set) => ({ Limit_Set })),
        ...[...READABLE, ...UNREADABLE].map(typed),
        { ...typed(["6 to 9", "", "", "", ""]), Limits_Own_Source: [["grower's own", 2026, ""]] },
      ],
      [LIMITS],
    );
    sets = all.slice(0, SETS.length);
    readable = all.slice(SETS.length, SETS.length + READABLE.length);
    unreadable = all.slice(SETS.length + READABLE.length, -1);
    ownSource = all.at(-1)!;
  });

  it("starts with the limits that SUMMARY uses when none are given", () => {
    const shown = SHORT.map((short) => [
      MEASURES[short],
      sets[0]!.named(`Limit_${short}_Text`),
      low(short, sets[0]!),
      high(short, sets[0]!),
      sets[0]!.named(`Limit_${short}_Source`),
    ]);
    const wanted = SHORT.map((short) => {
      const limit = BUILT_IN_LIMITS.find(({ measure }) => measure === MEASURES[short]);
      const { text = "", low = "", high = "", source = "", year = "" } = limit ?? {};
      return [MEASURES[short], text, low, high, year === "" ? source : `${source}, ${year}`];
    });
    expect(shown).toEqual(wanted);
  });

  it("shows the limits of the set that is chosen", () => {
    // trade sources: NGIQ 5–12 mm/h; Queensland notes 2007 SC 1.2, MAR 15; UF/IFAS AE194 DU 80; rule of thumb CU 85
    const texts = Object.fromEntries(
      SETS.map((set, i) => [set, SHORT.map((short) => sets[i]!.named(`Limit_${short}_Text`))]),
    );
    expect(texts).toEqual({
      General: ["5 to 12", ">= 85", ">= 80", "<= 1.5", ""],
      "Queensland industry": ["5 to 12", "", "", "", ""],
      "Queensland notes": ["<= 15", "", "", "<= 1.2", ""],
      "Florida nurseries": ["", "", ">= 80", "", ""],
      "Rule of thumb": ["", ">= 85", "", "", ""],
      "Common practice": ["", "", "", "<= 1.5", ""],
      None: ["", "", "", "", ""],
    });
    expect(sets[2]!.named("Limit_SC_Source")).toBe("Nursery notes, April/May 2007, Queensland, 2007");
    expect(sets[2]!.named("Limit_SC_High")).toBe(1.2);
  });

  it("reads typed limits as the functions read them", () => {
    READABLE.forEach((limits, i) => {
      const read = SHORT.map((short) => [low(short, readable[i]!), high(short, readable[i]!)]);
      const wanted = limits.map((limit, column) => {
        const text = limit === "" ? (BUILT_IN_LIMITS[column]?.text ?? "") : limit;
        const { low = "", high = "" } = parseLimit(text);
        return [low, high];
      });
      expect(read).toEqual(wanted);
    });
  });

  it("reads nothing into a typed limit that is written in another way, and says so", () => {
    UNREADABLE.forEach((limits, i) => {
      const audit = unreadable[i]!;
      expect(SHORT.flatMap((short) => [low(short, audit), high(short, audit)]).join("")).toBe("");
      const notes = limits.map((_, row) => String(audit.at(`Limits!G${FIRST_LINE + row}`)));
      expect(notes.filter((note) => !note.startsWith("cannot be read: write it like "))).toEqual([]);
    });
  });

  it("quotes a typed limit with the source and year typed beside it, and leaves the others to the set", () => {
    expect(ownSource.named("Limit_MAR_Source")).toBe("grower's own, 2026");
    expect([
      ownSource.named("Limit_MAR_Low"),
      ownSource.named("Limit_MAR_High"),
      ownSource.named("Limit_CU_Low"),
    ]).toEqual([6, 9, 85]);
  });
});
