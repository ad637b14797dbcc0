import { MOST_ACROSS, MOST_ALONG } from "../../../core/pattern/can-field";
import type { CellSpec } from "../../form/sheet-spec";
import { PROBLEM_LINES } from "../cans/problems";
import { justEnoughAfter } from "./drains";
import { column, FIRST_ACROSS, FIRST_ALONG, TOTALS } from "./places";

/** Σ area · (t - reading) over the cans under t. */
const missing = (t: string) =>
  `(${t}*SUMIF(${column("F")},"<"&${t},${column("I")})-SUMIF(${column("F")},"<"&${t},${column("J")}))`;
const everyReading = `SMALL(${column("F")},ROW($A$1:INDEX($A:$A,Cans_Counted)))`;

const timesFactor = (name: string, factor: string) =>
  `IF(ISNUMBER(${name}),IF(ISNUMBER(${factor}),${name}*${factor},${factor}),${name})`;

/** Spread after a change over that of now; where it would take the driest can below 0 there is no shape to keep. */
const SPREAD = "(1-1/After_SC)/(1-1/Run_Multiplier)";

const LINES: [label: string, name: string, formula: string, format?: string][] = [
  ...PROBLEM_LINES,
  ["Minutes of the test are known", "Minutes_Known", "IF(ISNUMBER(Test_Minutes),Test_Minutes>0,FALSE)"],
  ["Mouth of the cans is known", "Mouth_Known", "IF(ISNUMBER(Can_Mouth_mm),Can_Mouth_mm>0,FALSE)"],
  [
    "Share of the pots is known",
    "Share_Known",
    'IF(ISNUMBER(Share_Wanted),AND(COUNTIF(Share_Wanted,">=0.5")=1,COUNTIF(Share_Wanted,"<=1")=1),FALSE)',
  ],
  [
    "Places of the cans and sides of the bed are known",
    "Positions_Known",
    'AND(Positions_Problem="",ISNUMBER(Bed_Width_m),ISNUMBER(Bed_Length_m))',
  ],
  ["Area of all cans together [m²]", "Weighed_Area_m2", `IF(Positions_Known,SUM(${column("I")}),0)`, "0.0"],
  [
    "Area-weighted mean reading [mL]",
    "Weighted_Reading",
    `IF(Weighed_Area_m2>0,SUM(${column("J")})/Weighed_Area_m2,"")`,
    "0.00",
  ],
  [
    "Mean distance from it, by area [mL]",
    "Weighted_Distance",
    `IF(Weighed_Area_m2>0,2*${missing("Weighted_Reading")}/Weighed_Area_m2,"")`,
    "0.00",
  ],
  [
    "Mean reading of the driest quarter of the ground [mL]",
    "Weighted_Low_Quarter",
    `IF(AND(Weighed_Area_m2>0,Cans_Counted>0),SUMPRODUCT(MAX(${everyReading}-4*${missing(everyReading)}/Weighed_Area_m2)),"")`,
    "0.00",
  ],
  [
    "Largest reading that cans of the share of the area reach [mL]",
    "Weighted_Share_Reading",
    `IF(AND(Weighed_Area_m2>0,Cans_Counted>0,Share_Known),LARGE(${column("F")},1+SUMPRODUCT(1*(SUMIF(${column("F")},">="&${everyReading}*(1-1/10^14),${column("I")})<Weighed_Area_m2*(Share_Wanted-1/10^9/Cans_Counted)))),"")`,
    "0.0",
  ],
  ["Figures are by area", "By_Area", "Weighed_Area_m2>0"],
  [
    "Mean reading that the figures rest on [mL]",
    "Used_Reading",
    'IF(Lack_Readings<>"","",IF(By_Area,Weighted_Reading,AVERAGE(Cans_Readings)))',
    "0.00",
  ],
  ["Beds whose water is counted", "Valve_Beds", "MAX(1,N(Beds_On_Valve))"],
  [
    "The same in words",
    "Valve_Words",
    'IF(Valve_Beds>1,"all "&Valve_Beds&" beds on the valve, taken as alike","this bed")',
  ],
  [
    "Valve run / this bed's run, at least 1",
    "Valve_Factor",
    "IF(N(Other_Beds_Run_min)>0,IF(ISNUMBER(Result_Run_Time_min),MAX(1,Other_Beds_Run_min/Result_Run_Time_min),Result_Run_Time_min),1)",
    "0.000",
  ],
  [
    "The same after the change",
    "Valve_Factor_After",
    "IF(IF(ISNUMBER(Other_Beds_Run_After_min),Other_Beds_Run_After_min,N(Other_Beds_Run_min))>0,IF(ISNUMBER(Run_Time_After_min),MAX(1,IF(ISNUMBER(Other_Beds_Run_After_min),Other_Beds_Run_After_min,Other_Beds_Run_min)/Run_Time_After_min),Run_Time_After_min),1)",
    "0.000",
  ],
  [
    "Pots that set the run time, in words",
    "Basis_Words",
    'IF(Multiplier_Basis="low quarter","the driest quarter of the bed",IF(Multiplier_Basis="share of pots",IF(Share_Known,ROUND(100*Share_Wanted,0)&" %","a share")&" of the pots","the driest pot"))',
  ],
  ["Run-time multiplier of the valve", "Valve_Multiplier", timesFactor("Gross_Multiplier", "Valve_Factor"), "0.000"],
  [
    "The same after the change",
    "Valve_Multiplier_After",
    timesFactor("After_Multiplier", "Valve_Factor_After"),
    "0.000",
  ],
  ["Depth at the valve's run [mm]", "Valve_Depth_mm", timesFactor("Gross_Depth_mm", "Valve_Factor"), "0.00"],
  [
    "Reading that gets just the depth wanted [mL]",
    "Just_Enough_mL",
    'IF(AND(ISNUMBER(Used_Reading),ISNUMBER(Valve_Multiplier)),Used_Reading/Valve_Multiplier,"")',
    "0.00",
  ],
  [
    "Spread after the change over that of now",
    "Spread_After",
    `IF(COUNT(Run_Multiplier,After_SC,Valve_Multiplier_After)=3,IF(Run_Multiplier>1,IF(${SPREAD}*(1-MIN(Work_Reading)/Used_Reading)>1,0,${SPREAD}),0),"")`,
    "0.000",
  ],
  [
    "Reading now of a can that gets just enough after [mL]",
    "Just_Enough_After_mL",
    justEnoughAfter("Valve_Multiplier_After"),
    "0.00",
  ],
  [
    "Columns that hold readings",
    "Grid_Columns",
    `COUNTIF($U$${FIRST_ACROSS}:$U$${FIRST_ACROSS + MOST_ACROSS - 1},">0")`,
  ],
  ["Rows that hold readings", "Grid_Rows", `COUNTIF($U$${FIRST_ALONG}:$U$${FIRST_ALONG + MOST_ALONG - 1},">0")`],
  [
    "What uniformity still needs",
    "Lack_Readings",
    'IF(Readings_Problem<>"","fix the readings: see Cans",IF(Cans_Counted=0,"needs readings",IF(Cans_Counted<2,"needs 2 cans",IF(SUM(Work_Reading)>0,"","every can is dry"))))',
  ],
  [
    "What rates still need",
    "Lack_Rate",
    'IF(Lack_Readings<>"",Lack_Readings,IF(AND(Minutes_Known,Mouth_Known),"","needs minutes and mouth: see Cans"))',
  ],
  [
    "What figures by area still need",
    "Lack_Area",
    'IF(Lack_Readings<>"",Lack_Readings,IF(Weighed_Area_m2>0,"","needs places of cans and bed size"))',
  ],
];

/** The first row below them. */
export const AFTER_TOTALS = TOTALS + LINES.length;

/** What follows from all cans, one a row. */
export const totalCells = (): CellSpec[] =>
  LINES.flatMap(([label, name, formula, format], index): CellSpec[] => [
    { at: `N${TOTALS + index}:S${TOTALS + index}`, kind: "label", value: label },
    {
      at: `T${TOTALS + index}:U${TOTALS + index}`,
      kind: /^Lack_|_Problem$|_Words$/.test(name) ? "note" : "working",
      name,
      formula,
      ...(format && { format }),
    },
  ]);
