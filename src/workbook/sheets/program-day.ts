import { count, number } from "../allowed";
import { cases, quoted } from "../cases";
import type { DataCheck } from "../check-lines";
import { type Field, formLines } from "../form";
import { MONTHS } from "../months";
import type { CellSpec } from "../sheet-spec";
import { DAY_FROM, isPositive, LAST_PAIR, ofBlocks, ofWindows, SETTINGS_FROM } from "./program-places";

/** The name of the month that is typed; "" where there is none. */
export const MONTH_NAME = `IF(Month_Used=0,"",CHOOSE(MAX(1,Month_Used),${MONTHS.map(quoted).join(",")}))`;

const SETTINGS: readonly (string | Field)[] = [
  "Month, pump and water",
  { label: "Month", name: "Program_Month", unit: "1 to 12", allowed: count(1, 12) },
  {
    label: "Flow of the pump",
    name: "Pump_Flow_Lmin",
    unit: "L/min",
    allowed: number(0.01, 1e6, "L/min"),
    note: "At the pressure of the heads: curve or test.",
  },
  {
    label: "Change-over",
    name: "Change_Over_s",
    unit: "s",
    allowed: number(0, 3600, "s"),
    note: "Between two valves; blank: 0.",
  },
  {
    label: "Controller's step",
    name: "Controller_Step_min",
    unit: "min",
    allowed: number(1 / 60, 5, "min"),
    note: "Run times are rounded up to it; blank: 1.",
  },
  {
    label: "Limit of the day",
    name: "Day_Limit_kL",
    unit: "kL",
    allowed: number(0.001, 1e6, "kL"),
    note: "Of the licence or the meter; blank: none.",
  },
  {
    label: "Tank",
    name: "Tank_kL",
    unit: "kL",
    allowed: number(0.001, 1e6, "kL"),
    note: "Full at the first start; blank: no tank limits.",
  },
  {
    label: "Its refill",
    name: "Tank_Refill_Lmin",
    unit: "L/min",
    allowed: number(0, 1e6, "L/min"),
    note: "Comes in all the time; blank: 0.",
  },
];

export const SETTING_PART = formLines(
  SETTINGS_FROM,
  { label: "A:B", entry: "C", unit: "D", note: "E:I", noteLine: 48 },
  SETTINGS,
);

const WATER = "Program_Water_kL";
const rounded = (formula: string) => `ROUND(${formula},1)`;
const SHOWN = `SUMPRODUCT((${ofBlocks("P")}<>"")*1)`;
const whole = `SUMPRODUCT((${ofBlocks("P")}="ok")+(${ofBlocks("P")}="no water this month")+(${ofBlocks("P")}="flow over the pump's"))`;
const THERE = "Tank_There_kL";
const counted = (count: string, one: string, many: string) => `${count}&IF(${count}=1,"${one}","${many}")`;
const LEFT = `(${SHOWN}-${whole})`;
const STRONG = `SUMPRODUCT((${ofBlocks("P")}="flow over the pump's")*1)`;

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
    says: `IF(ISNUMBER(${WATER}),"Of "&${counted(`COUNT(${ofBlocks("N")})`, " block", " blocks")}&", run times rounded up to the step"&IF(${SHOWN}>${whole},"; "&${counted(LEFT, " line is", " lines are")}&" not complete or not right","")&".","")`,
  },
  {
    label: "Left of the limit",
    unit: "kL",
    name: "Limit_Left_kL",
    format: "0.0",
    formula: `IF(Day_Limit_kL="","no limit",IF(${isPositive("Day_Limit_kL")},IF(ISNUMBER(${WATER}),Day_Limit_kL-${WATER},"needs blocks"),"needs a limit above 0"))`,
    says: `IF(ISNUMBER(Limit_Left_kL),IF(Limit_Left_kL<0,${rounded("-Limit_Left_kL")}&" kL over the limit of the day.","Within the limit of the day."),"")`,
  },
  {
    label: "In tank, with refill",
    unit: "kL",
    name: THERE,
    format: "0.0",
    formula: cases(
      [
        ['Tank_kL=""', '"no tank"'],
        [`NOT(${isPositive("Tank_kL")})`, '"needs a tank above 0"'],
        ["Night_Length_min=0", '"needs hours"'],
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
    formula: `IF(COUNT(${ofWindows("M")})=0,"needs hours",SUM(${ofWindows("M")}))`,
    says: 'IF(ISNUMBER(Window_Hours),"From "&TEXT(Night_First_min/1440,"h:mm")&" to "&TEXT(MOD(Night_First_min+Night_Length_min,1440)/1440,"h:mm")&", "&ROUND(Night_Length_min/60,1)&" h from the first start to the last end.","")',
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
  { at: "V16", kind: "working", name: "Lines_Not_Whole", formula: `${SHOWN}-${whole}` },
];

const wrong = (cell: string, rule: string): [string, string] => [
  `AND(${cell}<>"",NOT(${isPositive(cell)}))`,
  quoted(rule),
];
const looks = (range: string, one: string, many: string): string =>
  `IF(SUMPRODUCT((${range}<>"")*1)=0,"",IF(SUMPRODUCT((${range}<>"")*(${range}<>"ok"))=0,"ok",${counted(`SUMPRODUCT((${range}<>"")*(${range}<>"ok"))`, one, many)}&": see what is said there."))`;

/** What the sheet looks at by itself. */
export const DAY_CHECKS: readonly DataCheck[] = [
  {
    label: "Settings",
    formula: cases(
      [
        [
          "COUNTA(Program_Month,Pump_Flow_Lmin,Change_Over_s,Controller_Step_min,Day_Limit_kL,Tank_kL,Tank_Refill_Lmin)=0",
          '""',
        ],
        ['AND(Program_Month<>"",Month_Used=0)', '"The month must be a whole number from 1 to 12."'],
        wrong("Pump_Flow_Lmin", "The flow of the pump must be more than 0 L/min."),
        ["COUNT(Step_Used_min)=0", '"The controller\'s step must be from 1/60 to 5 min."'],
        [
          'AND(Change_Over_s<>"",IF(COUNT(Change_Over_s)=1,OR(Change_Over_s<0,Change_Over_s>3600),TRUE))',
          '"The change-over must be from 0 to 3600 s."',
        ],
        wrong("Day_Limit_kL", "The limit of the day must be more than 0 kL."),
        wrong("Tank_kL", "The tank must be more than 0 kL."),
        [
          'AND(Tank_Refill_Lmin<>"",IF(COUNT(Tank_Refill_Lmin)=1,Tank_Refill_Lmin<0,TRUE))',
          '"The refill must be 0 L/min or more."',
        ],
      ],
      '"ok"',
    ),
  },
  { label: "Windows", formula: looks(ofWindows("N"), " line of hours", " lines of hours") },
  { label: "Kept apart", formula: looks(`$R$5:$R$${LAST_PAIR}`, " pair", " pairs") },
  {
    label: "Blocks",
    formula: `IF(${SHOWN}=0,"",IF(${whole}<${SHOWN},${counted(LEFT, " line is", " lines are")}&" not complete or not right: see what is said there.",IF(${STRONG}>0,${counted(STRONG, " block wants", " blocks want")}&" more flow than the pump gives.","ok")))`,
  },
];
