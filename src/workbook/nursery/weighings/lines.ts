import { nestedIfs } from "../../form/nested-ifs";
import type { CellSpec } from "../../form/sheet-spec";
import { aboveZero, outside, wrong } from "../../form/typed-words";
import { GROUP_COLUMNS } from "../demand/places";

export const FIRST_LINE = 5;
export const LAST_LINE = FIRST_LINE + 59;
export const ofLines = (letter: string): string => `$${letter}$${FIRST_LINE}:$${letter}$${LAST_LINE}`;

/** Rows of January in the three tables beside the lines, by group and month. */
export const MEAN_FROM = FIRST_LINE + 2;
export const ERROR_FROM = MEAN_FROM + 15;
export const COUNT_FROM = ERROR_FROM + 15;
/** Column of the month in those tables, and those of the groups. */
export const MONTH_COLUMN = "K";
export const TABLE_COLUMNS = ["L", "M", "N", "O", "P", "Q"] as const;

const NAMED_ITEMS = [
  ["A", "group"],
  ["B", "month"],
  ["C", "mass before"],
  ["D", "mass after"],
  ["E", "hours"],
] as const;

/** What is wrong or missing in a line; "" in a line that is right or empty. */
function wordsFormula(row: number): string {
  const [a, b, c, d, e] = [..."ABCDE"].map((letter) => `$${letter}${row}`) as [string, string, string, string, string];
  const lacking = NAMED_ITEMS.map(([letter, name]) => `IF($${letter}${row}="",", ${name}","")`).join("&");
  return nestedIfs(
    [
      [`COUNTA(${a}:${e})=0`, '""'],
      [`AND(${a}<>"",SUMPRODUCT(--(Demand_Groups=${a}))=0)`, `"group in A${row} is none of the names on Demand"`],
      [`AND(${a}<>"",SUMPRODUCT(--(Demand_Groups=${a}))>1)`, `"group in A${row} is a name that Demand has twice"`],
      [
        `OR(${outside(b, 1, 12)},IF(ISNUMBER(${b}),${b}<>INT(${b}),FALSE))`,
        wrong("month", b, "be a whole number from 1 to 12"),
      ],
      aboveZero("mass before", c, "g"),
      aboveZero("mass after", d, "g"),
      [`AND(COUNT(${c}:${d})=2,${d}>${c})`, `"mass after in D${row} must be at most the "&${c}&" g before, got "&${d}`],
      aboveZero("hours", e, "h"),
      [`OR(${a}="",COUNT(${b}:${e})<4)`, `"needs"&MID(${lacking},2,99)`],
    ],
    '""',
  );
}

const place = (row: number) =>
  `100*SUMPRODUCT((Demand_Groups=$A${row})*(COLUMN(Demand_Groups)-COLUMN(INDEX(Demand_Groups,1,1))+1))+$B${row}`;

/** Five things are typed in a line; use, what is wrong, and what the tables count follow. */
export function weighingLine(row: number): CellSpec[] {
  const typed: CellSpec[] = [..."ABCDE"].map((letter) => ({ at: `${letter}${row}`, kind: "input" }));
  return [
    ...typed,
    {
      at: `F${row}`,
      kind: "answer",
      format: "0.0",
      formula: `IF(AND(COUNT($B${row}:$E${row})=4,$A${row}<>"",$G${row}=""),24*($C${row}-$D${row})/$E${row},"")`,
    },
    { at: `G${row}`, kind: "note", formula: wordsFormula(row) },
    { at: `H${row}`, kind: "working", format: "0", formula: `IF(ISNUMBER($F${row}),${place(row)},"")` },
    {
      at: `I${row}`,
      kind: "working",
      format: "0.0;-0.0;",
      formula: `IF(ISNUMBER($F${row}),$F${row},0)`,
    },
  ];
}

/** What the tables say of a group and a month: number of pots weighed, their mean use, its standard error. */
export function tableFormulas(group: number, month: number): { count: string; mean: string; error: string } {
  const key = 100 * (group + 1) + month + 1;
  const column = TABLE_COLUMNS[group]!;
  const [pots, mean] = [`$${column}$${COUNT_FROM + month}`, `$${column}$${MEAN_FROM + month}`];
  const use = `SUMIF(${ofLines("H")},${key},${ofLines("I")})`;
  return {
    count: `COUNTIF(${ofLines("H")},${key})`,
    mean: `IF(${pots}>0,${use}/${pots},"")`,
    error: `IF(${pots}>1,SQRT(SUMPRODUCT((${ofLines("H")}=${key})*(${ofLines("I")}-${mean})^2)/(${pots}-1)/${pots}),"")`,
  };
}

export const groupName = (index: number): string => `INDEX(Demand_Groups,1,${index + 1})`;
export const GROUPS = GROUP_COLUMNS.length;
