import { MEASURES } from "../../../core/figures/measures";
import { figureField } from "../../form/entry-field";
import type { Field } from "../../form/entry-lines";
import { depthOfMillilitre } from "../../form/millilitres";
import { nestedIfs } from "../../form/nested-ifs";
import { CANS_GRID } from "./grid";

const R = "Cans_Readings";
const NEEDS = '"needs readings"';
const { countsAcross, countsAlong } = CANS_GRID;

const ifCounted = (formula: string) =>
  `IF(Cans_Counted=0,${NEEDS},IF(Readings_Problem<>"","see the checks",${formula}))`;

const nearest = (counts: string, positions: string) => `SUMPRODUCT(MIN(${positions}+1E6*(${counts}="")))`;
const farthest = (counts: string, positions: string) => `SUMPRODUCT(MAX(${positions}*(${counts}<>"")))`;
const placed = (formula: string) =>
  `IF(Cans_Counted=0,"needs readings",IF(Positions_Problem<>"","needs positions",${formula}))`;
const spacing = (counts: string, positions: string) =>
  placed(
    `IF(COUNT(${counts})<2,"needs two cans",(${farthest(counts, positions)}-${nearest(counts, positions)})/(COUNT(${counts})-1))`,
  );
const rest = (counts: string, positions: string, side: string) =>
  placed(`IF(ISNUMBER(${side}),${side}-${farthest(counts, positions)},"needs the bed")`);

/** What the cans say before anything is compared. */
export const CAN_FIGURES: readonly (string | Field)[] = [
  "Figures",
  {
    ...figureField(MEASURES.CANS),
    name: "Cans_Counted",
    format: '0;-0;"needs readings"',
    formula: `COUNT(${R})`,
  },
  {
    label: MEASURES.DRY.name,
    unit: MEASURES.DRY.unit,
    name: "Cans_Dry",
    formula: `IF(Cans_Counted=0,${NEEDS},SUMPRODUCT(ISNUMBER(${R})*(${R}=0)))`,
  },
  {
    label: "Mean catch",
    unit: "mL",
    name: "Mean_Catch_mL",
    format: "0.0",
    formula: ifCounted(`IF(By_Area,Weighted_Reading,AVERAGE(${R}))`),
  },
  {
    label: "Mean depth",
    unit: "mm",
    name: "Mean_Depth_mm",
    format: "0.00",
    formula: nestedIfs(
      [
        ["NOT(ISNUMBER(Mean_Catch_mL))", "Mean_Catch_mL"],
        ["N(Can_Mouth_mm)<=0", '"needs the mouth"'],
      ],
      `Mean_Catch_mL*${depthOfMillilitre("Can_Mouth_mm")}`,
    ),
  },
  {
    label: "Mean rate",
    unit: "mm/h",
    name: "Mean_Rate_mmh",
    format: "0.00",
    formula: nestedIfs(
      [
        ["NOT(ISNUMBER(Mean_Depth_mm))", "Mean_Depth_mm"],
        ["N(Test_Minutes)<=0", '"needs the minutes"'],
      ],
      "Mean_Depth_mm*60/Test_Minutes",
    ),
  },
  {
    label: "Can spacing across",
    unit: "m",
    name: "Can_Spacing_m",
    format: "0.00",
    formula: spacing(countsAcross, "Cans_Across_m"),
  },
  {
    label: "Can spacing along",
    unit: "m",
    name: "Can_Row_Spacing_m",
    format: "0.00",
    formula: spacing(countsAlong, "Cans_Along_m"),
  },
  {
    label: "Left edge to cans",
    unit: "m",
    name: "Gap_Left_m",
    format: "0.00",
    formula: placed(nearest(countsAcross, "Cans_Across_m")),
  },
  {
    label: "Right edge to cans",
    unit: "m",
    name: "Gap_Right_m",
    format: "0.00",
    formula: rest(countsAcross, "Cans_Across_m", "Bed_Width_m"),
  },
  {
    label: "Top edge to cans",
    unit: "m",
    name: "Gap_Top_m",
    format: "0.00",
    formula: placed(nearest(countsAlong, "Cans_Along_m")),
  },
  {
    label: "Bottom edge to cans",
    unit: "m",
    name: "Gap_Bottom_m",
    format: "0.00",
    formula: rest(countsAlong, "Cans_Along_m", "Bed_Length_m"),
  },
];
