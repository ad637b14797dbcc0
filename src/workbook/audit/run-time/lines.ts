import { MEASURES } from "../../../core/figures/measures";
import { RUN_TIME } from "../../../core/figures/run-time";
import { choice, number } from "../../form/allowed";
import { entryField, figureField } from "../../form/entry-field";
import type { Field } from "../../form/entry-lines";
import { nestedIfs } from "../../form/nested-ifs";
import { DRAINED_NOW } from "../working/drains";
import { POT_AREA } from "./pot-area";

const FROM_POTS = `1000*Pot_Use_mL/(${POT_AREA})/IF(ISNUMBER(Capture_Factor),Capture_Factor,1)`;
const CHOSEN =
  'IF(Multiplier_Basis="low quarter",Used_SC_Quarter,IF(Multiplier_Basis="share of pots",Used_SC_Share,IF(Multiplier_Basis="driest can",Used_SC_Can,"choose what the run time is based on")))';
const THROUGH = "1/(1-IF(ISNUMBER(Leaching_Fraction),Leaching_Fraction,0))";

/** Multiplier of unevenness and leaching by the rule that was chosen. */
export const withLeaching = (multiplier: string): string =>
  `IF(Leaching_Rule="both",${multiplier}*${THROUGH},IF(Leaching_Rule="larger",MAX(${multiplier},${THROUGH}),${multiplier}))`;

/** Under 0.15 (UF/IFAS EP529), but not for water that may be salty; salty from 0.7 dS/m: FAO-29 (1985), table 1. */
const LEACHING_ADVISED = nestedIfs(
  [
    [
      'AND(OR(Water_Source="recycled",Water_Source="bore"),NOT(ISNUMBER(Water_EC_dSm)))',
      '"Water that is "&IF(Water_Source="bore","from a bore","recycled")&" may be salty: measure its EC, type it on Block."',
    ],
    [
      "N(Water_EC_dSm)>=0.7",
      '"Salty water, 0.7 dS/m or more (FAO-29): as much as keeps the EC of what drains in bounds; ask an adviser."',
    ],
  ],
  '"Under 0.15 (Florida, UF/IFAS EP529), where the water is not salty."',
);

const STEP = "IF(ISNUMBER(Valve_Step_min),Valve_Step_min,1)";
const PULSES = "IF(ISNUMBER(Pulse_Count),Pulse_Count,1)";
const EACH = `${STEP}*ROUNDUP(Valve_Run_min/${PULSES}/${STEP}-1/10^9,0)`;
/** Whole steps of the controller, each pulse rounded up. */
const SET_AT = `IF(ISNUMBER(Valve_Run_min),ROUND(${PULSES}*${EACH},2)&" min"&IF(${PULSES}>1," ("&${PULSES}&" × "&ROUND(${EACH},2)&")",""),"needs a run time")`;

/** How many beds of the valve have no test, and their names. */
const UNTESTED =
  'IF(N(Beds_On_Valve)>N(Beds_Tested),Beds_On_Valve-N(Beds_Tested)&" of "&Beds_On_Valve&" beds on the valve"&IF(Beds_On_Valve-N(Beds_Tested)=1," has"," have")&" no test"&IF(Beds_Not_Tested="",""," ("&Beds_Not_Tested&")")&": whether the run is long enough there is not known.","")';

