import { checkLines } from "../../form/check-lines";
import type { SheetSpec } from "../../form/sheet-spec";
import { BLOCK_CELLS, BLOCK_CHECKS } from "./blocks";
import { DAY_CELLS } from "./day";
import { DAY_CHECKS } from "./day-checks";
import {
  CHECKS_FROM,
  DAY_FROM,
  FIRST_BLOCK,
  FIRST_PAIR,
  FIRST_WINDOW,
  HEADINGS,
  LAST_BLOCK,
  LAST_PAIR,
  LAST_WINDOW,
} from "./places";
import { SETTING_PART } from "./settings";
import { WINDOW_CELLS, WINDOW_CHECKS } from "./windows";

const found = checkLines(CHECKS_FROM + 1, { label: "A:B", text: "C:O" }, DAY_CHECKS);
const STRIKING = { fill: "#f6e8c3", colour: "#543005", bold: true } as const;
const area = (columns: string, first: number, last: number) => {
  const [from, to] = columns.split(":");
  return `${from}${first}:${to}${last}`;
};
/** Struck out where a line says more than "ok". */
const shade = (range: string, cell: string, also = "") => ({
  range,
  formula: `AND(${cell}<>"",${cell}<>"ok"${also})`,
  ...STRIKING,
});

/** The blocks that share the pump, the hours, the tank and the limit of the day. */
export const PROGRAM: SheetSpec = {
  name: "Program",
  widths: [16, 13, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 9, 8, 13, 13, 20, 3, 12, 16, 12, 40],
  heights: {
    2: 30,
    3: 30,
    ...SETTING_PART.heights,
    ...Object.fromEntries(DAY_CHECKS.map((_, index) => [CHECKS_FROM + 1 + index, 18])),
    ...Object.fromEntries(Array.from({ length: 6 }, (_, index) => [DAY_FROM + 1 + index, 30])),
    [HEADINGS]: 62,
  },
  cells: [
    { at: "A1:R1", kind: "title", value: "Program: the blocks that share a pump and a night" },
    {
      at: "A2:R2",
      kind: "said",
      value:
        "Type the pump, the hours and one line for each block (valve). The depth comes from its group on Demand in the month chosen, or is typed. In the pane, Fit the night finds the start times.",
    },
    ...SETTING_PART.cells,
    ...WINDOW_CELLS,
    ...DAY_CELLS,
    { at: `A${CHECKS_FROM}:O${CHECKS_FROM}`, kind: "heading", value: "Data checks" },
    ...found.cells,
    ...BLOCK_CELLS,
  ],
  areas: {
    Program_Blocks: area("A:I", FIRST_BLOCK, LAST_BLOCK),
    Program_Answers: area("J:O", FIRST_BLOCK, LAST_BLOCK),
    Program_Says: area("P:P", FIRST_BLOCK, LAST_BLOCK),
    Program_Names: area("T:T", FIRST_BLOCK, LAST_BLOCK),
    Program_Flows_Lmin: area("O:O", FIRST_BLOCK, LAST_BLOCK),
    Program_Windows: area("K:L", FIRST_WINDOW, LAST_WINDOW),
    Window_Starts_min: area("T:T", FIRST_WINDOW, LAST_WINDOW),
    Window_Lengths_min: area("U:U", FIRST_WINDOW, LAST_WINDOW),
    Program_Apart: area("P:Q", FIRST_PAIR, LAST_PAIR),
    Program_Apart_Says: area("R:R", FIRST_PAIR, LAST_PAIR),
  },
  checks: [...SETTING_PART.checks, ...WINDOW_CHECKS, ...BLOCK_CHECKS],
  shades: [
    ...found.shades,
    shade(area("P:R", FIRST_BLOCK, LAST_BLOCK), `$P${FIRST_BLOCK}`, `,$P${FIRST_BLOCK}<>"no water this month"`),
    shade(area("N:O", FIRST_WINDOW, LAST_WINDOW), `$N${FIRST_WINDOW}`),
    shade(area("R:R", FIRST_PAIR, LAST_PAIR), `$R${FIRST_PAIR}`),
  ],
  landscape: true,
  pages: 2,
  printed: `A1:R${LAST_BLOCK}`,
  hidden: ["S:W"],
  repeated: `${HEADINGS}:${HEADINGS}`,
};
