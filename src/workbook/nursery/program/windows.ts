import { type Allowed, words } from "../../form/allowed";
import { nestedIfs } from "../../form/nested-ifs";
import type { CellSpec, CheckSpec } from "../../form/sheet-spec";
import { FIRST_PAIR, FIRST_WINDOW, LAST_PAIR, LAST_WINDOW, ofBlocks, ofWindows } from "./places";

const rows = (first: number, last: number) => Array.from({ length: last - first + 1 }, (_, index) => first + index);

const startOf = (row: number) => `MOD(ROUND(K${row}*1440,0),1440)`;
const endOf = (row: number) => `ROUND(L${row}*1440,0)`;
const areTimes = (row: number) =>
  `IF(COUNT(K${row}:L${row})=2,AND(MIN(K${row}:L${row})>=0,K${row}<1,L${row}<=1),FALSE)`;

const says = (row: number) =>
  nestedIfs(
    [
      [`COUNTA(K${row}:L${row})=0`, '""'],
      [`COUNTA(K${row}:L${row})=1`, '"needs both times"'],
      [`NOT(${areTimes(row)})`, '"must be times of day"'],
      [`U${row}<0`, '"both times are the same"'],
      [`V${row}>1440`, '"not within 24 hours"'],
      ...(row === FIRST_WINDOW
        ? []
        : ([[`V${row}-U${row}<MAX(V$${FIRST_WINDOW}:V${row - 1})`, '"overlaps an earlier line"']] as const)),
    ],
    '"ok"',
  );

const isOk = (last: number) => `COUNTIF(N$${FIRST_WINDOW}:N${last},"ok")`;
/** `20:00 to 23:00 and 01:00 to 05:00`, of the lines down to this one. */
const wordsUpTo = (row: number) => {
  const own = `TEXT(T${row}/1440,"hh:mm")&" to "&TEXT(MOD(T${row}+U${row},1440)/1440,"hh:mm")`;
  if (row === FIRST_WINDOW) return `IF(N${row}="ok",${own},"")`;
  const all = isOk(LAST_WINDOW);
  const joint = `IF(W${row - 1}="","",IF(${isOk(row)}=${all}," and ",", "))`;
  return `IF(N${row}="ok",W${row - 1}&${joint}&${own},W${row - 1})`;
};

const windowLine = (row: number): CellSpec[] => [
  { at: `K${row}`, kind: "input", format: "h:mm" },
  { at: `L${row}`, kind: "input", format: "h:mm" },
  { at: `M${row}`, kind: "answer", format: "0.0", align: "right", formula: `IF(U${row}<0,"",U${row}/60)` },
  { at: `N${row}:O${row}`, kind: "note", shrink: true, formula: says(row) },
  { at: `T${row}`, kind: "working", formula: `IF(U${row}<0,-1,${startOf(row)})` },
  {
    at: `U${row}`,
    kind: "working",
    formula: `IF(${areTimes(row)},IF(${startOf(row)}=${endOf(row)},-1,${endOf(row)}-${startOf(row)}+IF(${endOf(row)}>${startOf(row)},0,1440)),-1)`,
  },
  { at: `V${row}`, kind: "working", formula: `IF(U${row}<0,0,MOD(T${row}-Night_First_min,1440)+U${row})` },
  { at: `W${row}`, kind: "working", formula: wordsUpTo(row), align: "left" },
];

const isBlock = (cell: string) => `SUMPRODUCT((${ofBlocks("T")}=TRIM(${cell}))*1)>0`;

const pairLine = (row: number): CellSpec[] => [
  { at: `P${row}`, kind: "input", shrink: true },
  { at: `Q${row}`, kind: "input", shrink: true },
  {
    at: `R${row}`,
    kind: "note",
    formula: nestedIfs(
      [
        [`COUNTA(P${row}:Q${row})=0`, '""'],
        [`COUNTA(P${row}:Q${row})=1`, '"needs two blocks"'],
        [`TRIM(P${row})=TRIM(Q${row})`, '"twice the same block"'],
        [`NOT(${isBlock(`P${row}`)})`, `TRIM(P${row})&" is no block"`],
        [`NOT(${isBlock(`Q${row}`)})`, `TRIM(Q${row})&" is no block"`],
      ],
      '"ok"',
    ),
  },
];

const head = (at: string, value: string): CellSpec => ({ at, kind: "heading", value });
const WINDOWS = rows(FIRST_WINDOW, LAST_WINDOW);
const PAIRS = rows(FIRST_PAIR, LAST_PAIR);
const T_OF = (row: number) => `T${row}`;

/** Hours in which water may run, and blocks that may not run together. */
export const WINDOW_CELLS: readonly CellSpec[] = [
  head("K3:O3", "Hours when water may run (first line: start of the night)"),
  head("K4", "From"),
  head("L4", "To"),
  head("M4", "Hours"),
  head("N4:O4", "Says"),
  ...WINDOWS.flatMap(windowLine),
  head("P3:R3", "Blocks that may not run together"),
  head("P4", "Block"),
  head("Q4", "Block"),
  head("R4", "Says"),
  ...PAIRS.flatMap(pairLine),
  { at: "T4", kind: "working", value: "from [min]" },
  { at: "U4", kind: "working", value: "length [min]" },
  { at: "V4", kind: "working", value: "ends after" },
  { at: "W4", kind: "working", value: "in words", align: "left" },
  { at: "W11", kind: "working", value: "hours in words", align: "left" },
  {
    at: "W12",
    kind: "working",
    name: "Hours_Words",
    align: "left",
    formula: `IF(Hours_Wrong>0,"put the hours right",W${LAST_WINDOW})`,
  },
  { at: "U17", kind: "working", align: "left", value: "wrong lines of hours" },
  {
    at: "V17",
    kind: "working",
    name: "Hours_Wrong",
    formula: `SUMPRODUCT((${ofWindows("N")}<>"")*(${ofWindows("N")}<>"ok"))`,
  },
  { at: "U11", kind: "working", value: "night from [min]" },
  {
    at: "V11",
    kind: "working",
    name: "Night_First_min",
    formula: nestedIfs(
      WINDOWS.map((row) => [`${T_OF(row)}>=0`, T_OF(row)]),
      "0",
    ),
  },
  { at: "U12", kind: "working", value: "to its end [min]" },
  { at: "V12", kind: "working", name: "Night_Length_min", formula: `MAX(V${FIRST_WINDOW}:V${LAST_WINDOW})` },
];

const timeTo24: Allowed = () => ({
  rule: { kind: "number", least: 0, most: 1 },
  message: "A time of day, such as 20:00.",
});
const on = (range: string, allowed: Allowed): CheckSpec => ({ range, ...allowed(range.split(":")[0]!) });

export const WINDOW_CHECKS: readonly CheckSpec[] = [
  on(`K${FIRST_WINDOW}:L${LAST_WINDOW}`, timeTo24),
  on(`P${FIRST_PAIR}:Q${LAST_PAIR}`, words(40)),
];
