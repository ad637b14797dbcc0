import type { ShadeSpec } from "../../form/sheet-spec";
import { FILLED, FIRST_ON_PAPER, LAST_ROW, LISTS, TURN } from "./paper";
import { column, PAPER_LINES } from "./places";

const STARTS = LISTS[0].columns[2];
const SECOND = FIRST_ON_PAPER + 1;

/** Blank paper gets its fill where something is in it. */
export const PAPER_SHADES: readonly ShadeSpec[] = [
  { range: "AL1", formula: `${FILLED}>${PAPER_LINES}`, fill: "#fbf4e2" },
  {
    range: `${STARTS}${SECOND}:${STARTS}${LAST_ROW}`,
    // starts in other hours, or on another day, than the line before
    formula: `IF(COUNT($${TURN}${SECOND},$${TURN}${FIRST_ON_PAPER})=2,$${TURN}${SECOND}<>$${TURN}${FIRST_ON_PAPER},FALSE)`,
    fill: "#dfc27d",
    bold: true,
  },
  ...LISTS.flatMap(({ columns, line }): ShadeSpec[] => {
    const range = `${columns[0]}${FIRST_ON_PAPER}:${columns.at(-1)}${LAST_ROW}`;
    const check = `INDEX(${column("I")},$${line}${FIRST_ON_PAPER})`;
    return [
      {
        range,
        formula: `IF(ISNUMBER($${line}${FIRST_ON_PAPER}),${check}<>"ok",FALSE)`,
        fill: "#f6e8c3",
        colour: "#543005",
        bold: true,
      },
      { range, formula: `ISNUMBER($${line}${FIRST_ON_PAPER})`, fill: "#fbf4e2" },
    ];
  }),
];
