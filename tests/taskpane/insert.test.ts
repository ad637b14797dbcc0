import { describe, expect, it } from "vitest";
import type { Input } from "../../src/cells/cell";
import { insertAt, siteOf } from "../../src/taskpane/workbook/insert";
import { memoryHost } from "../support/memory-host";

const at = (address: string) => ({ sheet: "Example", address });
const FORMULA = "=CANFALL.SC.CAN(B2:B5)";
const sheet = (cells: Record<string, Input>) => memoryHost({ Example: cells });

describe("an insert", () => {
  it("writes into a blank cell and is taken back to a blank cell", async () => {
    const host = sheet({});
    const site = await siteOf(host, at("D2"), 2, 2);
    expect(site).toEqual({ area: at("D2:E3"), taken: null, fixed: false });
    const done = await insertAt(host, site, FORMULA);
    expect(await host.inputs(at("D2:E3"))).toEqual([
      [FORMULA, ""],
      ["", ""],
    ]);
    await done.takeBack();
    expect(await host.inputs(at("D2:E3"))).toEqual([
      ["", ""],
      ["", ""],
    ]);
  });

  it("names the first cell that is taken, in the target or where the answer spills", async () => {
    const host = sheet({ E2: "a note", D3: 0 });
    const site = await siteOf(host, at("D2"), 2, 2);
    expect(site.taken).toEqual({ address: "E2", holds: "a note", count: 2 });
    expect(site.fixed).toBe(false);
  });

  it("is taken back to exactly what was typed: numbers, text, text like a number, formulas", async () => {
    const before = [
      [1 / 3, "x"],
      ["30", "=B2*2"],
    ];
    const host = sheet({ D2: 1 / 3, E2: "x", D3: "'30", E3: "=B2*2" });
    const done = await insertAt(host, await siteOf(host, at("D2"), 2, 2), FORMULA);
    expect(await host.inputs(at("D2:E3"))).toEqual([
      [FORMULA, ""],
      ["", ""],
    ]);
    await done.takeBack();
    expect(await host.inputs(at("D2:E3"))).toEqual(before);
    expect((await host.read(at("D3")))[0]![0]).toBe("30");
  });

  it("notices what was changed after it", async () => {
    const host = sheet({});
    const done = await insertAt(host, await siteOf(host, at("D2"), 1, 1), FORMULA);
    expect(await done.untouched()).toBe(true);
    await host.type(at("D2"), [[5]]);
    expect(await done.untouched()).toBe(false);
  });

  it("cannot clear a cell that another formula fills", async () => {
    const host = sheet({});
    const spilled = { ...host, read: async () => [[8.25]] };
    const site = await siteOf(spilled, at("D2"), 1, 1);
    expect(site).toEqual({ area: at("D2"), taken: { address: "D2", holds: "8.25", count: 1 }, fixed: true });
  });

  it("does not run past the edge of the sheet", async () => {
    await expect(siteOf(sheet({}), at("XFD1"), 1, 2)).rejects.toThrow(
      "From XFD1 the answer would run past the edge of the sheet",
    );
  });
});
