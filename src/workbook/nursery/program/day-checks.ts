import type { DataCheck } from "../../form/check-lines";
import { nestedIfs, quoted } from "../../form/nested-ifs";
import { counted, LEFT, SHOWN, STRONG, WHOLE } from "./counts";
import { isPositive, LAST_PAIR, ofWindows } from "./places";

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
    formula: nestedIfs(
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
        wrong("Day_Limit_kL", "The daily limit must be more than 0 kL."),
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
    formula: `IF(${SHOWN}=0,"",IF(${WHOLE}<${SHOWN},${counted(LEFT, " line is", " lines are")}&" incomplete or wrong: see what is said there.",IF(${STRONG}>0,${counted(STRONG, " block wants", " blocks want")}&" more flow than the pump gives.","ok")))`,
  },
];
