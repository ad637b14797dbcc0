import { expect, it } from "vitest";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import type { Entries } from "../../src/workbook/form/build";
import { calculated } from "../support/audits";

/** Under 0.15: UF/IFAS EP529; salty from 0.7 dS/m: FAO-29 (1985), table 1. */
const ADVISED = /^Under 0\.15/;
const CASES: [what: string, typed: Entries, said: RegExp][] = [
  ["mains", { Water_Source: "mains" }, ADVISED],
  ["a source that is not known", {}, ADVISED],
  [
    "recycled water without an EC",
    { Water_Source: "recycled" },
    /^Water that is recycled may be salty: measure its EC/,
  ],
  ["a bore without an EC", { Water_Source: "bore" }, /^Water that is from a bore may be salty: measure its EC/],
  ["recycled water whose EC is words", { Water_Source: "recycled", Water_EC_dSm: "low" }, /may be salty/],
  ["recycled water of 0.69 dS/m", { Water_Source: "recycled", Water_EC_dSm: 0.69 }, ADVISED],
  ["recycled water of 0.7 dS/m", { Water_Source: "recycled", Water_EC_dSm: 0.7 }, /^Salty water, 0\.7 dS\/m or more/],
  ["a salty dam", { Water_Source: "dam", Water_EC_dSm: 3 }, /^Salty water/],
];

it("leaching under 0.15 is advised only where the water is not salty, and not likely to be", async () => {
  const sheets = AUDIT_SHEETS.filter(({ name }) => !["Start", "Coverage", "Report"].includes(name));
  const found = await calculated(
    CASES.map(([, typed]) => typed),
    sheets,
  );
  CASES.forEach(([what, , said], index) => {
    const advice = String(found[index]!.named("Leaching_Advised"));
    expect(advice, what).toMatch(said);
    if (said !== ADVISED) expect(advice, what).not.toContain("0.15");
  });
}, 120_000);

it("no other sheet advises a leaching fraction", () => {
  const others = AUDIT_SHEETS.flatMap(({ name, cells }) =>
    cells
      .filter(
        ({ name: named, value, formula }) => named !== "Leaching_Advised" && /0\.15|15 %/.test(`${value} ${formula}`),
      )
      .map(({ at }) => `${name}!${at}`),
  );
  expect(others).toEqual([]);
});