/** What is asked and answered about the run time. */
export const RUN_TIME_LINES: readonly (string | Field)[] = [
  "Depth wanted",
  entryField("Pot_Use_mL", {
    note: "Weigh five to ten pots, water them, weigh again after a day without water: grams lost are mL.",
  }),
  entryField("Capture_Factor", {
    note: "Water that reaches the mix with the plant there / without it, measured 1 to 4. Blank: 1.",
  }),
  {
    label: "Depth that replaces it",
    name: "Pot_Depth_mm",
    unit: "mm a day",
    format: "0.0",
    formula: nestedIfs(
      [
        ["COUNT(Pot_Use_mL,Pot_Top_mm)=0", '"needs water use and pot top"'],
        ["NOT(ISNUMBER(Pot_Use_mL))", '"needs water use"'],
        ["NOT(ISNUMBER(Pot_Top_mm))", '"needs pot top"'],
        ["MIN(Pot_Use_mL,Pot_Top_mm)<=0", '"needs use and pot top above 0"'],
      ],
      FROM_POTS,
    ),
    note: "1000 · mL / area of the pot's top / capture factor; shape and top of the pot are on Block.",
  },
  entryField("Depth_Typed_mm", {
    note: "From weather or experience. If filled in, it replaces the depth calculated above; not used where Pots has groups.",
  }),
  {
    ...figureField(RUN_TIME.NET_DEPTH),
    name: "Net_Depth_mm",
    formula:
      'IF(Groups_In_Use>0,Groups_Depth_mm,IF(ISNUMBER(Depth_Typed_mm),IF(Depth_Typed_mm>0,Depth_Typed_mm,"needs a depth above 0"),Pot_Depth_mm))',
    note: "What each pot should get on a watering day; of the neediest pots where groups are filled in on Pots.",
  },
  "Allowance for uneven watering and leaching",
  {
    unit: "choose",
    label: "What sets the run time",
    name: "Multiplier_Basis",
    allowed: choice("driest can", "low quarter", "share of pots"),
    value: "driest can",
    note: "driest can, low quarter or share of pots (the share is typed on Results)",
  },
  {
    ...figureField(RUN_TIME.MULTIPLIER),
    name: "Run_Multiplier",
    formula: `IF(Lack_Readings<>"",Lack_Readings,${CHOSEN})`,
    note: "From Results: mean / what the pots that set the run time get.",
  },
  entryField("Leaching_Fraction", {
    note: "Share of the water that should drain from the pot to rinse salts. Blank: 0. See the next line.",
  }),
  {
    label: "Leaching that is advised",
    name: "Leaching_Advised",
    unit: "words",
    wide: true,
    formula: LEACHING_ADVISED,
  },
  {
    unit: "choose",
    label: "Allowance for leaching",
    name: "Leaching_Rule",
    allowed: choice("none", "larger", "both"),
    value: "none",
    note: "none; larger: the greater of multiplier and 1 / (1 - fraction); both: one times the other",
  },
  {
    ...figureField(RUN_TIME.GROSS_MULTIPLIER),
    name: "Gross_Multiplier",
    formula: `IF(ISNUMBER(Run_Multiplier),${withLeaching("Run_Multiplier")},Run_Multiplier)`,
    note: "Watering to the driest pot already drains the others: take leaching tests at the driest can.",
  },
  {
    unit: "share",
    label: "Of the water that reaches pots, drains",
    name: "Mean_Drained_Share",
    format: "0 %",
    formula: `IF(ISNUMBER(Valve_Multiplier),IF(Groups_In_Use>0,Groups_Drained,${DRAINED_NOW}),Valve_Multiplier)`,
    note: "Summed over the cans, by area where Results are: what each gets above the depth wanted / all that they get. To the driest can it is 1 - 1 / multiplier.",
  },
  {
    unit: "share",
    label: "Share of the bed's water that falls between pots",
    format: "0 %",
    formula: "Between_Pots_Share",
    note: "From Pots: 1 - capture factor · area of the pot's top / spacing².",
  },
  {
    unit: "share",
    label: "Of the bed's water, drains from pots",
    format: "0 %",
    formula: "Pots_Drained_Share",
    note: "From Pots: what reaches the pots, times the share of it that drains.",
  },
  "Run time",
  {
    ...figureField(MEASURES.MAR),
    formula: "Used_MAR",
    note: "From Results.",
  },
  {
    ...figureField(RUN_TIME.GROSS_DEPTH),
    name: "Gross_Depth_mm",
    formula:
      "IF(ISNUMBER(Net_Depth_mm),IF(ISNUMBER(Gross_Multiplier),Net_Depth_mm*Gross_Multiplier,Gross_Multiplier),Net_Depth_mm)",
    note: "Net depth · multiplier with leaching, mean over the bed.",
  },
  {
    ...figureField(RUN_TIME.TIME),
    name: "Result_Run_Time_min",
    formula: "IF(ISNUMBER(Gross_Depth_mm),IF(ISNUMBER(Used_MAR),60*Gross_Depth_mm/Used_MAR,Used_MAR),Gross_Depth_mm)",
    note: "60 · depth to apply / mean application rate.",
  },
  {
    label: `${RUN_TIME.TIME.name} now`,
    unit: "min a run",
    format: "0",
    formula: 'IF(ISNUMBER(Run_Minutes_Now),Run_Minutes_Now,"not on Block")',
    note: "From Block.",
  },
  {
    label: "Longest run of other beds",
    name: "Other_Beds_Run_min",
    unit: "min",
    allowed: number(0.1, 1440, "min"),
    note: "Of the other tested beds on this valve, each from its own workbook.",
  },
  {
    label: `${RUN_TIME.TIME.name} of the valve`,
    name: "Valve_Run_min",
    unit: "min",
    format: "0",
    formula: "IF(ISNUMBER(Result_Run_Time_min),Result_Run_Time_min*Valve_Factor,Result_Run_Time_min)",
    note: "The longest run of the tested beds, for all beds on the valve. Pulses, water and costs are of this run.",
  },
  {
    label: "Beds without a test",
    name: "Valve_Untested",
    unit: "words",
    wide: true,
    formula: UNTESTED,
  },
  "Pulses",
  entryField("Take_Up_mm", {
    note: "Before water runs out below; watch a pot. Three pulses for one cut drainage by a third (Fare and others 1994).",
  }),
  entryField("Rest_min", {
    note: "20 to 60 min is usual (from memory, no source). Blank: 0.",
  }),
  {
    label: "Step of the controller",
    name: "Valve_Step_min",
    unit: "min",
    allowed: number(0.01, 60, "min"),
    note: "The smallest step that can be set. Blank: 1. Each pulse is rounded up, so that no pot gets less.",
  },
  {
    ...figureField(RUN_TIME.PULSES),
    name: "Pulse_Count",
    formula:
      'IF(ISNUMBER(Result_Run_Time_min),IF(ISNUMBER(Take_Up_mm),IF(Take_Up_mm>0,IF(Valve_Depth_mm/Take_Up_mm>1000,"over 1000: too shallow a depth",MAX(1,ROUNDUP(Valve_Depth_mm/Take_Up_mm-1/10^9,0))),"needs a depth above 0"),"needs the depth per pulse"),"needs a run time")',
    note: "Depth at the valve's run / depth per pulse, rounded up.",
  },
  {
    label: "Length of each",
    name: "Pulse_min",
    unit: "min",
    format: "0.0",
    formula: "IF(ISNUMBER(Pulse_Count),Valve_Run_min/Pulse_Count,Pulse_Count)",
  },
  {
    label: "Set at the controller",
    unit: "words",
    wide: true,
    formula: SET_AT,
  },
  {
    label: "From start to end",
    name: "Pulses_Elapsed_min",
    unit: "min",
    format: "0",
    formula: "IF(ISNUMBER(Pulse_Count),Valve_Run_min+(Pulse_Count-1)*IF(ISNUMBER(Rest_min),Rest_min,0),Pulse_Count)",
  },
  "Water a day",
  {
    label: "Water falling on the beds",
    name: "Bed_Litres_A_Day",
    unit: "L a day",
    format: "#,##0",
    formula:
      'IF(ISNUMBER(Valve_Depth_mm),IF(ISNUMBER(Block_Area_m2),Valve_Depth_mm*Block_Area_m2*Valve_Beds,"needs the bed\'s size"),Valve_Depth_mm)',
    note: "Depth at the valve's run · area · beds on the valve; 1 mm on 1 m² is 1 L.",
  },
  {
    label: "Water from the heads",
    name: "Head_Litres_A_Day",
    unit: "L a day",
    format: "#,##0",
    formula:
      'IF(ISNUMBER(Bed_Litres_A_Day),IF(ISNUMBER(In_Bed_Share),Bed_Litres_A_Day/In_Bed_Share,"needs the share in the bed"),Bed_Litres_A_Day)',
    note: "Divided by the share of the heads' water that lands on the bed (Water and cost).",
  },
];
