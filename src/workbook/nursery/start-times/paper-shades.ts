import type { ShadeSpec } from "../../form/sheet-spec";
import { FILLED, HALVES, LAST_ROW, SECOND_HALF } from "./paper";
import { column, FIRST, HEADINGS, PAPER_LINES, PAPER_ROWS } from "./places";

/** Starts in other hours, or on another day, than the line before. */
const turned = (
  { columns, turn }: (typeof HALVES)[number],
  row: number,
  before: string,
  last = FIRST + PAPER_ROWS,
): ShadeSpec => ({
  range: `${columns[2]}${row}:${columns[2]}${last}`,
  formula: `IF(COUNT($${turn}${row},${before})=2,$${turn}${row}<>${before},FALSE)`,
  fill: "#dfc27d",
  bold: true,
});

/** Blank paper gets its fill where something is in it. */
export const PAPER_SHADES: readonly ShadeSpec[] = [
  { range: "AL1", formula: `${FILLED}>${PAPER_LINES}`, fill: "#fbf4e2" },
  { range: `AG${HEADINGS}:AL${HEADINGS}`, formula: SECOND_HALF, fill: "#dfc27d" },
  turned(HALVES[0], FIRST + 2, `$AP${FIRST + 1}`),
  turned(HALVES[1], FIRST + 1, `$AP${FIRST + PAPER_ROWS}`, FIRST + 1),
  turned(HALVES[1], FIRST + 2, `$AQ${FIRST + 1}`),
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
