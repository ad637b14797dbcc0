import { nestedIfs, quoted } from "../../form/nested-ifs";
import type { CellSpec } from "../../form/sheet-spec";
import { MONTHS } from "../months";
import { counted, LEFT, SHOWN, WHOLE } from "./counts";
import { DAY_FROM, isPositive, ofBlocks, ofWindows } from "./places";

/** The name of the month that is typed; "" where there is none. */
export const MONTH_NAME = `IF(Month_Used=0,"",CHOOSE(MAX(1,Month_Used),${MONTHS.map(quoted).join(",")}))`;

const WATER = "Program_Water_kL";
const rounded = (formula: string) => `ROUND(${formula},1)`;
const THERE = "Tank_There_kL";

interface DayLine {
  label: string;
  unit: string;
  name: string;
  format: string;
  formula: string;
  says: string;
}

const DAY: readonly DayLine[] = [
  {
    label: "Water of the day",
    unit: "kL",
    name: WATER,
    format: "0.0",
    formula: `IF(COUNT(${ofBlocks("N")})=0,"needs blocks",SUM(${ofBlocks("N")})/1000)`,
    says: `IF(ISNUMBER(${WATER}),"Of "&${counted(`COUNT(${ofBlocks("N")})`, " block", " blocks")}&", run times rounded up to the step"&IF(${SHOWN}>${WHOLE},"; "&${counted(LEFT, " line is", " lines are")}&" incomplete or wrong","")&".","")`,
  },
  {
    label: "Left of the limit",
    unit: "kL",
    name: "Limit_Left_kL",
    format: "0.0",
    formula: `IF(Day_Limit_kL="","no limit",IF(${isPositive("Day_Limit_kL")},IF(ISNUMBER(${WATER}),Day_Limit_kL-${WATER},"needs blocks"),"needs a limit above 0"))`,
    says: `IF(ISNUMBER(Limit_Left_kL),IF(Limit_Left_kL<0,${rounded("-Limit_Left_kL")}&" kL over the daily limit.","Within the daily limit."),"")`,
  },
  {
    label: "In tank, with refill",
    unit: "kL",
    name: THERE,
    format: "0.0",
    formula: nestedIfs(
      [
        ['Tank_kL=""', '"no tank"'],
        [`NOT(${isPositive("Tank_kL")})`, '"needs a tank above 0"'],
        ["OR(Hours_Wrong>0,Night_Length_min=0)", '"needs hours"'],
      ],
      "Tank_kL+N(Tank_Refill_Lmin)*Night_Length_min/1000",
    ),
    says: `IF(COUNT(${THERE},${WATER})=2,IF(${WATER}>${THERE},${rounded(`${WATER}-${THERE}`)}&" kL more are wanted than the tank and what comes in by the last end can give.","Enough by the last end; Fit the night sees that it never runs dry before."),"")`,
  },
  {
    label: "Largest flow",
    unit: "L/min",
    name: "Largest_Flow_Lmin",
    format: "0.0",
    formula: `IF(COUNT(${ofBlocks("O")})=0,"needs blocks",MAX(${ofBlocks("O")}))`,
    says: `IF(ISNUMBER(Largest_Flow_Lmin),IF(${isPositive("Pump_Flow_Lmin")},IF(Largest_Flow_Lmin>Pump_Flow_Lmin,${rounded("Largest_Flow_Lmin-Pump_Flow_Lmin")}&" L/min more than the pump gives: that block can never run as it is.","One block, against the "&${rounded("Pump_Flow_Lmin")}&" L/min of the pump."),"needs the flow of the pump"),"")`,
  },
  {
    label: "Hours of the windows",
    unit: "h",
    name: "Window_Hours",
    format: "0.0",
    formula: `IF(OR(Hours_Wrong>0,COUNT(${ofWindows("M")})=0),"needs hours",SUM(${ofWindows("M")}))`,
    says: nestedIfs(
      [
        ["Hours_Wrong>0", '"Put the hours right: see what is said beside them."'],
        [
          "ISNUMBER(Window_Hours)",
          `Hours_Words&": "&${rounded("Night_Length_min/60")}&" h from the first start to the last end."`,
        ],
      ],
      '""',
    ),
  },
  {
    label: "Least hours",
    unit: "h",
    name: "Least_Hours",
    format: "0.0",
    formula: `IF(${isPositive("Pump_Flow_Lmin")},IF(ISNUMBER(${WATER}),1000*${WATER}/Pump_Flow_Lmin/60,"needs blocks"),"needs the pump")`,
    says: `IF(COUNT(Least_Hours,Window_Hours)=2,IF(Least_Hours>Window_Hours,${rounded("Least_Hours-Window_Hours")}&" h more than the windows hold: no order of the blocks can fit.","Water / pump: with the pump always at its full flow "&${rounded("Window_Hours-Least_Hours")}&" h would be left. Fit the night finds out whether it fits."),"")`,
  },
];

/** The day in plain words. */
export const DAY_CELLS: readonly CellSpec[] = [
  { at: `A${DAY_FROM}:O${DAY_FROM}`, kind: "heading", value: "The day" },
  ...DAY.flatMap(({ label, unit, says, ...answer }, index): CellSpec[] => {
    const row = DAY_FROM + 1 + index;
    return [
      { at: `A${row}:B${row}`, kind: "label", value: label },
      { at: `C${row}`, kind: "answer", ...answer },
      { at: `D${row}`, kind: "unit", value: unit },
      { at: `E${row}:O${row}`, kind: "note", formula: says },
    ];
  }),
  { at: "U13", kind: "working", value: "month" },
  {
    at: "V13",
    kind: "working",
    name: "Month_Used",
    formula:
      "IF(COUNT(Program_Month)=1,IF(AND(Program_Month>=1,Program_Month<=12,Program_Month=INT(Program_Month)),Program_Month,0),0)",
  },
  { at: "U14", kind: "working", value: "step [min]" },
  {
    at: "V14",
    kind: "working",
    name: "Step_Used_min",
    formula:
      'IF(Controller_Step_min="",1,IF(COUNT(Controller_Step_min)=1,IF(AND(Controller_Step_min>=1/60,Controller_Step_min<=5),Controller_Step_min,"none"),"none"))',
  },
  { at: "U15", kind: "working", value: "change-over [min]" },
  {
    at: "V15",
    kind: "working",
    name: "Change_Over_Used_min",
    formula: "IF(COUNT(Change_Over_s)=1,IF(AND(Change_Over_s>=0,Change_Over_s<=3600),Change_Over_s/60,0),0)",
  },
  { at: "U16", kind: "working", value: "lines not whole" },
  { at: "V16", kind: "working", name: "Lines_Not_Whole", formula: `${SHOWN}-${WHOLE}` },
];
