import { WATER } from "../../../core/figures/water";
import type { DataCheck } from "../../form/check-lines";
import { nestedIfs } from "../../form/nested-ifs";
import { withLeaching } from "../run-time/lines";

const NEEDS_SHARE = '"needs the share in the bed"';
/** True where a share above 0 and up to 1 was typed. */
export const isShare = (name: string) => `IF(ISNUMBER(${name}),AND(${name}>0,${name}<=1),FALSE)`;
/** A formula where a figure is a number, else the words that are in its place. */
export const ifNumber = (name: string, formula: string) => `IF(ISNUMBER(${name}),${formula},${name})`;
const NEEDS_RUNS = '"needs meter, or minutes and runs: see Block"';
const overShare = (name: string, share: string) =>
  ifNumber(name, `IF(${isShare(share)},${name}/${share},${NEEDS_SHARE})`);
/** By the cans: rate · minutes · runs · area · beds. */
const USED_ON_BED = "Used_MAR*Run_Minutes_Now/60*Runs_A_Year_Now*Block_Area_m2*Valve_Beds/1000";
const USED_ON_BED_KNOWN = "ISNUMBER(Used_MAR),ISNUMBER(Block_Area_m2),COUNT(Run_Minutes_Now,Runs_A_Year_Now)=2";
const yearOf = (multiplier: string) =>
  ifNumber(
    "Net_Depth_mm",
    ifNumber(
      multiplier,
      `IF(ISNUMBER(Block_Area_m2),IF(N(Water_Days)>0,Block_Area_m2*Valve_Beds*Net_Depth_mm*Water_Days*${multiplier}/1000,"needs watering days"),"needs the bed's size")`,
    ),
  );
/** The figure from the heads, or that on the bed where the share is not known. */
export const fromHeadsIfKnown = (heads: string, bed: string) => `IF(ISNUMBER(${heads}),${heads},${bed})`;
/** Asked before a saving is counted, here and in the pane. */
export const ENOUGH_NOW = "Do the pots that set the run time get enough now?";
/** A saving, which counts only where those pots get enough now. */
export const saved = (formula: string) =>
  `IF(Waters_To_Driest="yes",${formula},IF(Waters_To_Driest="no","none: the gain is evenness","answer the question above"))`;
/** A figure that is twice: on the bed, and from the heads where the share that lands in the bed is known. */
export interface Twofold {
  label: string;
  bed: string;
  heads: string;
  bedName: string;
  headsName: string;
  note: string;
}

/** The three figures of water a year. */
export const WATER_A_YEAR: readonly Twofold[] = [
  {
    label: "Used now",
    bedName: "Used_Now_Bed_kL",
    headsName: "Used_Now_Heads_kL",
    bed: `IF(AND(ISNUMBER(Used_Now_Heads_kL),${isShare("In_Bed_Share")}),Used_Now_Heads_kL*In_Bed_Share,IF(AND(${USED_ON_BED_KNOWN}),${USED_ON_BED},"needs minutes and runs: see Block"))`,
    heads: `IF(ISNUMBER(Metered_kL),Metered_kL,IF(AND(ISNUMBER(Bed_Flow_Lh),COUNT(Run_Minutes_Now,Runs_A_Year_Now)=2),Bed_Flow_Lh*Valve_Beds*Run_Minutes_Now/60*Runs_A_Year_Now/1000,IF(AND(${isShare("In_Bed_Share")},${USED_ON_BED_KNOWN}),${USED_ON_BED}/In_Bed_Share,${NEEDS_RUNS})))`,
    note: "Total applied: meter reading, or flow × minutes × runs × beds, or MAR × minutes × runs × area × beds / share landing on the bed. On the bed: total × that share (if unknown: by MAR).",
  },
  {
    label: WATER.NOW.name,
    bedName: "Needed_Now_Bed_kL",
    headsName: "Needed_Now_Heads_kL",
    bed: yearOf("Valve_Multiplier"),
    heads: overShare("Needed_Now_Bed_kL", "In_Bed_Share"),
    note: "Area · beds · net depth · days · multiplier of the valve's run, with leaching as on Run time.",
  },
  {
    label: "Needed after",
    bedName: "Needed_After_Bed_kL",
    headsName: "Needed_After_Heads_kL",
    bed: yearOf("Valve_Multiplier_After"),
    heads: overShare("Needed_After_Bed_kL", "After_Share_Used"),
    note: "As above, with the SC after the change; the change is made on all beds of the valve.",
  },
];

/** What is calculated on the way. */
export const worked: [label: string, name: string, formula: string, format: string][] = [
  [
    "Multiplier after, with leaching",
    "After_Multiplier",
    `IF(ISNUMBER(After_SC),IF(After_SC>=1,${withLeaching("After_SC")},"needs an SC of 1 or more"),"needs SC after")`,
    "0.000",
  ],
  [
    "Share in the bed after, as used",
    "After_Share_Used",
    `IF(${isShare("After_In_Bed_Share")},After_In_Bed_Share,IF(${isShare("In_Bed_Share")},In_Bed_Share,""))`,
    "0.00",
  ],
  [
    "Used now, for cost",
    "Used_Now_kL",
    `IF(${isShare("In_Bed_Share")},${fromHeadsIfKnown("Used_Now_Heads_kL", NEEDS_RUNS)},Used_Now_Bed_kL)`,
    "#,##0.0",
  ],
  [
    "Needed after the change, for cost",
    "Needed_After_kL",
    `IF(${isShare("In_Bed_Share")},Needed_After_Heads_kL,Needed_After_Bed_kL)`,
    "#,##0.0",
  ],
  [
    "Cost of the change, as used",
    "Capital_Used",
    'IF(ISNUMBER(After_Capital),After_Capital,IF(N(Actions_Cost)>0,Actions_Cost,""))',
    "#,##0.00",
  ],
];

/** Without the share in the bed even all that the heads gave may be too little. */
const USED = "IF(ISNUMBER(Used_Now_kL),Used_Now_kL,Used_Now_Heads_kL)";

/** Whether what is used now is enough for the pots that set the run time, 5 % being too near to tell. */
export const USED_AGAINST_NEEDED: DataCheck = {
  label: "Used now against needed",
  name: "Used_Against_Needed",
  formula: nestedIfs(
    [
      ['Waters_To_Driest<>"yes"', '""'],
      [`COUNT(${USED},Result_Water_kL)<2`, '"not checked: needs water used and water needed"'],
      [
        `${USED}<0.95*Result_Water_kL`,
        `"Used now, "&ROUND(${USED},1)&" kL, is less than needed, "&ROUND(Result_Water_kL,1)&" kL: not enough today for "&Basis_Words&", so this saving is against what would be needed, not against today's bill."`,
      ],
    ],
    '"ok"',
  ),
};
