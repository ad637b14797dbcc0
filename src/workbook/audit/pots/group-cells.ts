import { nestedIfs } from "../../form/nested-ifs";
import type { CellSpec } from "../../form/sheet-spec";
import { drainedAbove, drainedAfterAt, justEnoughAfter } from "../working/drains";
import { column, GROUPS, rowOf } from "./places";

const factor = (cell: string) => `IF(ISNUMBER(${cell}),${cell},1)`;
const noFactor = (cell: string) => `IF(ISNUMBER(${cell}),${cell}<=0,FALSE)`;

/** What is answered about a group, and what is calculated on the way. */
function group(number: number): CellSpec[] {
  const row = rowOf(number);
  const [top, spacing, use, capture, depth, area] = ["B", "C", "D", "E", "F", "G"].map((letter) => `${letter}${row}`);
  const [net, gets, inUse, topArea, reached, enough] = ["H", "K", "N", "O", "P", "R"].map(
    (letter) => `${letter}${row}`,
  );
  const [after, enoughAfter] = [`S${row}`, `T${row}`];
  const used = (formula: string) => `IF(${inUse}=0,"",${formula})`;
  const whereNumbers = (names: readonly string[], formula: string) =>
    `IF(AND(${names.map((name) => `ISNUMBER(${name})`).join(",")}),${formula},"")`;
  const answer = (letter: string, ending: string, format: string, formula: string): CellSpec => ({
    at: `${letter}${row}`,
    kind: "answer",
    name: `Group_${number}_${ending}`,
    format,
    formula,
  });
  const working = (letter: string, formula: string): CellSpec => ({ at: `${letter}${row}`, kind: "working", formula });
  return [
    answer(
      "H",
      "Depth_mm",
      "0.0",
      used(
        nestedIfs(
          [
            [`ISNUMBER(${depth})`, `IF(${depth}>0,${depth},"needs above 0")`],
            [`COUNT(${top},${use})<2`, '"needs a depth"'],
            [`OR(MIN(${top},${use})<=0,${noFactor(capture!)})`, '"needs above 0"'],
          ],
          `1000*${use}/${topArea}/${factor(capture!)}`,
        ),
      ),
    ),
    answer("I", "Share", "0 %", used(`IF(Groups_Areas_Known,${area}/SUM(${column("G")}),"needs areas")`)),
    answer(
      "J",
      "Run_min",
      "0.0",
      whereNumbers([net!, "Gross_Multiplier", "Used_MAR"], `60*${net}*Gross_Multiplier/Used_MAR`),
    ),
    answer(
      "K",
      "Times",
      "0.00",
      whereNumbers([net!, "Groups_Depth_mm", "Valve_Multiplier"], `Valve_Multiplier*Groups_Depth_mm/${net}`),
    ),
    answer("L", "Drained", "0 %", whereNumbers([enough!], `MAX(0,${drainedAbove(enough!)})`)),
    working("N", `IF(COUNTA(${top}:${area})>0,1,0)`),
    working("O", `IF(N(${top})>0,IF(Pot_Shape="square",${top}^2,PI()*${top}^2/4),"")`),
    working(
      "P",
      `IF(AND(ISNUMBER(${topArea}),N(${spacing})>0,NOT(${noFactor(capture!)})),MIN(1,${factor(capture!)}*${topArea}/${spacing}^2),"")`,
    ),
    working("Q", used(`IF(Groups_Areas_Known,I${row}*IF(COUNT(${column("P")})=Groups_In_Use,${reached},1),"")`)),
    working("R", whereNumbers([gets!, "Used_Reading"], `Used_Reading/${gets}`)),
    working(
      "S",
      whereNumbers(
        [net!, "Groups_Depth_mm", "Valve_Multiplier_After"],
        `Valve_Multiplier_After*Groups_Depth_mm/${net}`,
      ),
    ),
    working("T", `IF(ISNUMBER(${after}),${justEnoughAfter(after)},"")`),
    working("U", `IF(ISNUMBER(${after}),${drainedAfterAt(after, enoughAfter)},"")`),
  ];
}

/** The lines of all groups. */
export const groupCells = (): CellSpec[] => GROUPS.flatMap(group);
