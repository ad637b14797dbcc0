import { type Allowed, count, number, words } from "../../form/allowed";
import { nestedIfs } from "../../form/nested-ifs";
import type { CheckSpec, SheetSpec } from "../../form/sheet-spec";
import { MONTH_NAME } from "../program/day";
import { BLOCK_LIST_CELLS, DIFFERENCE, DIFFERS, LAST_OF_BLOCKS } from "./blocks";
import { LINE_CELLS } from "./lines";
import { PAPER, PAPER_CELLS, PAPER_CHECK, PAPER_HEIGHTS } from "./paper";
import { PAPER_SHADES } from "./paper-shades";
import { column, FIRST, HEADINGS, LAST } from "./places";
import { LITRES, NO_BLOCK, OVER_THE_LIMIT } from "./rules";

const LOOKS = `SUMPRODUCT((${column("I")}<>"")*(${column("I")}<>"ok"))`;
const STRANGERS = `COUNTIF(${column("I")},"${NO_BLOCK}")`;
const FINISH = `TEXT(MOD(Night_First_min+MAX(${column("L")})-Change_Over_Used_min,1440)/1440,"hh:mm")`;

const STATUS = nestedIfs(
  [
    [
      `COUNTA($B$${FIRST}:$E$${LAST})=0`,
      '"No start times yet. In the pane, step Schedule: Fit the night, then Write the start times."',
    ],
    [
      "Hours_Wrong>0",
      '"Put the hours of the Program right: what is said of these start times is not to be relied on until then."',
    ],
    [
      `${STRANGERS}>0`,
      `${STRANGERS}&IF(${STRANGERS}=1," line names"," lines name")&" no block of the Program: "&INDEX(${column("M")},MATCH("${NO_BLOCK}",${column("I")},0))&". Put the name right, or fit the night anew."`,
    ],
    [DIFFERS, DIFFERENCE],
    [
      `${LOOKS}>0`,
      `${LOOKS}&IF(${LOOKS}=1," line needs"," lines need")&" a look (on paper: !): see the sheet, column Check. Fit the night anew."`,
    ],
    [
      OVER_THE_LIMIT,
      `"These start times take "&ROUND(${LITRES}/1000,1)&" kL, but the daily limit is "&ROUND(Day_Limit_kL,1)&" kL."`,
    ],
    [
      "Lines_Not_Whole>0",
      'Lines_Not_Whole&IF(Lines_Not_Whole=1," line of the Program is not complete and has"," lines of the Program are not complete and have")&" no start time."',
    ],
  ],
  `"These start times belong to the Program: each block gets its pulses, minutes and rests, inside the hours, the pump's flow and the tank; no pair kept apart runs together. Finished at "&${FINISH}&"."`,
);

const on = (letter: string, allowed: Allowed): CheckSpec => ({
  range: `${letter}${FIRST}:${letter}${LAST}`,
  ...allowed(`${letter}${FIRST}`),
});
const STRIKING = { fill: "#f6e8c3", colour: "#543005", bold: true } as const;

/** The start times of a night, to print for the controller and for those who go to one block. */
export const START_TIMES: SheetSpec = {
  name: "Start times",
  widths: [
    ...[6, 22, 7, 10, 10, 10, 10, 11, 25, 3],
    ...[10, 10, 14, 10, 10, 12, 14, 10],
    ...[18, 9, 9, 10, 12, 12, 3],
    ...[17, 7, 7, 7, 6, 6, 1, 17, 7, 7, 7, 6, 6, 3, 6, 6, 6],
  ],
  heights: { 2: 20, 3: 32, 4: 64, [HEADINGS]: 32, ...PAPER_HEIGHTS },
  cells: [
    { at: "A1:D1", kind: "title", value: "Start times" },
    {
      at: "E1:I1",
      kind: "note",
      value: "Type or change lines here; printed are the lists from column Z on, in order of time and by block.",
    },
    {
      at: "A2:I2",
      kind: "label",
      formula: `IF(Nursery_Name="","",Nursery_Name&" · ")&IF(Month_Used=0,"needs the month",${MONTH_NAME})&" · pump "&IF(COUNT(Pump_Flow_Lmin)=1,ROUND(Pump_Flow_Lmin,1)&" L/min","needs its flow")`,
    },
    {
      at: "A3:I3",
      kind: "label",
      formula:
        '"Fitted or changed by: ________________   Date: ____________   "&IF(Hours_Wrong>0,"put the hours right: see Program",IF(Night_Length_min=0,"needs hours","Water may run "&Hours_Words))',
    },
    { at: "A4:I4", kind: "caution", formula: STATUS, name: "Start_Times_Status" },
    ...LINE_CELLS,
    ...BLOCK_LIST_CELLS,
    ...PAPER_CELLS,
  ],
  areas: { Start_Times: `B${FIRST}:E${LAST}`, Start_Times_Checks: `I${FIRST}:I${LAST}` },
  checks: [
    on("B", words(40)),
    on("C", count(1, 1000)),
    on("D", number(0, 2.99999, "days: a time of day, such as 20:00")),
    on("E", number(0.01, 1440, "min")),
    PAPER_CHECK,
  ],
  shades: [
    { range: `A${FIRST}:I${LAST}`, formula: `AND($I${FIRST}<>"",$I${FIRST}<>"ok")`, ...STRIKING },
    { range: `S${FIRST}:X${LAST_OF_BLOCKS}`, formula: `$X${FIRST}="differs"`, ...STRIKING },
    ...PAPER_SHADES,
  ],
  printed: PAPER,
  hidden: ["K:R", "AN:AP"],
  frozenRows: HEADINGS,
};
