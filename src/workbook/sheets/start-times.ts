import { type Allowed, count, number, words } from "../allowed";
import { cases } from "../cases";
import type { CellSpec, CheckSpec, SheetSpec } from "../sheet-spec";
import { MONTH_NAME } from "./program-day";
import { BLOCKS, FIRST_BLOCK } from "./program-places";

const HEADINGS = 5;
const FIRST = HEADINGS + 1;
export const START_LINES = 240;
const LAST = HEADINGS + START_LINES;
const NOWHEN = 99999;
const column = (letter: string) => `$${letter}$${FIRST}:$${letter}$${LAST}`;

const TITLES = [
  "Line",
  "Block",
  "Pulse",
  "Start [h:mm]",
  "Minutes",
  "End [h:mm]",
  "Flow [L/min]",
  "All that run [L/min]",
  "Check",
];

const check = (row: number) =>
  cases(
    [
      [`COUNTA(B${row}:E${row})=0`, '""'],
      [`M${row}=""`, '"needs a block"'],
      [`G${row}=""`, '"no such block"'],
      [`K${row}=${NOWHEN}`, '"needs start and minutes"'],
      [
        `SUMPRODUCT((MOD(K${row}+Night_First_min-Window_Starts_min,1440)+E${row}<=Window_Lengths_min+0.000001)*1)=0`,
        '"outside the hours"',
      ],
      [`IF(COUNT(Pump_Flow_Lmin)=1,H${row}>Pump_Flow_Lmin+0.001,TRUE)`, '"over the pump\'s flow"'],
    ],
    '"ok"',
  );

const printedLine = (row: number): CellSpec[] => [
  { at: `A${row}`, kind: "entry", formula: `IF(COUNTA(B${row}:E${row})=0,"",ROW()-${HEADINGS})`, align: "center" },
  { at: `B${row}`, kind: "input" },
  { at: `C${row}`, kind: "input", align: "center" },
  { at: `D${row}`, kind: "input", format: "hh:mm", align: "center" },
  { at: `E${row}`, kind: "input", format: "0.##", align: "center" },
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
    formula: `IF(M${row}="","",IF(SUMPRODUCT((Program_Names=M${row})*1,Program_Flows_Lmin)=0,"",SUMPRODUCT((Program_Names=M${row})*1,Program_Flows_Lmin)))`,
  },
  {
    at: `H${row}`,
    kind: "working",
    format: "0.0",
    formula: `IF(K${row}=${NOWHEN},"",SUMPRODUCT((${column("K")}<=K${row})*(${column("L")}>K${row}+0.000001),${column("G")}))`,
  },
  { at: `I${row}`, kind: "note", formula: check(row) },
];

const line = (row: number): CellSpec[] => [
  ...printedLine(row).map((cell): CellSpec => ({ ...cell, bare: true })),
  {
    at: `K${row}`,
    kind: "working",
    formula: `IF(COUNT(D${row}:E${row})=2,IF(AND(MIN(D${row}:E${row})>=0,D${row}<3,E${row}<=1440),MOD(ROUND(D${row}*1440,0)-Night_First_min,1440),${NOWHEN}),${NOWHEN})`,
  },
  { at: `L${row}`, kind: "working", formula: `IF(K${row}=${NOWHEN},-1,K${row}+E${row}+Change_Over_Used_min)` },
  { at: `M${row}`, kind: "working", formula: `TRIM(B${row})`, align: "left" },
];

/** Minutes and pulses of one block here and in the Program. */
const blockLine = (index: number): CellSpec[] => {
  const row = FIRST + index;
  const from = FIRST_BLOCK + index;
  const answered = `COUNT(Program!L${from}:M${from})=2`;
  return [
    { at: `O${row}`, kind: "working", formula: `Program!T${from}`, align: "left" },
    { at: `P${row}`, kind: "working", formula: `IF(O${row}="","",SUMPRODUCT((${column("M")}=O${row})*1))` },
    {
      at: `Q${row}`,
      kind: "working",
      formula: `IF(O${row}="","",SUMPRODUCT((${column("M")}=O${row})*1,${column("E")}))`,
      format: "0.0",
    },
    { at: `R${row}`, kind: "working", formula: `IF(O${row}="","",IF(${answered},Program!L${from},0))` },
    {
      at: `S${row}`,
      kind: "working",
      formula: `IF(O${row}="","",IF(${answered},Program!L${from}*Program!M${from},0))`,
      format: "0.0",
    },
    {
      at: `T${row}`,
      kind: "note",
      formula: `IF(O${row}="","",IF(AND(P${row}=R${row},ABS(Q${row}-S${row})<0.000001),"ok","differs"))`,
    },
  ];
};
const BLOCK_TITLES = ["Block", "Pulses here", "Minutes here", "Pulses, Program", "Minutes, Program", "Check"];
const LAST_OF_BLOCKS = HEADINGS + BLOCKS;
const AGREES = `$T$${FIRST}:$T$${LAST_OF_BLOCKS}`;
const LOOKS = `SUMPRODUCT((${column("I")}<>"")*(${column("I")}<>"ok"))`;
const FIRST_DIFFERENCE = `MATCH("differs",${AGREES},0)`;
const ofDifference = (letter: string) => `INDEX($${letter}$${FIRST}:$${letter}$${LAST_OF_BLOCKS},${FIRST_DIFFERENCE})`;
const FINISH = `TEXT(MOD(Night_First_min+MAX(${column("L")})-Change_Over_Used_min,1440)/1440,"h:mm")`;

