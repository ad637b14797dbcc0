import { describe, expect, it } from "vitest";
import { writeAll } from "../../src/taskpane/workbook/writes";
import { memoryHost } from "../support/memory-host";

const at = (address: string, sheet = "Block") => ({ sheet, address });
const book = () => memoryHost({ Block: { B2: "Bed 7", B3: "'30" }, Cans: { C5: 15 } });

describe("writing into several areas", () => {
  it("is taken back in all of them, text like a number included", async () => {
    const host = book();
    const writes = [
      { area: at("B2:B3"), inputs: [["Bed 8"], [31]] },
      { area: at("C5", "Cans"), inputs: [[20]] },
    ];
    const done = await writeAll(host, writes, "entry");
    expect(await host.read(at("B2:B3"))).toEqual([["Bed 8"], [31]]);
    expect(done.label).toBe("entry in Block!B2:B3 and 1 other range");
    expect(await done.untouched()).toBe(true);
    await done.takeBack();
    expect(await host.read(at("B2:B3"))).toEqual([["Bed 7"], ["30"]]);
    expect(await host.read(at("C5", "Cans"))).toEqual([[15]]);
    expect(done.taken).toBe("Block!B2:B3 and 1 other range are as before the entry");
  });

  it("leaves nothing written where one of them fails", async () => {
    const host = book();
    const writes = [
      { area: at("B2"), inputs: [["Bed 8"]] },
      { area: at("A1", "Nowhere"), inputs: [[1]] },
    ];
    await expect(writeAll(host, writes, "entry")).rejects.toThrow("no sheet Nowhere");
    expect(await host.read(at("B2"))).toEqual([["Bed 7"]]);
  });

  it("notices a change in any of them", async () => {
    const host = book();
    const writes = [at("B2"), at("C5", "Cans")].map((area) => ({ area, inputs: [[1]] }));
    const done = await writeAll(host, writes, "entry");
    await host.type(at("C5", "Cans"), [[2]]);
    expect(await done.untouched()).toBe(false);
  });
});
