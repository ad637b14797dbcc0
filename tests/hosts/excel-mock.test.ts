// @vitest-environment jsdom
import { OfficeMockObject } from "office-addin-mock";
import { expect, test, vi } from "vitest";
import { excelHost } from "../../src/hosts/excel/excel";

function excelWith(workbook: object): OfficeMockObject {
  const context = new OfficeMockObject({ workbook });
  vi.stubGlobal("Excel", { run: (_: unknown, batch: (context: OfficeMockObject) => unknown) => batch(context) });
  return context;
}

test("a defined name's area is loaded before it is read", async () => {
  const context = excelWith({
    names: { getItemOrNullObject: () => ({ getRangeOrNullObject: () => context.workbook.found }) },
    found: { address: "'Block 7'!$B$2:$B$26", worksheet: { name: "Block 7" } },
  });
  context.workbook.found.isNullObject = false;
  expect(await excelHost().named("Cans_Readings")).toEqual({ sheet: "Block 7", address: "B2:B26" });
});

test("in manual mode the formulas are calculated before they count as settled", async () => {
  const calculate = vi.fn();
  excelWith({ application: { calculationMode: "Manual", calculationState: "Done", calculate } });
  await excelHost().settled();
  expect(calculate.mock.calls).toEqual([["Recalculate"]]);
});

test("an event that is still under way when the watch ends is dropped", async () => {
  const handlers: (() => Promise<void>)[] = [];
  const event = { add: (handler: () => Promise<void>) => ({ remove: () => void handlers.push(handler) }) };
  excelWith({ onSelectionChanged: event, worksheets: { onChanged: event, onCalculated: event } });
  const changed = vi.fn();
  const stop = await excelHost().watch(changed);
  await stop();
  await Promise.all(handlers.map((late) => late()));
  expect(handlers.length).toBe(3);
  expect(changed).not.toHaveBeenCalled();
});
