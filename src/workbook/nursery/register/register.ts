import { columnLetters } from "../../../cells/letters";
import { choiceFrom, count, date, number } from "../../form/allowed";
import { nestedIfs } from "../../form/nested-ifs";
import type { CellSpec, CheckSpec, ShadeSpec, SheetSpec } from "../../form/sheet-spec";
import { REGISTER_ANSWERS } from "./answers";
import { FIRST_LINE, LAST_LINE, linesOf, REGISTER_COLUMNS, REGISTER_LINES } from "./columns";
import { AFTER_WORKING, answerColumn, FIRST_WORKING, LAST_ANSWER } from "./places";
import { TREND } from "./trend";
import { TREND_BOTTOM } from "./trend-places";
import { REGISTER_WORKING } from "./working";

const SETTINGS = 4;
const GROUPS = 5;
const HEADINGS = 6;
const LIST = columnLetters(AFTER_WORKING);
const INPUTS_END = columnLetters(REGISTER_COLUMNS.length);
const ANSWERS_FROM = columnLetters(REGISTER_COLUMNS.length + 1);
const ANSWERS_END = columnLetters(LAST_ANSWER);

const settings: CellSpec[] = [
  { at: `D${SETTINGS}:F${SETTINGS}`, kind: "label", value: "Re-test after [months]", align: "right" },
  { at: `G${SETTINGS}`, kind: "input", name: "Retest_Months", value: 12 },
  { at: `H${SETTINGS}:J${SETTINGS}`, kind: "label", value: "Pressure may drift by [%]", align: "right" },
  { at: `K${SETTINGS}`, kind: "input", name: "Pressure_Drift_Percent", value: 10 },
  { at: `L${SETTINGS}:M${SETTINGS}`, kind: "label", value: "As of [date]", align: "right" },
  { at: `N${SETTINGS}:O${SETTINGS}`, kind: "input", name: "As_Of_Date", format: "yyyy-mm-dd" },
  { at: `P${SETTINGS}:Q${SETTINGS}`, kind: "label", value: "counted from", align: "right" },
  {
    at: `R${SETTINGS}`,
    kind: "answer",
    name: "As_Of_Used",
    format: "yyyy-mm-dd",
    formula: nestedIfs(
      [
        ["ISNUMBER(As_Of_Date)", "INT(As_Of_Date)"],
        ['As_Of_Date<>""', '"needs a date"'],
        ["ISNUMBER(Plan_Date)", "INT(Plan_Date)"],
      ],
      '"needs a date"',
    ),
  },
  {
    at: `${ANSWERS_FROM}${SETTINGS}:${ANSWERS_END}${SETTINGS}`,
    kind: "note",
    value:
      "As of: left blank, the date on the sheet Nursery. 12 months and 10 %: common practice, no source; change them.",
  },
  {
    at: `${columnLetters(FIRST_WORKING)}${SETTINGS}`,
    kind: "working",
    name: "Retest_Months_Used",
    formula:
      'IF(ISNUMBER(Retest_Months),IF(AND(Retest_Months>=1,Retest_Months<=120,Retest_Months=INT(Retest_Months)),Retest_Months,""),"")',
  },
  {
    at: `${columnLetters(FIRST_WORKING + 1)}${SETTINGS}`,
    kind: "working",
    name: "Retest_Lack",
    formula: nestedIfs(
      [
        ['Retest_Months_Used=""', '"needs whole months from 1 to 120"'],
        [
          "IF(ISNUMBER(Pressure_Drift_Percent),OR(Pressure_Drift_Percent<1,Pressure_Drift_Percent>100),TRUE)",
          '"needs a drift from 1 to 100 %"',
        ],
        ["NOT(ISNUMBER(As_Of_Used))", '"needs a date to count from"'],
      ],
      '""',
    ),
  },
];

function lines(): CellSpec[] {
  return Array.from({ length: REGISTER_LINES }, (_, index): CellSpec[] => {
    const row = FIRST_LINE + index;
    return [
      ...REGISTER_COLUMNS.map(
        ({ format, align }, column): CellSpec => ({
          at: `${columnLetters(column + 1)}${row}`,
          kind: "reading",
          ...(format && { format }),
          ...(align && { align }),
        }),
      ),
      ...REGISTER_ANSWERS.map(
        ({ id, formula, format, align }): CellSpec => ({
          at: `${answerColumn(id as "line")}${row}`,
          kind: "entry",
          formula: formula(row),
          ...(format && { format }),
          align: align ?? "center",
        }),
      ),
      ...Object.entries(REGISTER_WORKING).map(
        ([id, formula]): CellSpec => ({
          at: `${answerColumn(`w.${id}` as "w.key")}${row}`,
          kind: "working",
          formula: formula(row),
        }),
      ),
      {
        at: `${LIST}${row}`,
        kind: "working",
        formula: `IF(${index + 1}>COUNT(${linesOf(answerColumn("w.place"))}),"",INDEX(${linesOf(answerColumn("w.label"))},SMALL(${linesOf(answerColumn("w.place"))},${index + 1})))`,
      },
    ];
  }).flat();
}

