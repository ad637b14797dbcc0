import { nestedIfs } from "../../form/nested-ifs";
import { POT_AREA } from "../run-time/pot-area";
import { column, GROUPS, nameOf, rowOf } from "./places";

export const FACTOR = "IF(ISNUMBER(Capture_Factor),Capture_Factor,1)";

const AREA_SUM = `SUM(${column("G")})`;
const near = (sum: string) => `ABS(${AREA_SUM}-${sum})<=0.01*${sum}`;
const wide = (top: string, spacing: string) => `IF(COUNT(${top},${spacing})=2,${top}>${spacing},FALSE)`;
const WIDE = "are wider than their spacing: check top and spacing";
const TOO_MUCH = "would catch more than all the water: check capture factor";
const eachGroup = (problem: (row: number) => string, words: string) =>
  GROUPS.map((group): [string, string] => [problem(rowOf(group)), `"Pots of "&${nameOf(group)}&" ${words} (Pots)."`]);
/** A pot wider than its spacing, or one that would catch more than falls, or areas that fill no bed; "" for none. */
export const POTS_PROBLEM = nestedIfs(
  [
    [
      "Groups_In_Use=0",
      nestedIfs(
        [
          [wide("Pot_Top_mm", "Pot_Spacing_mm"), `"The pots ${WIDE} (Block)."`],
          [
            `IF(COUNT(Pot_Top_mm,Pot_Spacing_mm)=2,IF(Pot_Spacing_mm>0,${FACTOR}*${POT_AREA}>1.0001*Pot_Spacing_mm^2,FALSE),FALSE)`,
            `"The pots ${TOO_MUCH} (Run time), top and spacing (Block)."`,
          ],
        ],
        '""',
      ),
    ],
    ...eachGroup((row) => wide(`B${row}`, `C${row}`), WIDE),
    ...eachGroup(
      (row) => `IF(AND(ISNUMBER(O${row}),N(C${row})>0),IF(ISNUMBER(E${row}),E${row},1)*O${row}>1.0001*C${row}^2,FALSE)`,
      `${TOO_MUCH}, top and spacing`,
    ),
    [
      `IF(AND(Groups_Areas_Known,ISNUMBER(Block_Area_m2)),NOT(OR(${["1", "100", "Block_Area_m2", "Block_Area_m2*Valve_Beds"].map(near).join(",")})),FALSE)`,
      `"The areas of the pot groups add up to "&ROUND(${AREA_SUM},2)&", not to 1, 100 % or the bed's "&ROUND(Block_Area_m2,1)&" m²: each is taken for its part of that sum (Pots)."`,
    ],
    ["ISNUMBER(Depth_Typed_mm)", '"The depth typed on Run time is not used: pot groups are filled in on Pots."'],
  ],
  '""',
);
