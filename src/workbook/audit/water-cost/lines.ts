import { choice, number } from "../../form/allowed";
import type { Field } from "../../form/entry-lines";
import { fromHeadsIfKnown, ifNumber, isShare, saved } from "./formulas";

/** What water and power cost. */
export const PRICE_LINES: readonly (string | Field)[] = [
  "Days, price and power",
  { label: "Watering days", name: "Water_Days", allowed: number(0.01, 366, "days"), unit: "days a year" },
  {
    label: "Price of water, likely",
    name: "Water_Price",
    allowed: number(0, 1e6, ""),
    unit: "per kL",
    note: "In any currency, the same throughout; 0 where water is free. Price steps stand on Cost.",
  },
  { label: "Price of water, low", name: "Water_Price_Low", allowed: number(0, 1e6, ""), unit: "per kL" },
  { label: "Price of water, high", name: "Water_Price_High", allowed: number(0, 1e6, ""), unit: "per kL" },
  {
    label: "Share of the heads' water in the bed",
    name: "In_Bed_Share",
    allowed: number(0.01, 1, ""),
    unit: "0 to 1",
    note: "From Heads (caught / metered) or a layout. Left blank, figures hold for water falling on the bed only.",
  },
  { label: "Pumping pressure", name: "Pump_kPa", allowed: number(0, 10000, "kPa"), unit: "kPa" },
  {
    label: "Efficiency of the pump",
    name: "Pump_Efficiency",
    allowed: number(0.01, 1, ""),
    unit: "0 to 1",
    note: "0.48 on average in Queensland field tests, 0.23 the lowest (NGIQ).",
  },
  { label: "Efficiency of the motor", name: "Motor_Efficiency", allowed: number(0.01, 1, ""), unit: "0 to 1" },
  { label: "Tariff of power", name: "Power_Tariff", allowed: number(0, 1e6, ""), unit: "per kWh" },
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

/** A cost as worked out on the sheet Cost, or what it lacks. */
const costOf = (kind: "Water" | "Power") =>
  `IF(ISNUMBER(Cost_${kind}_Now_Likely),Cost_${kind}_Now_Likely,Lack_${kind}_Now)`;

/** What this audit's need costs. */
export const NEED_LINES: readonly (string | Field)[] = [
  {
    unit: "words",
    label: "These two lines count",
    name: "Water_Label",
    formula: `IF(${isShare("In_Bed_Share")},"water from the heads","water falling on the bed only")`,
    note: "From the heads where the share in the bed is known.",
  },
  {
    label: "Needed now",
    name: "Result_Water_kL",
    unit: "kL a year",
    format: "#,##0.0",
    formula: fromHeadsIfKnown("Needed_Now_Heads_kL", "Needed_Now_Bed_kL"),
  },
  {
    label: "Water bill for it, at the likely price",
    name: "Result_Cost",
    unit: "a year",
    format: "#,##0.00",
    formula: costOf("Water"),
    note: "From Cost, by its price steps where they are filled in.",
  },
  {
    label: "Power for it",
    name: "Result_Power",
    unit: "a year",
    format: "#,##0.00",
    formula: costOf("Power"),
    note: "From Cost, by its hours where they are filled in.",
  },
];

/** A change, and what it saves. */
export const CHANGE_LINES: readonly (string | Field)[] = [
  "After a change: from a second audit, or worked out by the layout planner",
  {
    label: "SC after",
    unit: "ratio",
    name: "After_SC",
    allowed: number(1, 1000, ""),
    note: "Of the same kind as the multiplier on Run time.",
  },
  { label: "MAR after", name: "After_MAR", allowed: number(0.01, 1000, "mm/h"), unit: "mm/h" },
  {
    label: "Share in the bed after",
    name: "After_In_Bed_Share",
    allowed: number(0.01, 1, ""),
    unit: "0 to 1",
    note: "Blank: as now.",
  },
  {
    label: "What the change costs",
    name: "After_Capital",
    allowed: number(0, 1e9, ""),
    unit: "once",
    note: "Parts, and work that is bought; own labour and a grant stand on Cost. Blank: the sum on Actions.",
  },
  {
    label: "Run time after",
    name: "Run_Time_After_min",
    unit: "min a day",
    format: "0",
    formula: ifNumber(
      "After_Multiplier",
      ifNumber("Net_Depth_mm", 'IF(N(After_MAR)>0,60*Net_Depth_mm*After_Multiplier/After_MAR,"needs MAR after")'),
    ),
  },
  "Saving",
  {
    unit: "choose",
    label: "Is the bed watered to its driest pot now?",
    name: "Waters_To_Driest",
    allowed: choice("yes", "no"),
    note: "Only then does evener water mean less of it; else plants that are dry now get more, and the gain is evenness.",
  },
  {
    label: "Water saved",
    name: "Saved_kL",
    unit: "kL a year",
    format: "#,##0.0",
    formula: saved(ifNumber("Result_Water_kL", ifNumber("Needed_After_kL", "Result_Water_kL-Needed_After_kL"))),
    note: "Needed now - needed after; both from the heads where the share is known. Cost says what it is worth.",
  },
];
