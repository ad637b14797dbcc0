import { type Figure, numberFormat } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import { depthOfMillilitre } from "../../form/millilitres";
import type { CellSpec } from "../../form/sheet-spec";
import { twin } from "../../form/twins";
import { DRY, NEEDS_FOUR, QUARTER_DRY } from "../results/words";

const READINGS = "Cans_Readings";
const DEPTH_OF_1_ML = depthOfMillilitre("Can_Mouth_mm");

const unless = (lack: string, formula: string) => `IF(${lack}<>"",${lack},${formula})`;
const ofFour = (formula: string) => `IF(Cans_Counted<4,"${NEEDS_FOUR}",${formula})`;
const ofWet = (formula: string) => `IF(Cans_Dry>0,"${DRY}",${formula})`;
const whereNumber = (name: string, formula: string) => `IF(ISNUMBER(${name}),${formula},${name})`;
const inverse = (uniformity: string) =>
  whereNumber(uniformity, `IF(ROUND(${uniformity},7)>0,100/${uniformity},"${QUARTER_DRY}")`);

/** A measure on both bases. */
interface Bases {
  figure: Figure;
  /** The ending of its names: `Result_…` with equal weight, `Weighted_…` by area. */
  name: string;
  equal: string;
  byArea: string;
}

const share = twin("SC.SHARE", [READINGS, "Share_Wanted"])!;
const shareReached = `LARGE(${READINGS},MAX(1,ROUNDUP(Share_Wanted*Cans_Counted-1/10^9,0)))>0`;
const ofShare = (wet: string, formula: string) =>
  `IF(Share_Known,IF(${wet},${formula},"too many cans are dry"),"needs a share from 0.5 to 1")`;

const LINES: readonly Bases[] = [
  {
    figure: MEASURES.MAR,
    name: "MAR",
    equal: unless("Lack_Rate", `AVERAGE(${READINGS})*${DEPTH_OF_1_ML}*60/Test_Minutes`),
    byArea: unless("Lack_Rate", unless("Lack_Area", `Weighted_Reading*${DEPTH_OF_1_ML}*60/Test_Minutes`)),
  },
  {
    figure: MEASURES.CU,
    name: "CU",
    equal: unless("Lack_Readings", twin("CU.CHRISTIANSEN", [READINGS])!),
    byArea: unless("Lack_Area", "100*(1-Weighted_Distance/Weighted_Reading)"),
  },
  {
    figure: MEASURES.DU,
    name: "DU_Quarter",
    equal: unless("Lack_Readings", ofFour(twin("DU.QUARTER", [READINGS])!)),
    byArea: unless("Lack_Area", ofFour("100*Weighted_Low_Quarter/Weighted_Reading")),
  },
  {
    figure: MEASURES.SC_CAN,
    name: "SC_Can",
    equal: unless("Lack_Readings", ofWet(twin("SC.CAN", [READINGS])!)),
    byArea: unless("Lack_Area", ofWet(`Weighted_Reading/MIN(${READINGS})`)),
  },
  {
    figure: MEASURES.SC_QUARTER,
    name: "SC_Quarter",
    equal: inverse("Result_DU_Quarter"),
    byArea: inverse("Weighted_DU_Quarter"),
  },
  {
    figure: MEASURES.SC_SHARE,
    name: "SC_Share",
    equal: unless("Lack_Readings", ofShare(shareReached, share)),
    byArea: unless("Lack_Area", ofShare("N(Weighted_Share_Reading)>0", "Weighted_Reading/Weighted_Share_Reading")),
  },
];

/** How many rows they take, with their heading. */
export const BASE_ROWS = LINES.length + 1;

/** The measures with equal weight and by area, from a row on; Results shows the one that counts. */
export const baseCells = (top: number): CellSpec[] => [
  { at: `N${top}:Q${top}`, kind: "heading", value: "Measures on both bases" },
  { at: `R${top}`, kind: "heading", value: "unit" },
  { at: `S${top}:T${top}`, kind: "heading", value: "equal weight" },
  { at: `U${top}:V${top}`, kind: "heading", value: "by area" },
  ...LINES.flatMap(({ figure, name, equal, byArea }, index): CellSpec[] => {
    const row = top + 1 + index;
    const format = numberFormat(figure);
    return [
      { at: `N${row}:Q${row}`, kind: "label", value: figure.name },
      { at: `R${row}`, kind: "unit", value: figure.unit },
      { at: `S${row}:T${row}`, kind: "working", formula: equal, name: `Result_${name}`, format },
      { at: `U${row}:V${row}`, kind: "working", formula: byArea, name: `Weighted_${name}`, format },
    ];
  }),
];
