import { expect, it } from "vitest";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { buildWorkbook, type Entries } from "../../src/workbook/form/build";
import { formulaResults } from "../support/formula-results";
import { converted } from "../support/libreoffice";
import { plantedResults } from "../support/planted";
import { recalculated, recalculatedEntries } from "../support/recalculated";
import { SQUARE_AUDIT } from "../support/square-audit";

/** Numbers, texts, blanks, 0 and texts that look like numbers or formulas, each over what the case before it held. */
const CHANGES: Entries[] = [
  {},
  {
    Cans_Readings: [
      [20, "x", 25, 0, ""],
      ["", "12 ml", 30, 31, 29],
    ],
    Can_Mouth_mm: "",
    Site_Name: "=1+1",
  },
  { Test_Minutes: 0, Leaching_Fraction: 2, Block_Name: "7", Bed_Width_m: "wide" },
  { Water_Price: 2.6, Net_Depth_mm: 9.4, Test_Date: 46000.25, Can_Mouth_mm: 1e-3 },
  {},
];

/** Files keep 15 digits of a number. */
const same = (one: unknown, other: unknown) =>
  typeof one === "number" && typeof other === "number"
    ? Math.abs(one - other) <= 1e-14 * Math.abs(other)
    : one === other;

it("entries typed into the open workbook give what LibreOffice saves of each file", async () => {
  const planted = plantedResults(AUDIT_SHEETS);
  const all = CHANGES.map((change) => ({ ...SQUARE_AUDIT, ...change }));
  const files = await Promise.all(all.map((entries) => buildWorkbook(AUDIT_SHEETS, entries, planted)));
  const typed = [await recalculated(files), await recalculatedEntries(AUDIT_SHEETS, all)];
  const saved = (await converted(files, "xlsx")).map(formulaResults);
  for (const [i, results] of saved.entries()) {
    expect(results.size).toBeGreaterThan(2000);
    for (const ways of typed) {
      const differing = [...results].filter(([place, value]) => !same(ways[i]!.get(place), value));
      expect(differing.map(([place, value]) => [place, value, ways[i]!.get(place)])).toEqual([]);
    }
  }
});
