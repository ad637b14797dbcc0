import { describe, expect, it } from "vitest";
import { AUDIT_SHEETS } from "../../src/workbook/audit";
import { namesOf } from "../../src/workbook/build";

const PROMISED = {
  Block:
    "Site_Name Licence Meter Block_Name Crop Pot_Shape Pot_Top_mm Pot_Spacing_mm Cover Bed_Width_m Bed_Length_m Bed_Bearing_deg Beds_On_Valve Beds_Tested Head_Count Head_Model Nozzle Head_Layout Head_Spacing_m Row_Spacing_m Head_Arc Riser_m Pressure_Regulated Water_Source Runoff_Returned Run_Minutes_Now Runs_A_Year_Now Metered_kL Gauge_Checked Cylinder_Checked Meter_Checked Test_State Auditor Test_Date Block_Area_m2",
  Cans: "Can_Mouth_mm Test_Minutes Test_Start Test_Stop Cans_Readings Cans_Across_m Cans_Along_m Readings_Problem Positions_Problem Cans_Counted Cans_Dry",
  Heads:
    "Pressure_kPa Flow_Lh Flow_Mean_Lh Pressure_Range_Percent Flow_Range_Percent Wind_Mean_ms Wind_Max_ms Meter_Start_kL Meter_Stop_kL Bed_Flow_Lh Caught_Metered_Share",
  Actions: "Actions_Table Actions_Cost",
  Limits:
    "Limits_Table Limit_Set Limit_MAR_Low Limit_MAR_High Limit_CU_Low Limit_DU_Low Limit_SC_High Limit_SCQ_High Limit_MAR_Text Limit_CU_Text Limit_DU_Text Limit_SC_Text Limit_SCQ_Text Limit_MAR_Source Limit_CU_Source Limit_DU_Source Limit_SC_Source Limit_SCQ_Source",
};

describe("the input sheets of the audit workbook", () => {
  it.each(Object.entries(PROMISED))("%s holds the names that scripts rely on", (sheet, names) => {
    const spec = AUDIT_SHEETS.find(({ name }) => name === sheet)!;
    expect([...namesOf(spec).keys()]).toEqual(expect.arrayContaining(names.split(" ")));
  });

  it("no name stands for two things", () => {
    const names = AUDIT_SHEETS.flatMap((spec) => [...namesOf(spec).keys()].map((name) => name.toLowerCase()));
    expect(names.filter((name, index) => names.indexOf(name) < index)).toEqual([]);
  });
});