const STATUS = cases(
  [
    [
      `COUNTA($B$${FIRST}:$E$${LAST})=0`,
      '"No start times yet. In the pane, step Night: Fit the night, then Write the start times."',
    ],
    [
      `COUNTIF(${AGREES},"differs")>0`,
      `"The Program is not the one that was fitted: "&${ofDifference("O")}&" has "&${ofDifference("P")}&" pulses, "&ROUND(${ofDifference("Q")},1)&" min here, but "&${ofDifference("R")}&" pulses, "&ROUND(${ofDifference("S")},1)&" min in the Program. Fit the night anew."`,
    ],
    [`${LOOKS}>0`, `${LOOKS}&IF(${LOOKS}=1," line needs"," lines need")&" a look: see Check. Fit the night anew."`],
    [
      "Lines_Not_Whole>0",
      'Lines_Not_Whole&IF(Lines_Not_Whole=1," line of the Program is not complete and has"," lines of the Program are not complete and have")&" no start time."',
    ],
  ],
  `"These start times belong to the Program: each block gets its pulses and minutes, inside the hours and the pump's flow. Finished at "&${FINISH}&"."`,
);

const on = (letter: string, allowed: Allowed): CheckSpec => ({
  range: `${letter}${FIRST}:${letter}${LAST}`,
  ...allowed(`${letter}${FIRST}`),
});

/** The start times of a night, to print for the controller. */
export const START_TIMES: SheetSpec = {
  name: "Start times",
  widths: [6, 22, 7, 10, 9, 10, 10, 11, 25, 3, 9, 9, 14, 3, 18, 9, 9, 10, 10, 12],
  heights: { 2: 20, 3: 20, 4: 44, [HEADINGS]: 30 },
  cells: [
    { at: "A1:I1", kind: "title", value: "Start times" },
    {
      at: "A2:I2",
      kind: "label",
      formula: `IF(Nursery_Name="","",Nursery_Name&" · ")&IF(Month_Used=0,"needs the month",${MONTH_NAME})&" · pump "&IF(COUNT(Pump_Flow_Lmin)=1,ROUND(Pump_Flow_Lmin,1)&" L/min","needs its flow")`,
    },
    {
      at: "A3:I3",
      kind: "label",
      formula:
        '"Fitted or changed by: ________________   Date: ____________   "&IF(Night_Length_min=0,"needs hours","Water may run from "&TEXT(Night_First_min/1440,"h:mm")&" to "&TEXT(MOD(Night_First_min+Night_Length_min,1440)/1440,"h:mm"))',
    },
    { at: "A4:I4", kind: "caution", formula: STATUS, name: "Start_Times_Status" },
    ...TITLES.map((value, index): CellSpec => ({ at: `${"ABCDEFGHI"[index]}${HEADINGS}`, kind: "heading", value })),
    { at: `K${HEADINGS}`, kind: "working", value: "start [min]" },
    { at: `L${HEADINGS}`, kind: "working", value: "free [min]" },
    { at: `M${HEADINGS}`, kind: "working", value: "trimmed", align: "left" },
    ...BLOCK_TITLES.map((value, index): CellSpec => ({ at: `${"OPQRST"[index]}${HEADINGS}`, kind: "heading", value })),
    ...Array.from({ length: START_LINES }, (_, index) => line(FIRST + index)).flat(),
    ...Array.from({ length: BLOCKS }, (_, index) => blockLine(index)).flat(),
  ],
  areas: { Start_Times: `B${FIRST}:E${LAST}`, Start_Times_Checks: `I${FIRST}:I${LAST}` },
  checks: [
    on("B", words(40)),
    on("C", count(1, 1000)),
    on("D", number(0, 2.99999, "days: a time of day, such as 20:00")),
    on("E", number(0.01, 1440, "min")),
  ],
  shades: [
    {
      range: `A${FIRST}:I${LAST}`,
      formula: `AND($I${FIRST}<>"",$I${FIRST}<>"ok")`,
      fill: "#f6e8c3",
      colour: "#543005",
      bold: true,
    },
    { range: `A${FIRST}:I${LAST}`, formula: `COUNTA($B${FIRST}:$E${FIRST})>0`, fill: "#fbf4e2" },
    {
      range: `O${FIRST}:T${LAST_OF_BLOCKS}`,
      formula: `$T${FIRST}="differs"`,
      fill: "#f6e8c3",
      colour: "#543005",
      bold: true,
    },
  ],
  pages: 4,
  printed: `A1:I${LAST}`,
  frozenRows: HEADINGS,
};
