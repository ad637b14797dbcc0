import { SAME_BASIS, SHARE_KIND, WHY_NOT } from "../../core/register/basis";
import { OTHER_AREA } from "../../core/register/change";
import { columnLetters, columnNumber } from "../../hosts/address";
import { cases, quoted } from "../cases";
import { columnOf, FIRST_LINE, LAST_DAY, linesOf, REGISTER_COLUMNS } from "./register-columns";

/** What is worked out for a line, a column each. */
export interface RegisterAnswer {
  id: string;
  heading: string;
  width: number;
  format?: string;
  align?: "left";
  formula: (row: number) => string;
}

const LAST_INPUT = columnLetters(REGISTER_COLUMNS.length);
const ANSWERS_FROM = REGISTER_COLUMNS.length + 1;
const ANSWER_IDS = ["line", "earlier", "basis", "mar", "cu", "du", "sc", "water", "due", "drift", "retest"] as const;
const WORKING_IDS = [
  "key",
  "rawDay",
  "day",
  "earlierDay",
  "earlierLine",
  "later",
  "pressureDay",
  "pressureBefore",
  "basisKey",
  "label",
  "order",
  "place",
] as const;
/** One column stays empty between answers and working. */
const WORKING_FROM = ANSWERS_FROM + ANSWER_IDS.length + 1;

type Id = (typeof ANSWER_IDS)[number] | `w.${(typeof WORKING_IDS)[number]}`;

/** The letters of an answer's column, or of a working column by `w.id`. */
export function answerColumn(id: Id): string {
  const place = id.startsWith("w.")
    ? WORKING_FROM + WORKING_IDS.findIndex((one) => `w.${one}` === id)
    : ANSWERS_FROM + (ANSWER_IDS as readonly string[]).indexOf(id);
  return columnLetters(place);
}
export const LAST_ANSWER = columnNumber(answerColumn("retest"));
export const FIRST_WORKING = WORKING_FROM;
export const AFTER_WORKING = WORKING_FROM + WORKING_IDS.length;

const input = (id: string, row: number) => `$${columnOf(id)}${row}`;
const answer = (id: Id, row: number) => `$${answerColumn(id)}${row}`;
const all = (id: Id) => linesOf(answerColumn(id));
const PLACES = `(ROW(${all("w.key")})-${FIRST_LINE - 1})`;
const sameKey = (row: number) => `(${all("w.key")}=${answer("w.key", row)})`;
const counts = (row: number, formula: string) => `IF(${answer("w.day", row)}=0,"",${formula})`;
/** What stands in a column of inputs in the line of the earlier audit. */
const earlier = (id: string, row: number) => `INDEX(${linesOf(columnOf(id))},${answer("w.earlierLine", row)})`;
const above = (id: Id, row: number) => `$${answerColumn(id)}$${FIRST_LINE}:$${answerColumn(id)}${row - 1}`;

/** A grid as text without blanks, × as x. */
const plainGrid = (cell: string) => `LOWER(SUBSTITUTE(SUBSTITUTE(${cell}," ",""),"×","x"))`;

function lineCheck(row: number): string {
  const [block, day] = [input("block", row), input("day", row)];
  const twice =
    row === FIRST_LINE
      ? []
      : ([
          [
            `SUMPRODUCT((${above("w.key", row)}=${answer("w.key", row)})*(${above("w.rawDay", row)}=${answer("w.rawDay", row)}))>0`,
            '"a line above has this block and date"',
          ],
        ] as const);
  return cases(
    [
      [`COUNTA($A${row}:$${LAST_INPUT}${row})=0`, '""'],
      [`TRIM(${block})=""`, '"needs a block"'],
      [`${day}=""`, '"needs a date"'],
      [`${answer("w.rawDay", row)}=0`, '"the date must be a day such as 2026-11-25"'],
      ...twice,
      ...REGISTER_COLUMNS.flatMap(({ id, wrong }) =>
        wrong ? [[wrong[0].replaceAll("#", input(id, row)), quoted(wrong[1])] as const] : [],
      ),
    ],
    '"ok"',
  );
}

