import { number } from "../../form/allowed";
import type { Field } from "../../form/entry-lines";

const NEEDS_PRESSURES = '"needs pressures"';
const NEEDS_FLOWS = '"needs bucket flows"';

const range = (area: string) => `100*(MAX(${area})-MIN(${area}))/AVERAGE(${area})`;
const spread = (area: string) => `100*STDEV(${area})/AVERAGE(${area})`;
const ifTwo = (area: string, formula: string, otherwise: string) =>
  `IF(COUNT(${area})<2,${otherwise},IF(AVERAGE(${area})>0,${formula},"the mean is 0"))`;

/** What follows from the gauge and the bucket. */
export const HEAD_FIGURES: readonly (string | Field)[] = [
  "Pressure and flow in the block",
  {
    label: "Mean pressure",
    unit: "kPa",
    name: "Pressure_Mean_kPa",
    format: "0.0",
    formula: `IF(COUNT(Pressure_kPa)=0,${NEEDS_PRESSURES},AVERAGE(Pressure_kPa))`,
  },
  {
    label: "Range of pressure",
    unit: "%",
    name: "Pressure_Range_Percent",
    format: "0.0",
    formula: ifTwo("Pressure_kPa", range("Pressure_kPa"), NEEDS_PRESSURES),
    note: "(highest − lowest) / mean, over the places.",
  },
  {
    label: "Spread of pressure",
    unit: "%",
    format: "0.0",
    formula: ifTwo("Pressure_kPa", spread("Pressure_kPa"), NEEDS_PRESSURES),
    note: "Standard deviation / mean.",
  },
  {
    label: "Mean flow of a head",
    unit: "L/h",
    name: "Flow_Mean_Lh",
    format: "0.0",
    formula: `IF(COUNT(Flow_Lh)=0,${NEEDS_FLOWS},AVERAGE(Flow_Lh))`,
  },
  {
    label: "Range of flow",
    unit: "%",
    name: "Flow_Range_Percent",
    format: "0.0",
    formula: ifTwo("Flow_Lh", range("Flow_Lh"), NEEDS_FLOWS),
    note: "(highest − lowest) / mean, over the places.",
  },
  {
    label: "Spread of flow",
    unit: "%",
    format: "0.0",
    formula: ifTwo("Flow_Lh", spread("Flow_Lh"), NEEDS_FLOWS),
    note: "Standard deviation / mean.",
  },
  {
    label: "Maker's flow",
    unit: "L/h",
    name: "Maker_Flow_Lh",
    allowed: number(0.1, 20000, "L/h"),
    note: "From the maker's sheet, for this head and nozzle.",
  },
  {
    label: "at the pressure",
    unit: "kPa",
    name: "Maker_Pressure_kPa",
    allowed: number(1, 2000, "kPa"),
    note: "The pressure that the maker gives for that flow.",
  },
  {
    label: "Flow to expect",
    unit: "L/h",
    name: "Flow_Expected_Lh",
    format: "0.0",
    formula:
      'IF(COUNT(Maker_Flow_Lh,Maker_Pressure_kPa,Pressure_Mean_kPa)=3,IF(MIN(Maker_Flow_Lh,Maker_Pressure_kPa,Pressure_Mean_kPa)<=0,"needs pressures above 0",Maker_Flow_Lh*SQRT(Pressure_Mean_kPa/Maker_Pressure_kPa)),"needs the maker\'s figures")',
    note: "At the pressure measured: the flow of a plain nozzle goes with the square root of pressure.",
  },
  {
    label: "Flow of the bed",
    unit: "L/h",
    name: "Bed_Flow_Lh",
    format: "#,##0",
    formula: 'IF(COUNT(Flow_Mean_Lh,Head_Count)=2,Flow_Mean_Lh*Head_Count,"")',
    note: "Mean flow × heads of this bed (Block).",
  },
];
/** What the meter counted, and how much of it the cans caught. */
export const METER_LINES: readonly (string | Field)[] = [
  "Meter and balance of volumes",
  { label: "Meter at the start", unit: "kL", name: "Meter_Start_kL", format: "0.000", allowed: number(0, 1e9, "kL") },
  { label: "Meter at the stop", unit: "kL", name: "Meter_Stop_kL", format: "0.000", allowed: number(0, 1e9, "kL") },
  {
    label: "Metered for this bed",
    unit: "L",
    name: "Metered_Test_L",
    format: "#,##0",
    formula: 'IF(COUNT(Meter_Start_kL,Meter_Stop_kL)=2,1000*(Meter_Stop_kL-Meter_Start_kL)/MAX(1,Beds_On_Valve),"")',
    note: "Between the two, over the beds on the valve, all taken as alike.",
  },
  {
    label: "Caught on the bed",
    unit: "L",
    name: "Caught_Test_L",
    format: "#,##0",
    formula: 'IF(COUNT(Used_MAR,Test_Minutes,Block_Area_m2)=3,Used_MAR*Test_Minutes/60*Block_Area_m2,"")',
    note: "Mean rate (Results) × minutes × area: 1 mm on 1 m² is 1 L.",
  },
  {
    label: "Caught / metered",
    unit: "share",
    name: "Caught_Metered_Share",
    format: "0.00",
    formula: 'IF(COUNT(Metered_Test_L,Caught_Test_L)=2,IF(Metered_Test_L>0,Caught_Test_L/Metered_Test_L,""),"")',
    note: "The rest fell beside the bed, drifted or leaked.",
  },
];
