// @vitest-environment jsdom
import { beforeAll, expect, it, test } from "vitest";
import { excelHost } from "../../src/hosts/excel/excel";
import { FunctionList } from "../../src/taskpane/help/function-list";
import { localised } from "../../src/taskpane/help/localised";
import { useSeparators } from "../../src/taskpane/help/use-separators";
import { FakeExcel } from "../support/fake-excel";
import { screen } from "../support/screen";

const COMMA = { decimal: ",", list: ";" };
let excel: FakeExcel;
const host = excelHost();
beforeAll(() => {
  excel = new FakeExcel();
});

// a spreadsheet with a decimal comma takes ; between arguments (ECMA-376 part 1, 18.17.2.2, keeps , and . in files only)
test.each([
  ["=CANFALL.SC.SHARE(B2:B26,0.9)", "=CANFALL.SC.SHARE(B2:B26;0,9)"],
  ['=CANFALL.MAR(IF(B2:B26="","x,1.5",B2:B26),20,100)', '=CANFALL.MAR(IF(B2:B26="";"x,1.5";B2:B26);20;100)'],
  ["CANFALL.MAR(readings, minutes, [mouth])", "CANFALL.MAR(readings; minutes; [mouth])"],
])("%s is typed as %s where the decimal sign is a comma", (plain, local) => {
  expect(localised(plain, COMMA)).toBe(local);
});

test("Excel's signs are its decimal sign, and the one between the arguments of a known formula", async () => {
  const { workbook } = excel;
  expect(await host.separators()).toEqual({ decimal: ".", list: "," });
  workbook.separators = { decimal: ",", list: ";" };
  expect(await host.separators()).toEqual(COMMA);
  // somebody set other signs than go together in Windows
  workbook.separators = { decimal: ".", list: ";" };
  workbook.sheet("Sheet1")!.set(0, 0, '=IF(B1="a,b",C1,D1)');
  workbook.names.set("Cause_Sentence", "=Sheet1!$A$1");
  expect(await host.separators()).toEqual({ decimal: ".", list: ";" });
});

function Functions() {
  const info = { id: "SC.SHARE", name: "SC.SHARE", description: "", parameters: [] };
  return <FunctionList functions={[info]} separators={useSeparators(host)} />;
}

it("the list of functions shows examples as they are typed there", async () => {
  excel.workbook.separators = COMMA;
  const page = await screen(<Functions />);
  await page.shows("Examples have ; between arguments and , in numbers, as your spreadsheet does.");
  expect(page.text("code")).toEqual(['=CANFALL.SC.SHARE(IF(B2:B26="";"x";B2:B26);0,9)']);
  await page.close();
});