function basisOf(row: number): string {
  const unknown = (id: string, why: string) =>
    [`OR(${input(id, row)}="",${earlier(id, row)}="")`, quoted(why)] as const;
  const differs = (id: string, why: string, as = (cell: string) => cell) =>
    [
      `${as(earlier(id, row))}<>${as(input(id, row))}`,
      `"${why}: "&${earlier(id, row)}&" and "&${input(id, row)}`,
    ] as const;
  return counts(
    row,
    cases(
      [
        [`${answer("w.earlierLine", row)}=0`, '"no earlier audit of this block"'],
        unknown("grid", WHY_NOT.gridUnknown),
        differs("grid", WHY_NOT.grid, plainGrid),
        unknown("cans", WHY_NOT.cansUnknown),
        differs("cans", WHY_NOT.cans),
        unknown("wind", WHY_NOT.windUnknown),
        differs("wind", WHY_NOT.wind),
        unknown("kind", WHY_NOT.kindUnknown),
        differs("kind", WHY_NOT.kind),
        [`${input("kind", row)}="${SHARE_KIND}"`, quoted(WHY_NOT.share)],
      ],
      quoted(SAME_BASIS),
    ),
  );
}

const difference = (id: string, row: number) =>
  `IF(COUNT(${input(id, row)},${earlier(id, row)})=2,${input(id, row)}-${earlier(id, row)},"")`;
const whereSame = (row: number, formula: string) => `IF(${answer("basis", row)}="${SAME_BASIS}",${formula},"")`;

function retestOf(row: number): string {
  const drift = answer("drift", row);
  const drifted = `IF(ISNUMBER(${drift}),ABS(${drift})>Pressure_Drift_Percent,FALSE)`;
  const days = `(As_Of_Used-${answer("due", row)})`;
  const date = cases(
    [
      [`${days}>1`, `"overdue by "&${days}&" days"`],
      [`${days}=1`, '"overdue by 1 day"'],
      [`${days}=0`, '"due today"'],
    ],
    '""',
  );
  const pressure = `"pressure drifted by "&ROUND(${drift},0)&" %"`;
  return counts(
    row,
    cases(
      [
        [`${answer("w.later", row)}>0`, '"tested again"'],
        ['Retest_Lack<>""', "Retest_Lack"],
        [drifted, `IF(${days}>=0,${date}&"; ","due: ")&${pressure}`],
        [`${days}<0`, '"not due"'],
      ],
      date,
    ),
  );
}

/** What stands beside the lines. */
export const REGISTER_ANSWERS: readonly RegisterAnswer[] = [
  { id: "line", heading: "This line", width: 38, align: "left", formula: lineCheck },
  {
    id: "earlier",
    heading: "Earlier audit of this block",
    width: 11.5,
    format: "yyyy-mm-dd",
    formula: (row) => counts(row, `IF(${answer("w.earlierLine", row)}=0,"",${answer("w.earlierDay", row)})`),
  },
  { id: "basis", heading: "Can it be compared with that one?", width: 54, align: "left", formula: basisOf },
  ...(
    [
      ["mar", "MAR, change [mm/h]", "+0.0;-0.0;0.0"],
      ["cu", "CU, change [points]", "+0.0;-0.0;0.0"],
      ["du", "DU, change [points]", "+0.0;-0.0;0.0"],
    ] as const
  ).map(
    ([id, heading, format]): RegisterAnswer => ({
      id,
      heading,
      width: 8.5,
      format,
      formula: (row) => whereSame(row, difference(id, row)),
    }),
  ),
  {
    id: "sc",
    heading: "SC, change",
    width: 8.5,
    format: "+0.00;-0.00;0.00",
    formula: (row) =>
      whereSame(
        row,
        `IF(${input("kind", row)}="low quarter",${difference("scQuarter", row)},${difference("scCan", row)})`,
      ),
  },
  {
    id: "water",
    heading: "Water, change [kL a year]",
    width: 10,
    format: "+#,##0;-#,##0;0",
    formula: (row) =>
      whereSame(row, `IF(${input("area", row)}<>${earlier("area", row)},"${OTHER_AREA}",${difference("water", row)})`),
  },
  {
    id: "due",
    heading: "Re-test due",
    width: 11.5,
    format: "yyyy-mm-dd",
    formula: (row) =>
      counts(
        row,
        `IF(${answer("w.later", row)}>0,"",IF(Retest_Months_Used="","",EDATE(${answer("w.day", row)},Retest_Months_Used)))`,
      ),
  },
  {
    id: "drift",
    heading: "Pressure drift [%]",
    width: 9,
    format: "+0.0;-0.0;0.0",
    formula: (row) => {
      const at = (day: Id) =>
        `INDEX(${linesOf(columnOf("pressure"))},SUMPRODUCT(${sameKey(row)}*(${all("w.day")}=${answer(day, row)})*${PLACES}))`;
      return counts(
        row,
        `IF(${answer("w.pressureBefore", row)}=0,"",ROUND(100*(${at("w.pressureDay")}/${at("w.pressureBefore")}-1),9))`,
      );
    },
  },
  { id: "retest", heading: "Re-test", width: 40, align: "left", formula: retestOf },
];

