import { MEASURES } from "../../../core/figures/measures";
import { figureField } from "../../form/entry-field";
import { depthOfMillilitre } from "../../form/millilitres";
import type { CellSpec } from "../../form/sheet-spec";
import { twin } from "../../form/twins";
import { DRY, NEEDS_FOUR, QUARTER_DRY } from "./words";

const READINGS = "Cans_Readings";
const DEPTH_OF_1_ML = depthOfMillilitre("Can_Mouth_mm");

const unless = (lack: string, formula: string) => `IF(${lack}<>"",${lack},${formula})`;
const ofFour = (formula: string) => `IF(Cans_Counted<4,"${NEEDS_FOUR}",${formula})`;
const ofWet = (formula: string) => `IF(Cans_Dry>0,"${DRY}",${formula})`;
const whereNumber = (name: string, formula: string) => `IF(ISNUMBER(${name}),${formula},${name})`;
const inverse = (uniformity: string) =>
  whereNumber(uniformity, `IF(ROUND(${uniformity},7)>0,100/${uniformity},"${QUARTER_DRY}")`);

interface BothWays {
  label: string;
  unit: string;
  format: string;
  plain: string;
  plainName: string;
  weighted?: string;
  weightedName?: string;
}

const share = twin("SC.SHARE", [READINGS, "Share_Wanted"])!;
const shareReached = `LARGE(${READINGS},MAX(1,ROUNDUP(Share_Wanted*Cans_Counted-1/10^9,0)))>0`;
const BOTH_WAYS: readonly BothWays[] = [
  {
    ...figureField(MEASURES.MAR),
    plain: unless("Lack_Rate", `AVERAGE(${READINGS})*${DEPTH_OF_1_ML}*60/Test_Minutes`),
    plainName: "Result_MAR",
    weighted: unless("Lack_Rate", unless("Lack_Area", `Weighted_Reading*${DEPTH_OF_1_ML}*60/Test_Minutes`)),
    weightedName: "Weighted_MAR",
  },
  {
    ...figureField(MEASURES.CU),
    plain: unless("Lack_Readings", twin("CU.CHRISTIANSEN", [READINGS])!),
    plainName: "Result_CU",
    weighted: unless("Lack_Area", "100*(1-Weighted_Distance/Weighted_Reading)"),
    weightedName: "Weighted_CU",
  },
  {
    ...figureField(MEASURES.DU),
    plain: unless("Lack_Readings", ofFour(twin("DU.QUARTER", [READINGS])!)),
    plainName: "Result_DU_Quarter",
    weighted: unless("Lack_Area", ofFour("100*Weighted_Low_Quarter/Weighted_Reading")),
    weightedName: "Weighted_DU_Quarter",
  },
  {
    ...figureField(MEASURES.SC_CAN),
    plain: unless("Lack_Readings", ofWet(twin("SC.CAN", [READINGS])!)),
    plainName: "Result_SC_Can",
    weighted: unless("Lack_Area", ofWet(`Weighted_Reading/MIN(${READINGS})`)),
    weightedName: "Weighted_SC_Can",
  },
  {
    ...figureField(MEASURES.SC_QUARTER),
    plain: inverse("Result_DU_Quarter"),
    plainName: "Result_SC_Quarter",
    weighted: inverse("Weighted_DU_Quarter"),
    weightedName: "Weighted_SC_Quarter",
  },
  {
    ...figureField(MEASURES.SC_SHARE),
    plain: unless(
      "Lack_Readings",
      `IF(AND(ISNUMBER(Share_Wanted),COUNTIF(Share_Wanted,">=0.5")=1,COUNTIF(Share_Wanted,"<=1")=1),IF(${shareReached},${share},"too many cans are dry"),"needs a share from 0.5 to 1")`,
    ),
    plainName: "Result_SC_Share",
  },
];

function bothLines(way: BothWays, row: number): CellSpec[] {
  const { format } = way;
  return [
    { at: `A${row}`, kind: "label", value: way.label },
    { at: `B${row}`, kind: "answer", formula: way.plain, name: way.plainName, format },
    { at: `C${row}`, kind: "unit", value: way.unit },
    ...(way.weighted && way.weightedName
      ? [{ at: `D${row}:E${row}`, kind: "answer", formula: way.weighted, name: way.weightedName, format } as const]
      : []),
  ];
}

/** How many rows they take. */
export const BOTH_ROWS = BOTH_WAYS.length;

/** The measures with each can alike and by the area it stands for, from a row on. */
export const bothCells = (top: number): CellSpec[] => BOTH_WAYS.flatMap((way, index) => bothLines(way, top + index));
