import { expect, it } from "vitest";
import { readsSheet } from "../../src/desk/sheets/reads-sheet";

const names = [
  { name: "Price", reference: "'Bed 7'!$A$1" },
  { name: "Cost", reference: "Price*2" },
  { name: "Other_Price", reference: "Bed!$A$1" },
];

it("a formula reads a sheet by its name, or by names that lead there through other names too", () => {
  const reads = readsSheet("Bed 7", names);
  const formulas = ["='bed 7'!A1", "=SUM(Price,1)", "=COST+1"];
  for (const formula of formulas) expect(reads(formula), formula).toBe(true);
});

it("and not by texts, longer names, functions or sheets with a like name", () => {
  const reads = readsSheet("Bed 7", names);
  const formulas = ["=\"'Bed 7'!A1\"", "=Prices+1", "=COST(1)", "='Old Bed 7'!A1", "=Other_Price", "=My.Price"];
  for (const formula of formulas) expect(reads(formula), formula).toBe(false);
  const plain = readsSheet("Bed", names);
  expect(["=Bed!A1", "=Seed_Bed!A1", "='Bed'!A1", "=Other_Price*2"].map(plain)).toEqual([true, false, true, true]);
});