const lastDay = (row: number, condition: string) => `SUMPRODUCT(MAX(${sameKey(row)}*${condition}*${all("w.day")}))`;
const measured = `ISNUMBER(${linesOf(columnOf("pressure"))})`;

/** The formula of a working column in a row. */
export const REGISTER_WORKING: Readonly<Record<(typeof WORKING_IDS)[number], (row: number) => string>> = {
  key: (row) =>
    `IF(OR(TRIM(${input("block", row)})="",${answer("w.rawDay", row)}=0),"",LOWER(TRIM(${input("site", row)}))&"|"&LOWER(TRIM(${input("block", row)})))`,
  rawDay: (row) =>
    `IF(ISNUMBER(${input("day", row)}),IF(AND(${input("day", row)}>=1,${input("day", row)}<${LAST_DAY + 1}),INT(${input("day", row)}),0),0)`,
  day: (row) => `IF(${answer("line", row)}="ok",${answer("w.rawDay", row)},0)`,
  earlierDay: (row) => `IF(${answer("w.day", row)}=0,0,${lastDay(row, `(${all("w.day")}<${answer("w.day", row)})`)})`,
  earlierLine: (row) =>
    `IF(${answer("w.earlierDay", row)}=0,0,SUMPRODUCT(${sameKey(row)}*(${all("w.day")}=${answer("w.earlierDay", row)})*${PLACES}))`,
  later: (row) =>
    `IF(${answer("w.day", row)}=0,0,SUMPRODUCT(${sameKey(row)}*(${all("w.day")}>${answer("w.day", row)})))`,
  pressureDay: (row) =>
    `IF(${answer("w.day", row)}=0,0,${lastDay(row, `(${all("w.day")}<=${answer("w.day", row)})*${measured}`)})`,
  pressureBefore: (row) =>
    `IF(${answer("w.pressureDay", row)}=0,0,${lastDay(row, `(${all("w.day")}<${answer("w.pressureDay", row)})*${measured}`)})`,
  basisKey: (row) => {
    const [grid, cans, wind, kind] = ["grid", "cans", "wind", "kind"].map((id) => input(id, row));
    return `IF(OR(${grid}="",${cans}="",${wind}="",${kind}="",${kind}="${SHARE_KIND}"),"",${plainGrid(grid!)}&"|"&${cans}&"|"&${wind}&"|"&${kind})`;
  },
  label: (row) => {
    const before =
      row === FIRST_LINE
        ? "0"
        : `SUMPRODUCT((${above("w.key", row)}=${answer("w.key", row)})*(${above("w.day", row)}>0))`;
    const [site, block] = [`TRIM(${input("site", row)})`, `TRIM(${input("block", row)})`];
    return counts(row, `IF(${before}>0,"",${block}&IF(${site}="",""," · "&${site}))`);
  },
  order: (row) =>
    `IF(AND(${answer("w.day", row)}>0,${answer("w.key", row)}=Trend_Key),1+SUMPRODUCT((${all("w.key")}=Trend_Key)*(${all("w.day")}>${answer("w.day", row)})),0)`,
  place: (row) => `IF(${answer("w.label", row)}="","",ROW()-${FIRST_LINE - 1})`,
};
