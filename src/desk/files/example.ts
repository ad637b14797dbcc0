import type { ICellData, IStyleData, IWorkbookData } from "@univerjs/core";
import { ENTRIES } from "../../core/figures/entries";
import { MEASURES } from "../../core/figures/measures";
import { RUN_TIME } from "../../core/figures/run-time";
import { definedNames } from "./defined-names";

const SHEET = "Example";
const CANS = "B2:B26";
const WRAPPED = `IF(${CANS}="","x",${CANS})`;
const TEST = "E5,E6";

/** Invented catches [mL]: a bed of 5 by 5 cans seen from above, dry along its edges. */
const BED = [
  [15, 17, 18, 17, 13],
  [19, 26, 28, 25, 18],
  [20, 29, 33, 28, 21],
  [18, 27, 29, 26, 19],
  [16, 19, 21, 18, 15],
];

const STYLES = {
  title: { bl: 1, fs: 14, cl: { rgb: "#543005" } },
  said: { it: 1, cl: { rgb: "#5a4a33" } },
  head: { bl: 1, bg: { rgb: "#dfc27d" }, cl: { rgb: "#3b2206" } },
  given: { bg: { rgb: "#fbf4e2" } },
  map: { bg: { rgb: "#fbf4e2" }, ht: 2 },
  answer: { n: { pattern: "0.00" }, bg: { rgb: "#e6f4f2" } },
  minutes: { n: { pattern: "0.0" }, bg: { rgb: "#e6f4f2" } },
  whole: { n: { pattern: "#,##0" }, bg: { rgb: "#e6f4f2" } },
  summaryHead: { bl: 1, bg: { rgb: "#c7eae5" }, cl: { rgb: "#003c30" } },
  summary: { n: { pattern: "0.00" } },
  count: { n: { pattern: "0" } },
} satisfies Record<string, IStyleData>;

type Style = keyof typeof STYLES;
type Cells = Record<number, Record<number, ICellData>>;

const GIVEN: [string, number, string][] = [
  ["Minutes of the test", 15, "min"],
  [ENTRIES.Can_Mouth_mm.label, 100, "mm"],
  ["Net depth wanted", 9.4, "mm"],
  ["Area of the bed", 192, "m²"],
  ["Days watered", 300, "days a year"],
  ["Price of water", 2.6, "per kL"],
];

const ANSWERS: [string, string, string, Style][] = [
  ["SC of the driest can", `=CANFALL.SC.CAN(${WRAPPED})`, "times", "answer"],
  [`${RUN_TIME.TIME.name} for the driest can`, `=CANFALL.RUNTIME(${WRAPPED},${TEST},E7)`, "min", "minutes"],
  ["Water falling on the bed only", `=CANFALL.WATER.ANNUAL(${WRAPPED},E8,E7,E9)`, "kL a year", "whole"],
  ["Cost of that water", `=CANFALL.COST.ANNUAL(${WRAPPED},E8,E7,E9,E10)`, "a year", "whole"],
  [`${MEASURES.DU.short}, low and high end (90 %)`, `=CANFALL.INTERVAL(${WRAPPED},"DU.QUARTER")`, "", "answer"],
];

function exampleCells(): Cells {
  const cells: Cells = {};
  const put = (row: number, column: number, content: string | number, style?: Style) => {
    const text = typeof content === "string";
    let value: ICellData = { v: content, t: text ? 1 : 2 };
    if (text && content.startsWith("=")) value = { f: content };
    if (content === "") value = {};
    cells[row - 1] = { ...cells[row - 1], [column]: style ? { ...value, s: style } : value };
  };
  put(1, 0, "Can", "head");
  put(1, 1, "Caught [mL]", "head");
  BED.flat().forEach((reading, can) => {
    put(can + 2, 0, can + 1);
    put(can + 2, 1, reading, "given");
  });
  put(1, 3, "Example Nursery, block 12", "title");
  put(2, 3, "Invented readings: type your own over them and all below follows. A can that was not read: x", "said");
  ["Test and block", "Value", "Unit"].forEach((word, i) => {
    put(4, 3 + i, word, "head");
  });
  GIVEN.forEach(([label, value, unit], i) => {
    put(5 + i, 3, label);
    put(5 + i, 4, value, "given");
    put(5 + i, 5, unit);
  });
  for (let column = 7; column < 12; column++) put(4, column, column === 7 ? "Bed from above [mL]" : "", "head");
  BED.forEach((line, i) => {
    line.forEach((_, j) => {
      const can = `B${2 + i * 5 + j}`;
      put(5 + i, 7 + j, `=IF(${can}="","x",${can})`, "map");
    });
  });
  ["Answer", "Value", "Unit"].forEach((word, i) => {
    put(12, 3 + i, word, "head");
  });
  ANSWERS.forEach(([label, formula, unit, style], i) => {
    put(13 + i, 3, label);
    put(13 + i, 4, formula, style);
    put(13 + i, 5, unit, unit === "" ? style : undefined);
  });
  put(17, 6, "%");
  for (let column = 3; column < 10; column++) {
    put(19, column, "", "summaryHead");
    for (let row = 20; row < 27; row++) put(row, column, "", row < 22 ? "count" : "summary");
  }
  put(19, 3, `=CANFALL.SUMMARY(${WRAPPED},${TEST})`, "summaryHead");
  return cells;
}

const NAMES = { Cans_Readings: "$B$2:$B$26", Test_Minutes: "$E$5", Can_Mouth_mm: "$E$6", Net_Depth_mm: "$E$7" };
const WIDTHS = [48, 116, 20, 216, 84, 96, 72, 72, 72, 72, 72, 72];

/** What is selected when the desk opens, so that the pane shows its figures at once. */
export const EXAMPLE_READINGS = { sheet: SHEET, address: "B2:B26" };

/** The workbook that the desk opens with. */
export function exampleWorkbook(): Partial<IWorkbookData> {
  const names = Object.entries(NAMES).map(([name, cells]) => ({ name, reference: `${SHEET}!${cells}` }));
  return {
    id: "canfall-example",
    name: SHEET,
    styles: STYLES,
    sheetOrder: ["example"],
    sheets: {
      example: {
        id: "example",
        name: SHEET,
        rowCount: 200,
        columnCount: 26,
        defaultColumnWidth: 92,
        columnData: Object.fromEntries(WIDTHS.map((w, column) => [column, { w }])),
        freeze: { xSplit: 0, ySplit: 1, startRow: 1, startColumn: -1 },
        cellData: exampleCells(),
      },
    },
    resources: [definedNames(names)],
  };
}
