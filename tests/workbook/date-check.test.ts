import { strFromU8, unzipSync } from "fflate";
import { expect, it } from "vitest";
import { BLOCK } from "../../src/workbook/audit/block/block";
import { buildWorkbook } from "../../src/workbook/form/build";

it("a date check allows every day from 1900 to 2099, in the day numbers of spreadsheets", async () => {
  const sheet = strFromU8(unzipSync(await buildWorkbook([BLOCK], {}))["xl/worksheets/sheet1.xml"]!);
  const checks = [...sheet.matchAll(/<dataValidation type="date".*?<formula1>(.*?)<.*?<formula2>(.*?)</g)];
  expect(checks.length).toBeGreaterThan(0);
  // day 1 is 1900-01-01 and day 73,050 is 2099-12-31: 200 years of 365 days, 49 leap days and one that never was
  for (const [, first, last] of checks) expect([Number(first), Number(last)]).toEqual([1, 73050]);
});
