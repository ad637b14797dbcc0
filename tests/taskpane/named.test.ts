import { describe, expect, it } from "vitest";
import { BUILT_IN_LIMITS } from "../../src/core/figures/limits";
import { LIMITS } from "../../src/taskpane/answer/limits-in";
import { numberIn, readNamed, textIn } from "../../src/taskpane/workbook/named";
import { readNow } from "../../src/taskpane/workbook/reading";
import { memoryHost } from "../support/memory-host";

const at = (address: string, sheet = "Limits") => ({ sheet, address });

describe("the cells behind defined names", () => {
  it("are read with their place, value and whether the workbook works them out", async () => {
    const host = memoryHost(
      { Cans: { C5: 15, B9: "x" }, Block: { D2: "=B2*B3" } },
      { Test_Minutes: at("C5", "Cans"), Cans_Readings: at("B9:D12", "Cans"), Block_Area_m2: at("D2", "Block") },
    );
    const found = await readNamed(host, ["Test_Minutes", "Cans_Readings", "Block_Area_m2", "No_Such_Name"]);
    expect(found).toMatchObject({
      Test_Minutes: { area: at("C5", "Cans"), cell: at("C5", "Cans"), value: 15, formula: false },
      Cans_Readings: { area: at("B9:D12", "Cans"), cell: at("B9", "Cans"), value: "x", formula: false },
      Block_Area_m2: { area: at("D2", "Block"), cell: at("D2", "Block"), value: { error: "#NAME?" }, formula: true },
    });
    expect([numberIn(found.Test_Minutes), numberIn(found.Cans_Readings), numberIn(found.No_Such_Name)]).toEqual([
      15,
      undefined,
      undefined,
    ]);
    expect([textIn(found.Block_Area_m2), textIn(found.No_Such_Name)]).toEqual(["#NAME?", ""]);
  });
});

describe("the limits", () => {
  it("are the built-in ones where the workbook has none", async () => {
    expect(await readNow(memoryHost({ Example: {} }), LIMITS)).toBe(BUILT_IN_LIMITS);
  });

  it("are those of the workbook, and none where it leaves a measure without", async () => {
    const cells = { A9: "table", B2: 90, C2: ">= 90", D2: "Site rule, 2026", B3: "", C3: "" };
    const names = {
      Limits_Table: at("A9:G14"),
      Limit_CU_Low: at("B2"),
      Limit_CU_Text: at("C2"),
      Limit_CU_Source: at("D2"),
      Limit_DU_Low: at("B3"),
    };
    expect(await readNow(memoryHost({ Limits: cells }, names), LIMITS)).toEqual([
      { measure: "CU (Christiansen)", low: 90, text: ">= 90", source: "Site rule, 2026", year: "" },
    ]);
  });
});
