import { CAUTION } from "../../cautions";
import { count } from "../../form/allowed";
import { nestedIfs } from "../../form/nested-ifs";
import type { CellSpec, CheckSpec } from "../../form/sheet-spec";
import { column, FIRST, HEADINGS, NOWHEN, PAPER_LINES, PAPER_PARTS } from "./places";

/** The two orders of the lines, side by side on a page. */
export const LISTS = [
  {
    title: "In order of time (dark: first of other hours or of a new day)",
    key: "P",
    columns: ["Z", "AA", "AB", "AC", "AD", "AE"],
    line: "AN",
  },
  { title: "By block", key: "Q", columns: ["AG", "AH", "AI", "AJ", "AK", "AL"], line: "AO" },
] as const;
/** The hours in which each line of the first list starts. */
export const TURN = "AP";

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
export const FIRST_ON_PAPER = FIRST + 1;
export const LAST_ROW = FIRST + PAPER_LINES;

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

const listCells = ({ columns, line, key: letter }: (typeof LISTS)[number], list: number): CellSpec[] => {
  const key = column(letter);
  return Array.from({ length: PAPER_LINES }, (_, index): CellSpec[] => {
    const row = FIRST_ON_PAPER + index;
    const place = `${PAPER_LINES}*(Paper_Part_Used-1)+${index + 1}`;
    return [
      {
        at: `${line}${row}`,
        kind: "working",
        formula: `IF(${place}>${FILLED},"",MATCH(SMALL(${key},${place}),${key},0))`,
      },
      ...(list === 0 ? [{ at: `${TURN}${row}`, kind: "working", formula: hoursOf(`$${line}${row}`) } as const] : []),
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

/** What is printed, a page a part: the lines in order of time and, beside them, by block. */
export const PAPER_CELLS: readonly CellSpec[] = [
  { at: "Z1:AC1", kind: "title", value: "Start times" },
  { at: "AD1:AK1", kind: "note", formula: PART, align: "right" },
  { at: "AL1", kind: "input", bare: true, name: "Paper_Part", align: "center" },
  { at: "Z2:AL2", kind: "label", formula: "A2" },
  { at: "Z3:AL3", kind: "label", formula: "A3" },
  { at: "Z4:AL4", kind: "caution", formula: `Start_Times_Status&" ${CAUTION.UNATTENDED}"` },
  { at: "S1", kind: "working", value: "part printed" },
  {
    at: "T1",
    kind: "working",
    name: "Paper_Part_Used",
    formula: `IF(COUNT(Paper_Part)=1,IF(AND(Paper_Part>=1,Paper_Part<=${PARTS},Paper_Part=INT(Paper_Part)),Paper_Part,1),1)`,
  },
  ...LISTS.flatMap((list, index): CellSpec[] => {
    const { title, columns, line } = list;
    return [
      { at: `${columns[0]}${HEADINGS}:${columns.at(-1)}${HEADINGS}`, kind: "heading", value: title },
      ...COLUMNS.map((one, i): CellSpec => ({ at: `${columns[i]}${FIRST}`, kind: "heading", value: one.title })),
      { at: `${line}${HEADINGS}`, kind: "working", value: "line" },
      ...listCells(list, index),
    ];
  }),
  { at: `${TURN}${HEADINGS}`, kind: "working", value: "hours" },
];

export const PAPER_CHECK: CheckSpec = { range: "AL1", ...count(1, PAPER_PARTS)("AL1") };

export const PAPER = `Z1:AL${LAST_ROW}`;
/** Heights [points] of the rows that are printed: one can tick them by hand. */
export const PAPER_HEIGHTS = {
  [FIRST]: 32,
  ...Object.fromEntries(Array.from({ length: PAPER_LINES }, (_, index) => [FIRST_ON_PAPER + index, 21] as const)),
};
