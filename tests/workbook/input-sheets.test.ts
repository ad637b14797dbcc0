import { describe, expect, it } from "vitest";
import { placesOf } from "../../src/cells/places";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { namesOf } from "../../src/workbook/form/build";
import type { CellSpec, SheetSpec } from "../../src/workbook/form/sheet-spec";

const PROMISED = {
  Block:
    "Site_Name Licence Meter Block_Name Crop Pot_Shape Pot_Top_mm Pot_Spacing_mm Cover Bed_Width_m Bed_Length_m Bed_Bearing_deg Beds_On_Valve Beds_Tested Head_Count Head_Model Nozzle Head_Layout Head_Spacing_m Row_Spacing_m Head_Throw_m Supply_Side Head_Arc Riser_m Pressure_Regulated Water_Source Runoff_Returned Run_Minutes_Now Runs_A_Year_Now Metered_kL Gauge_Checked Cylinder_Checked Meter_Checked Test_State Auditor Test_Date Block_Area_m2",
  Cans: "Can_Mouth_mm Test_Minutes Test_Start Test_Stop Cans_Readings Cans_Across_m Cans_Along_m Cans_Counted Cans_Dry",
  Heads:
    "Head_Across_m Head_Along_m Head_Arc_deg Head_Faces Pressure_kPa Flow_Lh Flow_Mean_Lh Pressure_Range_Percent Flow_Range_Percent Wind_Mean_ms Wind_Max_ms Meter_Start_kL Meter_Stop_kL Bed_Flow_Lh Caught_Metered_Share",
  Actions: "Actions_Table Actions_Cost",
  Limits:
    "Limits_Table Limit_Set Limit_MAR_Low Limit_MAR_High Limit_CU_Low Limit_DU_Low Limit_SC_High Limit_SCQ_High Limit_MAR_Text Limit_CU_Text Limit_DU_Text Limit_SC_Text Limit_SCQ_Text Limit_MAR_Source Limit_CU_Source Limit_DU_Source Limit_SC_Source Limit_SCQ_Source",
};

const INPUTS = ["Start", "Block", "Cans", "Heads", "Actions", "Limits"];
const SHEETS = AUDIT_SHEETS.filter(({ name }) => INPUTS.includes(name));

const typedIn = ({ cells }: SheetSpec) => cells.filter(({ kind }) => kind === "input" || kind === "reading");
const splitPlace = (place: string) => /([A-Z]+)(\d+)/.exec(place)!.slice(1) as [string, string];

/** Whether a unit is on the cell's line, or in brackets on that line or in the nearest heading over it that has one. */
function hasUnit({ cells }: SheetSpec, { at }: CellSpec): boolean {
  const [column, row] = splitPlace(at);
  const onLine = cells.some((one) => {
    const [, line] = splitPlace(one.at);
    if (line !== row || typeof one.value !== "string") return false;
    return one.kind === "unit" || (one.kind === "label" && /\[.+\]/.test(one.value));
  });
  const over = cells.filter(
    (one) =>
      one.kind === "heading" &&
      placesOf(one.at).some((place) => splitPlace(place)[0] === column && Number(splitPlace(place)[1]) <= Number(row)),
  );
  return onLine || over.some(({ value }) => /\[.+\]/.test(String(value)));
}

describe("the input sheets of the audit workbook", () => {
  it.each(Object.entries(PROMISED))("%s holds the names that scripts rely on", (sheet, names) => {
    const spec = AUDIT_SHEETS.find(({ name }) => name === sheet)!;
    expect([...namesOf(spec).keys()]).toEqual(expect.arrayContaining(names.split(" ")));
  });

  it("no name is for two things", () => {
    const names = AUDIT_SHEETS.flatMap((spec) => [...namesOf(spec).keys()].map((name) => name.toLowerCase()));
    expect(names.filter((name, index) => names.indexOf(name) < index)).toEqual([]);
  });

  it.each(SHEETS)("on $name a wrong value is refused in words wherever something is typed", (sheet) => {
    const checked = new Set(
      (sheet.checks ?? []).filter(({ message }) => message.length > 10).flatMap(({ range }) => placesOf(range)),
    );
    const unchecked = typedIn(sheet).filter(({ at }) => !checked.has(at.split(":")[0]!));
    expect(unchecked.map(({ at }) => at)).toEqual([]);
  });

  it.each(AUDIT_SHEETS)("on $name no answer has words for its unit", ({ cells }) => {
    const answers = cells.filter(({ kind }) => kind === "answer").map(({ at }) => splitPlace(at)[1]);
    const words = cells.filter(({ kind, value }) => kind === "unit" && value === "words");
    expect(words.filter(({ at }) => answers.includes(splitPlace(at)[1]))).toEqual([]);
  });

  it.each(SHEETS)("on $name everything that is typed has its unit beside it or over it", (sheet) => {
    expect(
      typedIn(sheet)
        .filter((cell) => !hasUnit(sheet, cell))
        .map(({ at }) => at),
    ).toEqual([]);
  });

  it.each(SHEETS)("$name is about 100 characters wide, Cans half as much again", ({ name, widths }) => {
    const width = widths.reduce((sum, one) => sum + one);
    expect(width).toBeGreaterThan(90);
    expect(width).toBeLessThan(name === "Cans" ? 180 : 125);
  });

  it.each(SHEETS)("messages and lists on $name are as short as spreadsheet programs need them", ({ checks = [] }) => {
    expect(checks.filter(({ message }) => message.length > 225)).toEqual([]);
    const lists = checks.flatMap(({ rule }) => ("of" in rule ? [rule.of] : []));
    expect(lists.filter((of) => of.join(",").length > 255 || of.some((one) => one.includes(",")))).toEqual([]);
  });
});
