import { count } from "../allowed";
import { cases } from "../cases";
import type { CellSpec, CheckSpec, ShadeSpec } from "../sheet-spec";
import { column, FIRST, HEADINGS, PAPER_LINES, PAPER_ROWS } from "./start-times-places";

const LISTS = [
  { title: "In order of time", key: "P" },
  { title: "By block", key: "Q" },
] as const;
const HALVES = [
  { columns: ["Z", "AA", "AB", "AC", "AD", "AE"], line: "AN" },
  { columns: ["AG", "AH", "AI", "AJ", "AK", "AL"], line: "AO" },
] as const;

interface PaperColumn {
  title: string;
  of: string;
  format?: string;
}
const COLUMNS: readonly PaperColumn[] = [
  { title: "Block", of: "M" },
  { title: "Pulse", of: "C" },
  { title: "Start [h:mm]", of: "D", format: "hh:mm" },
  { title: "End [h:mm]", of: "F", format: "hh:mm" },
  { title: "Minutes", of: "E", format: "0.##" },
  { title: "Line", of: "A" },
];

const FILLED = `COUNT(${column("P")})`;
const startOf = (list: number) => FIRST + list * (PAPER_ROWS + 1);
const LAST_ROW = startOf(LISTS.length) - 1;

const shown = (of: string, line: string) => {
  const value = `INDEX(${column(of)},${line})`;
  if (of === "A") return `IF(${line}="","",${value}&IF(INDEX(${column("I")},${line})="ok",""," !"))`;
  return `IF(${line}="","",IF(${value}="","",${value}))`;
};

const half = (list: number, side: number): CellSpec[] => {
  const { columns, line } = HALVES[side]!;
  const key = column(LISTS[list]!.key);
  return Array.from({ length: PAPER_ROWS }, (_, index): CellSpec[] => {
    const row = startOf(list) + 1 + index;
    const place = `${PAPER_LINES}*(Paper_Part_Used-1)+${side * PAPER_ROWS + index + 1}`;
    return [
      {
        at: `${line}${row}`,
        kind: "working",
        formula: `IF(${place}>${FILLED},"",MATCH(SMALL(${key},${place}),${key},0))`,
      },
      ...COLUMNS.map(
        ({ of, format }, i): CellSpec => ({
          at: `${columns[i]}${row}`,
          kind: "label",
          bare: true,
          shrink: true,
          formula: shown(of, `$${line}${row}`),
          align: i === 0 ? "left" : "center",
          ...(format && { format }),
        }),
      ),
    ];
  }).flat();
};

const FIRST_SHOWN = `${PAPER_LINES}*(Paper_Part_Used-1)+1`;
const PART = cases(
  [[`${FILLED}<=${PAPER_LINES}`, '""']],
  `"Part "&Paper_Part_Used&" of 2: lines "&${FIRST_SHOWN}&" to "&MIN(${FILLED},${PAPER_LINES}*Paper_Part_Used)&" of "&${FILLED}&". Print parts 1 and 2; part:"`,
);

/** What is printed: the lines in order of time, then by block, each on a page of its own. */
export const PAPER_CELLS: readonly CellSpec[] = [
  { at: "Z1:AC1", kind: "title", value: "Start times" },
  { at: "AD1:AK1", kind: "note", formula: PART, align: "right" },
  { at: "AL1", kind: "input", bare: true, name: "Paper_Part", align: "center" },
  { at: "Z2:AL2", kind: "label", formula: "A2" },
  { at: "Z3:AL3", kind: "label", formula: "A3" },
  { at: "Z4:AL4", kind: "caution", formula: "Start_Times_Status" },
  { at: "S1", kind: "working", value: "part printed" },
  {
    at: "T1",
    kind: "working",
    name: "Paper_Part_Used",
    formula: `IF(COUNT(Paper_Part)=1,IF(AND(Paper_Part=2,${FILLED}>${PAPER_LINES}),2,1),1)`,
  },
  ...HALVES.flatMap(({ columns, line }): CellSpec[] => [
    ...COLUMNS.map(({ title }, i): CellSpec => ({ at: `${columns[i]}${HEADINGS}`, kind: "heading", value: title })),
    { at: `${line}${HEADINGS}`, kind: "working", value: "line" },
  ]),
  ...LISTS.flatMap(({ title }, list): CellSpec[] => [
    { at: `Z${startOf(list)}:AL${startOf(list)}`, kind: "heading", value: title },
    ...HALVES.flatMap((_, side) => half(list, side)),
  ]),
];

export const PAPER_CHECK: CheckSpec = { range: "AL1", ...count(1, 2)("AL1") };

export const PAPER_SHADES: readonly ShadeSpec[] = [
  { range: "AL1", formula: `${FILLED}>${PAPER_LINES}`, fill: "#fbf4e2" },
  ...HALVES.flatMap(({ columns, line }): ShadeSpec[] => {
    const range = `${columns[0]}${FIRST + 1}:${columns.at(-1)}${LAST_ROW}`;
    const check = `INDEX(${column("I")},$${line}${FIRST + 1})`;
    return [
      {
        range,
        formula: `IF(ISNUMBER($${line}${FIRST + 1}),${check}<>"ok",FALSE)`,
        fill: "#f6e8c3",
        colour: "#543005",
        bold: true,
      },
      { range, formula: `ISNUMBER($${line}${FIRST + 1})`, fill: "#fbf4e2" },
    ];
  }),
];

export const PAPER = `Z1:AL${LAST_ROW}`;
/** Rows after which a page of the paper ends. */
export const PAPER_ENDS: readonly number[] = [startOf(1) - 1];
