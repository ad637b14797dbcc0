import { expect, it } from "vitest";
import { readied } from "../../src/share/check/ready";
import { ownSheet } from "../../src/share/looks/sheets/own-sheet";
import { formulaCells } from "../../src/share/native/formula-cells";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { rowHeights } from "../../src/workbook/form/row-heights";

it("the audit's sheets are taken apart with a pause before each, and are known to the check that comes after", async () => {
  let pauses = 0;
  await readied(async () => {
    pauses += 1;
  });
  expect(pauses).toBe(AUDIT_SHEETS.length);
  for (const spec of AUDIT_SHEETS) {
    // without other sheets it would find other heights, were it not known already
    expect(ownSheet(spec, []).heights).toBe(rowHeights(AUDIT_SHEETS).get(spec));
    expect(formulaCells(spec)).toHaveLength(spec.cells.filter(({ formula }) => formula !== undefined).length);
  }
});
