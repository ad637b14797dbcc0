import type { CellSpec } from "../../form/sheet-spec";
import { counted } from "../program/counts";
import { BLOCKS, FIRST_BLOCK } from "../program/places";
import { column, FIRST, HEADINGS } from "./places";

export const LAST_OF_BLOCKS = HEADINGS + BLOCKS;

/** Minutes and pulses of one block here and in the Program. */
const blockLine = (index: number): CellSpec[] => {
  const row = FIRST + index;
  const from = FIRST_BLOCK + index;
  const answered = `COUNT(Program!L${from}:M${from})=2`;
  const enough = `AND(U${row}>=Program!K${from}-V${row}/10^6,U${row}<Program!K${from}+V${row}*(Step_Used_min+1/10^6))`;
  return [
    { at: `S${row}`, kind: "working", formula: `Program!T${from}`, align: "left" },
    { at: `T${row}`, kind: "working", formula: `IF(S${row}="","",SUMPRODUCT((${column("M")}=S${row})*1))` },
    {
      at: `U${row}`,
      kind: "working",
      formula: `IF(S${row}="","",SUMPRODUCT((${column("M")}=S${row})*1,${column("E")}))`,
      format: "0.0",
    },
    { at: `V${row}`, kind: "working", formula: `IF(S${row}="","",IF(${answered},Program!L${from},0))` },
    {
      at: `W${row}`,
      kind: "working",
      formula: `IF(S${row}="","",IF(${answered},Program!L${from}*Program!M${from},0))`,
      format: "0.0",
    },
    {
      at: `X${row}`,
      kind: "note",
      formula: `IF(S${row}="","",IF(T${row}<>V${row},"differs",IF(V${row}=0,"ok",IF(${enough},"ok","differs"))))`,
    },
  ];
};

const TITLES = ["Block", "Pulses here", "Minutes here", "Pulses, Program", "Minutes, Program", "Check"];
const AGREES = `$X$${FIRST}:$X$${LAST_OF_BLOCKS}`;
const ofDifference = (letter: string) =>
  `INDEX($${letter}$${FIRST}:$${letter}$${LAST_OF_BLOCKS},MATCH("differs",${AGREES},0))`;

/** Whether the lines are those of another Program, and what is said then. */
export const DIFFERS = `COUNTIF(${AGREES},"differs")>0`;
export const DIFFERENCE = `"The Program is not the one that was fitted: "&${ofDifference("S")}&" has "&${counted(ofDifference("T"), " pulse", " pulses")}&", "&ROUND(${ofDifference("U")},1)&" min here, but "&${counted(ofDifference("V"), " pulse", " pulses")}&", "&ROUND(${ofDifference("W")},1)&" min in the Program. Fit the night anew."`;

/** The night against the Program, block by block. */
export const BLOCK_LIST_CELLS: readonly CellSpec[] = [
  ...TITLES.map((value, index): CellSpec => ({ at: `${"STUVWX"[index]}${HEADINGS}`, kind: "heading", value })),
  ...Array.from({ length: BLOCKS }, (_, index) => blockLine(index)).flat(),
];
