/** A worksheet function that repeats a figure of the Demand sheets, on their own cells. */
export interface LiveFormula {
  label: string;
  text: (month: number, group: number) => string;
}

const weather = (month: number, columns: readonly number[]) =>
  columns.map((column) => `INDEX(Weather_Typed,${month},${column})`).join(",");
/** FAO-56, annex table 2.5. */
const middleOf = (month: number) => Math.trunc((304 * month) / 10 - 15);

/** Months and groups count from 1. */
export const LIVE_FORMULAS: readonly LiveFormula[] = [
  {
    label: "POT.DEPTH, of a round pot",
    text: (month, group) =>
      `=CANFALL.POT.DEPTH(INDEX(Demand_Use_mL,${month},${group}),INDEX(Demand_Tops_mm,1,${group}),IF(INDEX(Demand_Captures,1,${group})="",1,INDEX(Demand_Captures,1,${group})))`,
  },
  {
    label: "ETO.HARGREAVES, from temperatures",
    text: (month) => `=CANFALL.ETO.HARGREAVES(${weather(month, [1, 2])},Latitude_deg,${middleOf(month)})`,
  },
  {
    label: "ETO.PENMAN, from full weather",
    text: (month) =>
      `=CANFALL.ETO.PENMAN(${weather(month, [1, 2, 3, 4, 5, 6])},Latitude_deg,Elevation_m,${middleOf(month)},INDEX(Weather_Soil_Heat,1,${month}))`,
  },
];
