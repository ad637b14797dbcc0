import { GROUP_ENTRIES } from "../../../core/figures/entries";
import { shortWithUnit } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import { RUN_TIME } from "../../../core/figures/run-time";
import { type Allowed, choiceFrom, number, words } from "../../form/allowed";
import { nestedIfs, quoted } from "../../form/nested-ifs";
import type { CellSpec, CheckSpec } from "../../form/sheet-spec";
import { WITHOUT_REST } from "./counts";
import { BLOCKS, FIRST_BLOCK, HEADINGS, isPositive, LAST_BLOCK, ofBlocks } from "./places";

const TYPED = [
  "Block [name]",
  "Group [of Demand]",
  "Area [m²]",
  shortWithUnit(MEASURES.MAR),
  "Multi-plier",
  "Depth typed [mm]",
  `${GROUP_ENTRIES.Demand_Take_Up_mm.label}, typed [mm]`,
  "Rest [min]",
  "Flow typed [L/min]",
];
const TYPED_FORMATS = ["", "", "", "0.0#", "0.0##", "0.0#", "0.0#", "", "0.0#"];
const ANSWERED = [
  "Depth [mm]",
  `${RUN_TIME.TIME.name} [min]`,
  RUN_TIME.PULSES.short,
  "Minutes each",
  "Water [L/day]",
  "Flow [L/min]",
];
const FORMATS = ["0.0", "0.0", "0", "0.0", "#,##0", "0.0"];
const MOST_PULSES = 1000;

const GROUP_DEPTH = (row: number) => `INDEX(Demand_Depths,Program_Month,MATCH(B${row},Demand_Groups,0))`;

const depth = (row: number) =>
  nestedIfs(
    [
      [`COUNTA(A${row}:I${row})=0`, '""'],
      [`AND(F${row}<>"",COUNT(F${row})=0)`, '"depth must be a number"'],
      [`F${row}<>""`, `IF(AND(F${row}>=0,F${row}<=1000000000),F${row},"depth must be 0 mm or more")`],
      [`B${row}=""`, '"needs a depth or a group"'],
      [`SUMPRODUCT((Demand_Groups=B${row})*1)=0`, '"group is not on Demand"'],
      ["Month_Used=0", '"needs the month"'],
      [`ISNUMBER(${GROUP_DEPTH(row)})`, `IF(${GROUP_DEPTH(row)}>=0,${GROUP_DEPTH(row)},"needs Demand")`],
    ],
    '"needs Demand"',
  );

const runTime = (row: number) =>
  `IF(COUNT(D${row},E${row},J${row})=3,IF(AND(MIN(D${row},E${row})>=1/10^9,MAX(D${row},E${row})<=1000000000),60*J${row}*E${row}/D${row},""),"")`;

/** The typed depth per pulse, else that of the group; "" where neither is typed. */
const takeUp = (row: number) => {
  const ofGroup = `INDEX(Demand_Take_Up_mm,1,MATCH(B${row},Demand_Groups,0))`;
  return nestedIfs(
    [
      [`G${row}<>""`, `G${row}`],
      [`B${row}=""`, '""'],
      [`SUMPRODUCT((Demand_Groups=B${row})*1)=0`, '""'],
      [`${ofGroup}=""`, '""'],
    ],
    ofGroup,
  );
};

const pulses = (row: number) => {
  const depths = `K${row}*D${row}/60/U${row}`;
  return nestedIfs(
    [
      [`K${row}=""`, '""'],
      [`K${row}=0`, "0"],
      [`U${row}=""`, "1"],
      [`NOT(${isPositive(`U${row}`)})`, '""'],
      [`${depths}>${MOST_PULSES}`, '""'],
    ],
    `MAX(1,-INT(-(${depths}-1/10^9)))`,
  );
};

const minutes = (row: number) => {
  const stepped = `-INT(-(K${row}/L${row}/Step_Used_min-1/10^9))*Step_Used_min`;
  return `IF(COUNT(L${row},Step_Used_min)=2,IF(L${row}=0,0,IF(${stepped}>1440,"",${stepped})),"")`;
};

const litres = (row: number) => `IF(COUNT(L${row},M${row},O${row})=3,O${row}*L${row}*M${row},"")`;

const flow = (row: number) =>
  nestedIfs(
    [
      [`I${row}<>""`, `IF(${isPositive(`I${row}`)},I${row},"")`],
      [`AND(${isPositive(`C${row}`)},${isPositive(`D${row}`)})`, `C${row}*D${row}/60`],
    ],
    '""',
  );

