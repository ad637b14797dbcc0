import { COSTS } from "../../../core/figures/costs";
import { RUN_TIME } from "../../../core/figures/run-time";
import { WATER } from "../../../core/figures/water";
import { choice, number, words } from "../../form/allowed";
import { entryField, figureField } from "../../form/entry-field";
import type { Field } from "../../form/entry-lines";
import { ENOUGH_NOW, fromHeadsIfKnown, ifNumber, isShare, saved } from "./formulas";

/** What water and power cost. */
export const PRICE_LINES: readonly (string | Field)[] = [
  "Days, price and power",
  entryField("Water_Days"),
  {
    label: "Currency",
    name: "Currency",
    unit: "words",
    allowed: words(12),
    note: "Of every price in this workbook, such as USD or EUR. Report names it.",
  },
  entryField("Water_Price", { note: "0 where water is free. Price steps are on Cost." }),
  entryField("Water_Price_Low"),
  entryField("Water_Price_High"),
  entryField("In_Bed_Share", {
    note: "From Heads (caught / metered) or a layout. Left blank, figures hold for water falling on the bed only.",
  }),
  entryField("Pump_kPa"),
  entryField("Pump_Efficiency", {
    note: "0.48 on average in Queensland field tests, 0.23 the lowest (NGIQ).",
  }),
  entryField("Motor_Efficiency"),
  entryField("Power_Tariff"),
  {
    label: "Energy",
    name: "Energy_Per_kL",
    unit: "kWh per kL",
    format: "0.000",
    formula:
      'IF(COUNT(Pump_kPa,Pump_Efficiency,Motor_Efficiency)=3,IF(AND(Pump_kPa>=0,MIN(Pump_Efficiency,Motor_Efficiency)>0,MAX(Pump_Efficiency,Motor_Efficiency)<=1),Pump_kPa/3600/(Pump_Efficiency*Motor_Efficiency),"needs efficiencies above 0, up to 1"),"needs pump and motor")',
    note: "kPa / 3600 / (pump · motor efficiency).",
  },
];

/** A cost as calculated on the sheet Cost, or what it lacks. */
const costOf = (kind: "Water" | "Power") =>
  `IF(ISNUMBER(Cost_${kind}_Now_Likely),Cost_${kind}_Now_Likely,Lack_${kind}_Now)`;

/** What this audit's need costs. */
export const NEED_LINES: readonly (string | Field)[] = [
  {
    unit: "words",
    label: "Basis for the two figures below",
    name: "Water_Label",
    formula: `IF(${isShare("In_Bed_Share")},"water from the heads","water falling on the bed only")&", "&Valve_Words`,
    note: "From the heads where the share in the bed is known.",
  },
  {
    ...figureField(WATER.NOW),
    format: "#,##0.0",
    name: "Result_Water_kL",
    formula: fromHeadsIfKnown("Needed_Now_Heads_kL", "Needed_Now_Bed_kL"),
  },
  {
    label: "Cost of that water, at the likely price",
    name: "Result_Cost",
    unit: "a year",
    format: "#,##0.00",
    formula: costOf("Water"),
    note: "From Cost, by its price steps where they are filled in.",
  },
  {
    label: `${COSTS.Power.short} for it`,
    name: "Result_Power",
    unit: "a year",
    format: "#,##0.00",
    formula: costOf("Power"),
    note: "From Cost, by its hours where they are filled in.",
  },
];

/** A change, and what it saves. */
export const CHANGE_LINES: readonly (string | Field)[] = [
  "After a change: from a second audit, or calculated by the layout planner",
  entryField("After_SC", {
    note: "Of the same kind as the multiplier on Run time.",
  }),
  entryField("After_MAR"),
  entryField("After_In_Bed_Share", {
    note: "Blank: as now.",
  }),
  entryField("After_Capital", {
    note: "For all beds on the valve: parts, and work that is bought; own labour and a grant are on Cost. Blank: the sum on Actions.",
  }),
  {
    label: "Longest run of other beds after",
    name: "Other_Beds_Run_After_min",
    unit: "min",
    allowed: number(0.1, 1440, "min"),
    note: "Of the other tested beds on this valve. Blank: as now (Run time).",
  },
  {
    label: `${RUN_TIME.TIME.name} after`,
    name: "Run_Time_After_min",
    unit: "min a day",
    format: "0",
    formula: ifNumber(
      "After_Multiplier",
      ifNumber("Net_Depth_mm", 'IF(N(After_MAR)>0,60*Net_Depth_mm*After_Multiplier/After_MAR,"needs MAR after")'),
    ),
  },
  {
    label: `${RUN_TIME.TIME.name} of the valve after`,
    name: "Valve_Run_After_min",
    unit: "min a day",
    format: "0",
    formula: ifNumber("Run_Time_After_min", "Run_Time_After_min*Valve_Factor_After"),
  },
  "Saving",
  {
    unit: "choose",
    label: ENOUGH_NOW,
    name: "Waters_To_Driest",
    allowed: choice("yes", "no"),
    note: "Driest can, low quarter or share of pots, as chosen on Run time. Better uniformity saves water only if you now water until they have enough. If not, the dry plants get more water and you save none.",
  },
  {
    ...figureField(WATER.SAVED),
    format: "#,##0.0",
    name: "Saved_kL",
    formula: saved(ifNumber("Result_Water_kL", ifNumber("Needed_After_kL", "Result_Water_kL-Needed_After_kL"))),
    note: "Needed now - needed after; both from the heads where the share is known. Cost says what it is worth.",
  },
];
