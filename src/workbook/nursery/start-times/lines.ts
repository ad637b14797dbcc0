import type { CellSpec } from "../../form/sheet-spec";
import { FIRST_BLOCK, FIRST_PAIR, LAST_PAIR } from "../program/places";
import { column, FIRST, HEADINGS, NOWHEN, START_LINES } from "./places";
import { check, withOneKeptApart } from "./rules";

/** The line of a block in the Program, from 1; 0 where none has this name. */
const lineOfBlock = (name: string) =>
  `SUMPRODUCT(MAX((Program_Names=${name})*(ROW(Program_Names)-${FIRST_BLOCK - 1})))`;

const line = (row: number): CellSpec[] => [
  { at: `A${row}`, kind: "entry", formula: `IF(COUNTA(B${row}:E${row})=0,"",ROW()-${HEADINGS})`, align: "center" },
  { at: `B${row}`, kind: "input", shrink: true },
  { at: `C${row}`, kind: "input", align: "center" },
  { at: `D${row}`, kind: "input", format: "hh:mm", align: "center" },
  { at: `E${row}`, kind: "input", align: "center" },
  {
    at: `F${row}`,
    kind: "working",
    format: "hh:mm",
    align: "center",
    formula: `IF(K${row}=${NOWHEN},"",MOD(D${row}+E${row}/1440,1))`,
  },
  {
    at: `G${row}`,
    kind: "working",
    format: "0.0",
    formula: `IF(N${row}=0,"",IF(N(INDEX(Program_Flows_Lmin,N${row}))=0,"",INDEX(Program_Flows_Lmin,N${row})))`,
  },
  {
    at: `H${row}`,
    kind: "working",
    format: "0.0",
    formula: `IF(K${row}=${NOWHEN},"",SUMPRODUCT((${column("K")}<=K${row})*(${column("L")}>K${row}+0.000001),${column("G")}))`,
  },
  { at: `I${row}`, kind: "note", shrink: true, formula: check(row) },
  {
    at: `K${row}`,
    kind: "working",
    formula: `IF(COUNT(D${row}:E${row})=2,IF(AND(MIN(D${row}:E${row})>=0,D${row}<3,E${row}<=1440),MOD(ROUND(D${row}*1440,0)-Night_First_min,1440),${NOWHEN}),${NOWHEN})`,
  },
  { at: `L${row}`, kind: "working", formula: `IF(K${row}=${NOWHEN},-1,O${row}+Change_Over_Used_min)` },
  { at: `M${row}`, kind: "working", formula: `TRIM(B${row})`, align: "left" },
  { at: `N${row}`, kind: "working", formula: `IF(M${row}="",0,${lineOfBlock(`M${row}`)})` },
  { at: `O${row}`, kind: "working", formula: `IF(K${row}=${NOWHEN},K${row},K${row}+E${row})` },
  {
    at: `P${row}`,
    kind: "working",
    formula: `IF(A${row}="","",1000*K${row}+A${row})`,
  },
  { at: `Q${row}`, kind: "working", formula: `IF(A${row}="","",IF(N${row}=0,61,N${row})*10^9+P${row})` },
  { at: `R${row}`, kind: "working", formula: `IF(N${row}=0,0,${withOneKeptApart(row)})` },
];

const TITLES = [
  "Line",
  "Block",
  "Pulse",
  "Start [h:mm]",
  "Minutes",
  "End [h:mm]",
  "Flow [L/min]",
  "All [L/min]",
  "Check",
];
const WORKING_TITLES = [
  "start [min]",
  "free [min]",
  "trimmed",
  "line of block",
  "end [min]",
  "order by time",
  "order by block",
  "runs with, kept apart",
];

const pair = (index: number): CellSpec[] =>
  [1, 2].map((side) => {
    const name = `TRIM(INDEX(Program_Apart,${index + 1},${side}))`;
    return {
      at: `${"KLMNOPQRSTUV"[index]}${side + 1}`,
      kind: "working",
      formula: `IF(INDEX(Program_Apart_Says,${index + 1})="ok",${lineOfBlock(name)},0)`,
    };
  });

/** What is typed or written of a night, and what is said of each line. */
export const LINE_CELLS: readonly CellSpec[] = [
  ...TITLES.map((value, index): CellSpec => ({ at: `${"ABCDEFGHI"[index]}${HEADINGS}`, kind: "heading", value })),
  ...WORKING_TITLES.map(
    (value, index): CellSpec => ({ at: `${"KLMNOPQR"[index]}${HEADINGS}`, kind: "working", value }),
  ),
  ...Array.from({ length: LAST_PAIR - FIRST_PAIR + 1 }, (_, index) => pair(index)).flat(),
  { at: "W2", kind: "working", value: "kept apart:" },
  { at: "W3", kind: "working", value: "lines of blocks" },
  ...Array.from({ length: START_LINES }, (_, index) => line(FIRST + index)).flat(),
];
