import { describe, expect, it } from "vitest";
import { lostFormulas, repair } from "../../src/taskpane/help/repair";
import type { Act } from "../../src/taskpane/workbook/act";
import { memoryHost } from "../support/memory-host";

const at = (address: string, sheet = "Bed 7") => ({ sheet, address });

describe("entering add-in functions again", () => {
  it("finds those that show #NAME? on every sheet, by either of their names", async () => {
    const host = memoryHost({
      "Bed 7": { B2: "=_xldudf_CANFALL_SC_CAN(A1:A4)", C9: "=SUMM(A1:A4)", D1: "a note" },
      Other: { A1: "=2*CANFALL.MAR(A2:A5,15,100)", A2: 12 },
      Blank: {},
    });
    expect(await lostFormulas(host)).toEqual([
      { area: at("B2"), inputs: [["=CANFALL.SC.CAN(A1:A4)"]] },
      { area: at("A1", "Other"), inputs: [["=2*CANFALL.MAR(A2:A5,15,100)"]] },
    ]);
  });

  it("enters them by the names that people type, says how many, and is taken back", async () => {
    const host = memoryHost({ "Bed 7": { B2: "=_xldudf_CANFALL_SC_CAN(A1:A4)" } });
    const kept: Act[] = [];
    // the memory host calculates nothing, so the cell goes on showing #NAME?
    expect(await repair(host, (done) => kept.push(done))).toBe(
      "Entered the functions again in 1 cell: 1 cell still shows #NAME?. memory has not loaded Canfall's functions. " +
        "Save this workbook, open it again and press Open Canfall; if they still show #NAME?, open Canfall's page in a browser and press Check this host",
    );
    expect(await host.inputs(at("B2"))).toEqual([["=CANFALL.SC.CAN(A1:A4)"]]);
    await kept[0]!.takeBack();
    expect(await host.inputs(at("B2"))).toEqual([["=_xldudf_CANFALL_SC_CAN(A1:A4)"]]);
  });

  it("says so where there is nothing to do", async () => {
    const host = memoryHost({ "Bed 7": { B2: 5 } });
    expect(await repair(host, () => {})).toBe("No cell shows #NAME? for a function of Canfall");
  });
});
