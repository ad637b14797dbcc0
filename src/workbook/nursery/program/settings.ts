import { count, number } from "../../form/allowed";
import { type Field, formLines } from "../../form/entry-lines";
import { SETTINGS_FROM } from "./places";

const SETTINGS: readonly (string | Field)[] = [
  "Month, pump and water",
  { label: "Month", name: "Program_Month", unit: "1 to 12", allowed: count(1, 12) },
  {
    label: "Flow of the pump",
    name: "Pump_Flow_Lmin",
    unit: "L/min",
    allowed: number(0.01, 1e6, "L/min"),
    note: "At the pressure of the heads: curve or test.",
  },
  {
    label: "Change-over",
    name: "Change_Over_s",
    unit: "s",
    allowed: number(0, 3600, "s"),
    note: "Between two valves; blank: 0.",
  },
  {
    label: "Controller's step",
    name: "Controller_Step_min",
    unit: "min",
    allowed: number(1 / 60, 5, "min"),
    note: "Run times are rounded up to it; blank: 1.",
  },
  {
    label: "Daily limit",
    name: "Day_Limit_kL",
    unit: "kL",
    allowed: number(0.001, 1e6, "kL"),
    note: "Of the licence or the meter; blank: none.",
  },
  {
    label: "Tank",
    name: "Tank_kL",
    unit: "kL",
    allowed: number(0.001, 1e6, "kL"),
    note: "Full at the first start; blank: no tank limits.",
  },
  {
    label: "Its refill",
    name: "Tank_Refill_Lmin",
    unit: "L/min",
    allowed: number(0, 1e6, "L/min"),
    note: "Comes in all the time; blank: 0.",
  },
];

/** The form of the month, the pump, the controller and the water there is. */
export const SETTING_PART = formLines(
  SETTINGS_FROM,
  { label: "A:B", entry: "C", unit: "D", note: "E:I", noteLine: 48 },
  SETTINGS,
);