/** What a line still needs, or what is wrong in it. */
const says = (row: number) => {
  const needed = (letter: string, missing: string, rule: string): [string, string][] => [
    [`${letter}${row}=""`, quoted(missing)],
    [`NOT(${isPositive(`${letter}${row}`)})`, quoted(rule)],
  ];
  const optional = (letter: string, rule: string): [string, string] => [
    `AND(${letter}${row}<>"",NOT(${isPositive(`${letter}${row}`)}))`,
    quoted(rule),
  ];
  return nestedIfs(
    [
      [`COUNTA(A${row}:I${row})=0`, '""'],
      [`T${row}=""`, '"needs a name"'],
      [`SUMPRODUCT((${ofBlocks("T")}=T${row})*1)>1`, '"two blocks of this name"'],
      [`NOT(ISNUMBER(J${row}))`, `J${row}`],
      ...needed("D", `needs ${MEASURES.MAR.short}`, `${MEASURES.MAR.short} must be more than 0 mm/h`),
      ...needed("E", "needs a multiplier", "multiplier must be more than 0"),
      [`AND(C${row}="",I${row}="")`, '"needs an area or a flow"'],
      optional("C", "area must be more than 0 m²"),
      optional("I", "flow must be more than 0 L/min"),
      optional("G", "depth per pulse must be more than 0 mm"),
      optional("U", "depth per pulse on Demand must be over 0 mm"),
      [`AND(H${row}<>"",IF(COUNT(H${row})=1,H${row}<0,TRUE))`, '"rest must be 0 min or more"'],
      [`L${row}=""`, `"over ${MOST_PULSES} pulses: depth per pulse?"`],
      ["COUNT(Step_Used_min)=0", '"needs the controller\'s step"'],
      [`M${row}=""`, '"a pulse is longer than a day"'],
      [`IF(COUNT(Pump_Flow_Lmin)=1,O${row}>Pump_Flow_Lmin,FALSE)`, '"flow over the pump\'s"'],
      [`J${row}=0`, '"no water this month"'],
      [`AND(L${row}>1,N(H${row})=0)`, quoted(WITHOUT_REST)],
    ],
    '"ok"',
  );
};

const line = (row: number): CellSpec[] => [
  ...TYPED_FORMATS.map(
    (format, index): CellSpec => ({
      at: `${"ABCDEFGHI"[index]}${row}`,
      kind: "input",
      shrink: true,
      ...(format && { format }),
    }),
  ),
  ...[depth, runTime, pulses, minutes, litres, flow].map(
    (formula, index): CellSpec => ({
      at: `${"JKLMNO"[index]}${row}`,
      kind: "answer",
      format: FORMATS[index]!,
      formula: formula(row),
      align: "right",
      shrink: true,
    }),
  ),
  { at: `P${row}:R${row}`, kind: "note", shrink: true, formula: says(row) },
  { at: `T${row}`, kind: "working", formula: `TRIM(A${row})`, align: "left" },
  { at: `U${row}`, kind: "working", formula: takeUp(row) },
];

const heading = (value: string, at: string): CellSpec => ({ at: `${at}${HEADINGS}`, kind: "heading", value });

export const BLOCK_CELLS: readonly CellSpec[] = [
  ...TYPED.map((value, index) => heading(value, "ABCDEFGHI"[index]!)),
  ...ANSWERED.map((value, index) => heading(value, "JKLMNO"[index]!)),
  { at: `P${HEADINGS}:R${HEADINGS}`, kind: "heading", value: "What the line says" },
  { at: `T${HEADINGS}`, kind: "working", value: "name, trimmed", align: "left" },
  { at: `U${HEADINGS}`, kind: "working", value: "depth per pulse used [mm]" },
  ...Array.from({ length: BLOCKS }, (_, index) => line(FIRST_BLOCK + index)).flat(),
];

const on = (letter: string, allowed: Allowed): CheckSpec => ({
  range: `${letter}${FIRST_BLOCK}:${letter}${LAST_BLOCK}`,
  ...allowed(`${letter}${FIRST_BLOCK}`),
});

export const BLOCK_CHECKS: readonly CheckSpec[] = [
  on("A", words(40)),
  on("B", choiceFrom("Demand_Groups")),
  on("C", number(0.01, 1e6, "m²")),
  on("D", number(0.01, 1000, "mm/h")),
  on("E", number(0.1, 100, "")),
  on("F", number(0, 1000, "mm")),
  on("G", number(0.01, 1000, "mm")),
  on("H", number(0, 1440, "min")),
  on("I", number(0.01, 1e6, "L/min")),
];