const check = (cell: string, range: string, allowed: ReturnType<typeof count>): CheckSpec => ({
  range,
  ...allowed(cell),
});

const checks: CheckSpec[] = [
  check(`G${SETTINGS}`, `G${SETTINGS}`, count(1, 120)),
  check(`K${SETTINGS}`, `K${SETTINGS}`, number(1, 100, "%")),
  check(`N${SETTINGS}`, `N${SETTINGS}`, date),
  check(`D${TREND.choice}`, `D${TREND.choice}`, choiceFrom("Register_Block_List")),
  ...REGISTER_COLUMNS.map(({ allowed }, index): CheckSpec => {
    const letters = columnLetters(index + 1);
    return check(`${letters}${FIRST_LINE}`, `${letters}${FIRST_LINE}:${letters}${LAST_LINE}`, allowed);
  }),
];

const STRIKING = { fill: "#f6e8c3", colour: "#543005", bold: true } as const;
const shade = (id: "line" | "retest", formula: (cell: string) => string): ShadeSpec => ({
  range: `${answerColumn(id)}${FIRST_LINE}:${answerColumn(id)}${LAST_LINE}`,
  formula: formula(`$${answerColumn(id)}${FIRST_LINE}`),
  ...STRIKING,
});

/** The audits of every block over time: what changed, what may be compared, and what is due to be tested again. */
export const REGISTER: SheetSpec = {
  name: "Register",
  widths: [
    ...REGISTER_COLUMNS.map(({ width }) => width),
    ...REGISTER_ANSWERS.map(({ width }) => width),
    3,
    ...Object.keys(REGISTER_WORKING).map(() => 11),
    22,
  ],
  heights: { 2: 32, [SETTINGS]: 20, [HEADINGS]: 50, [TREND.headings]: 50, [TREND.choice + 1]: 28 },
  cells: [
    { at: "A1:F1", kind: "title", value: "Register of audits" },
    {
      at: `D2:${INPUTS_END}2`,
      kind: "said",
      value:
        "One line for each block audit: from the files of the audits (pane, step Register), or typed; an audit from a file says so under Checked. Right of it: what changed since the last audit of the block, and when to test again. Further down: one block over time.",
    },
    { at: `D3:${INPUTS_END}3`, kind: "caution", name: "Register_Remark", value: "" },
    ...settings,
    { at: `A${GROUPS}:C${GROUPS}`, kind: "heading", value: "Audit" },
    { at: `D${GROUPS}:${INPUTS_END}${GROUPS}`, kind: "heading", value: "Typed, or from its file" },
    { at: `${ANSWERS_FROM}${GROUPS}:${ANSWERS_END}${GROUPS}`, kind: "heading", value: "Calculated" },
    { at: `${columnLetters(FIRST_WORKING)}${GROUPS}:${LIST}${GROUPS}`, kind: "unit", value: "Intermediate results" },
    ...REGISTER_COLUMNS.map(
      ({ heading }, column): CellSpec => ({
        at: `${columnLetters(column + 1)}${HEADINGS}`,
        kind: "heading",
        value: heading,
      }),
    ),
    ...REGISTER_ANSWERS.map(
      ({ id, heading }): CellSpec => ({
        at: `${answerColumn(id as "line")}${HEADINGS}`,
        kind: "heading",
        value: heading,
      }),
    ),
    ...Object.keys(REGISTER_WORKING).map(
      (id): CellSpec => ({ at: `${answerColumn(`w.${id}` as "w.key")}${HEADINGS}`, kind: "unit", value: id }),
    ),
    ...lines(),
    ...TREND.cells,
  ],
  areas: {
    Register_Rows: `A${FIRST_LINE}:${INPUTS_END}${LAST_LINE}`,
    Register_Answers: `${ANSWERS_FROM}${FIRST_LINE}:${ANSWERS_END}${LAST_LINE}`,
    Register_Block_List: `${LIST}${FIRST_LINE}:${LIST}${LAST_LINE}`,
  },
  checks,
  shades: [
    shade("line", (cell) => `AND(${cell}<>"",${cell}<>"ok")`),
    shade("retest", (cell) => `OR(LEFT(${cell},3)="due",LEFT(${cell},7)="overdue")`),
  ],
  charts: TREND.charts,
  landscape: true,
  printed: `A1:${ANSWERS_END}${TREND_BOTTOM}`,
  hidden: [`${columnLetters(LAST_ANSWER + 1)}:${TREND.lastColumn}`],
  frozenRows: HEADINGS,
  frozenColumns: 3,
  pagesAcross: 2,
  pageEnds: [FIRST_LINE + REGISTER_LINES / 2 - 1, LAST_LINE],
};
