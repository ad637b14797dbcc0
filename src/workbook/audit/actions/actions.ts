import { type Allowed, choice, date, number, words } from "../../form/allowed";
import type { CellSpec, CheckSpec, SheetSpec } from "../../form/sheet-spec";

const FIRST = 5;
const LINES = 14;
const LAST = FIRST + LINES - 1;
const SUMS = LAST + 1;
const PATTERNS = SUMS + 3;

const HEADINGS = ["Cause [words]", "Action [words]", "Owner [words]", "Due [date]", "Cost [currency]", "Done [choose]"];

/** What a map often shows, where to look, and what mends it. */
const PATTERN_LINES = [
  [
    "Dry band along all edges",
    "Heads are inset",
    "Edge cans under 75 % of the middle",
    "Heads onto the border, part circles",
  ],
  ["Dry corners only", "No quarter circles", "Corner cans", "Quarter-circle heads, or no crop there"],
  [
    "Dry long edges, wet middle",
    "Centre line, short throw",
    "Rows of cans across",
    "Side lines, longer throw, flatter profile",
  ],
  [
    "Rings; dry near heads and between",
    "Pressure too low",
    "Gauge",
    "Fewer heads on the valve, larger pipe, more pressure",
  ],
  ["Heaps at the heads, fog", "Pressure too high", "Gauge", "Regulate, or a larger nozzle"],
  [
    "Falls along the line",
    "Friction in the pipe",
    "First and last head over 20 % apart",
    "Larger pipe, loop, split the line",
  ],
  ["One weak place", "A blocked or stopped head", "Bucket under 90 % of its neighbours", "Clean or replace"],
  ["Every flow is high", "Worn nozzles", "Bucket over 110 % of the maker's", "Replace the whole set"],
  ["Skewed to one side", "Wind", "Wind log", "Water at night, windbreak"],
  ["Even, but little water", "Overspray, drift or leaks", "Cans against the meter", "Arcs, pressure, leaks"],
] as const;

const on = (letter: string, allowed: Allowed): CheckSpec => {
  const range = `${letter}${FIRST}:${letter}${LAST}`;
  return { range, ...allowed(`${letter}${FIRST}`) };
};

const actionLine = (row: number): CellSpec[] =>
  HEADINGS.map((_, index): CellSpec => {
    const format = { 3: "yyyy-mm-dd", 4: "#,##0" }[index];
    return { at: `${"ABCDEF"[index]}${row}`, kind: "input", ...(format && { format }) };
  });

/** What is to be done, by whom and until when. */
export const ACTIONS: SheetSpec = {
  name: "Actions",
  roomy: true,
  widths: [28, 34, 15, 12, 12, 10],
  heights: {
    3: 80,
    4: 30,
    ...Object.fromEntries(Array.from({ length: LINES }, (_, index) => [FIRST + index, 28])),
    ...Object.fromEntries(PATTERN_LINES.map((_, index) => [PATTERNS + 1 + index, 26])),
  },
  cells: [
    { at: "A1:F1", kind: "title", value: "Actions" },
    {
      at: "A2:F2",
      kind: "said",
      value:
        "One line for each thing to mend: the cause that was found at the heads, what is done, who does it, until when.",
    },
    { at: "A3:F3", kind: "answer", formula: "Cause_Sentence" },
    ...HEADINGS.map((value, index): CellSpec => ({ at: `${"ABCDEF"[index]}4`, kind: "heading", value })),
    ...Array.from({ length: LINES }, (_, index) => actionLine(FIRST + index)).flat(),
    { at: `A${SUMS}:B${SUMS}`, kind: "label", value: "Cost of all actions" },
    {
      at: `E${SUMS}`,
      kind: "answer",
      name: "Actions_Cost",
      format: "#,##0",
      formula: `IF(COUNT(E${FIRST}:E${LAST})=0,"no costs yet",SUM(E${FIRST}:E${LAST}))`,
    },
    { at: `F${SUMS}`, kind: "unit", value: "currency" },
    ...["Seen on the map", "Likely cause, and where to look", "What mends it"].map(
      (value, index): CellSpec => ({
        at: [`A${PATTERNS}`, `B${PATTERNS}:C${PATTERNS}`, `D${PATTERNS}:F${PATTERNS}`][index]!,
        kind: "heading",
        value,
      }),
    ),
    ...PATTERN_LINES.flatMap(([seen, cause, look, mend], index): CellSpec[] => {
      const row = PATTERNS + 1 + index;
      return [
        { at: `A${row}`, kind: "note", value: seen },
        {
          at: `B${row}:C${row}`,
          kind: "note",
          value: `${cause}. Look: ${look.charAt(0).toLowerCase()}${look.slice(1)}.`,
        },
        { at: `D${row}:F${row}`, kind: "note", value: mend },
      ];
    }),
  ],
  areas: { Actions_Table: `A${FIRST}:F${LAST}` },
  checks: [
    on("A", words(120)),
    on("B", words(160)),
    on("C", words(60)),
    on("D", date),
    on("E", number(0, 1e9, "")),
    on("F", choice("yes", "no")),
  ],
};
