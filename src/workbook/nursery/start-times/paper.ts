import { count } from "../../form/allowed";
import { nestedIfs, quoted } from "../../form/nested-ifs";
import type { CellSpec, CheckSpec } from "../../form/sheet-spec";
import { column, FIRST, HEADINGS, NOWHEN, PAPER_LINES, PAPER_PARTS, PAPER_ROWS } from "./places";

const LISTS = [
  { title: "In order of time (dark: first of other hours or of a new day)", key: "P" },
  { title: "By block", key: "Q" },
] as const;
export const HALVES = [
  { columns: ["Z", "AA", "AB", "AC", "AD", "AE"], line: "AN", turn: "AP" },
  { columns: ["AG", "AH", "AI", "AJ", "AK", "AL"], line: "AO", turn: "AQ" },
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
  { title: "Time [min]", of: "E" },
  { title: "Line", of: "A" },
];

export const FILLED = `COUNT(${column("P")})`;
const startOf = (list: number) => FIRST + list * (PAPER_ROWS + 1);
/** The part that is shown has more lines than its first half holds. */
export const SECOND_HALF = `${FILLED}>${PAPER_LINES}*(Paper_Part_Used-1)+${PAPER_ROWS}`;
export const LAST_ROW = startOf(LISTS.length) - 1;

const paperCell = (of: string, line: string) => {
  const value = `INDEX(${column(of)},${line})`;
  if (of === "C") {
    const ofBlock = `SUMPRODUCT((${column("M")}=INDEX(${column("M")},${line}))*1)`;
    return `IF(${line}="","",IF(${value}="","",${value}&IF(INDEX(${column("M")},${line})="",""," of "&${ofBlock})))`;
  }
  if (of === "A") return `IF(${line}="","",${value}&IF(INDEX(${column("I")},${line})="ok",""," !"))`;
  return `IF(${line}="","",IF(${value}="","",${value}))`;
};

/** A number for the day and the hours in which a line starts; "" where it does not start. */
const hoursOf = (line: string) => {
  const start = `INDEX(${column("K")},${line})`;
  const begun = `SUMPRODUCT((Window_Lengths_min>0)*(MOD(Window_Starts_min-Night_First_min,1440)<=${start}))`;
  return `IF(${line}="","",IF(${start}=${NOWHEN},"",100*INT((${start}+Night_First_min)/1440)+${begun}))`;
};

const half = (list: number, side: number): CellSpec[] => {
  const { columns, line, turn } = HALVES[side]!;
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
      ...(list === 0 ? [{ at: `${turn}${row}`, kind: "working", formula: hoursOf(`$${line}${row}`) } as const] : []),
      ...COLUMNS.map(
        ({ of, format }, i): CellSpec => ({
          at: `${columns[i]}${row}`,
          kind: "label",
          bare: true,
          shrink: true,
          formula: paperCell(of, `$${line}${row}`),
          align: i === 0 ? "left" : "center",
          ...(format && { format }),
        }),
      ),
    ];
  }).flat();
};

/** Parts that the filled lines take. */
const PARTS = `MAX(1,-INT(-${FILLED}/${PAPER_LINES}))`;
const FIRST_SHOWN = `${PAPER_LINES}*(Paper_Part_Used-1)+1`;
const PART = nestedIfs(
  [[`${FILLED}<=${PAPER_LINES}`, '""']],
  `"Part "&Paper_Part_Used&" of "&${PARTS}&": lines "&${FIRST_SHOWN}&" to "&MIN(${FILLED},${PAPER_LINES}*Paper_Part_Used)&" of "&${FILLED}&". Print each part; part:"`,
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
    formula: `IF(COUNT(Paper_Part)=1,IF(AND(Paper_Part>=1,Paper_Part<=${PARTS},Paper_Part=INT(Paper_Part)),Paper_Part,1),1)`,
  },
  ...HALVES.flatMap(({ columns, line, turn }, side): CellSpec[] => [
    ...COLUMNS.map(({ title }, i): CellSpec => {
      const at = `${columns[i]}${HEADINGS}`;
      if (side === 0) return { at, kind: "heading", value: title };
      return { at, kind: "heading", bare: true, formula: `IF(${SECOND_HALF},${quoted(title)},"")` };
    }),
    { at: `${line}${HEADINGS}`, kind: "working", value: "line" },
    { at: `${turn}${HEADINGS}`, kind: "working", value: "hours" },
  ]),
  ...LISTS.flatMap(({ title }, list): CellSpec[] => [
    { at: `Z${startOf(list)}:AL${startOf(list)}`, kind: "heading", value: title },
    ...HALVES.flatMap((_, side) => half(list, side)),
  ]),
];

export const PAPER_CHECK: CheckSpec = { range: "AL1", ...count(1, PAPER_PARTS)("AL1") };

export const PAPER = `Z1:AL${LAST_ROW}`;
/** Rows after which a page of the paper ends. */
export const PAPER_ENDS: readonly number[] = [startOf(1) - 1];
/** Heights [points] of the rows that are printed: one can tick them by hand. */
export const PAPER_HEIGHTS = Object.fromEntries(
  Array.from({ length: LAST_ROW - FIRST + 1 }, (_, index) => [FIRST + index, 26] as const),
);
