import { columnLetters } from "../../../cells/letters";
import { cellAt } from "../../../cells/places";
import { MOST_HEADS } from "../../../core/bed/bed-heads";
import { MOST_ACROSS, MOST_ALONG } from "../../../core/pattern/can-field";
import { RATE_CLASSES } from "../../../core/pattern/rate-classes";
import { quoted } from "../../form/nested-ifs";
import type { CellSpec, ShadeSpec, SheetSpec } from "../../form/sheet-spec";
import { factCells, SENTENCE } from "./facts";
import { hasHead, headGroundCells, headLabels } from "./head-formulas";
import {
  acrossCell,
  alongCell,
  BELOW_0,
  CLASS_LIMITS,
  classLimit,
  classStart,
  classSymbol,
  factCell,
  LEGEND_TOP,
  ofColumn,
  ofRow,
  PICTURE,
  rateCell,
  SOURCE,
  SOURCE_ACROSS,
  SOURCE_ALONG,
  SYMBOLS,
  sourceCell,
  symbolCell,
  TOP,
} from "./places";
import { sourceCells, sourceLabels, stripCells } from "./source";

const AXIS_WIDTH = 7;
const CELL_WIDTH = 4.3;
const HALF_HEIGHT = 13;
const WHITE = "#ffffff";
const LAST_ROW = TOP + 2 * MOST_ALONG - 1;
const LAST_COLUMN = columnLetters(MOST_ACROSS + 1);
const MARKS = { driest: "▼", wettest: "▲", head: "●" };
/** A symbol that fits into the cell of a can. */
const shortSymbol = (symbol: string): string => symbol.replaceAll(" ", "");
const isDark = (number: number) => number === 1 || number === 7;

function picture(): CellSpec[] {
  const cans = Array.from({ length: MOST_ALONG * MOST_ACROSS }, (_, index): CellSpec[] => {
    const [i, j] = [Math.floor(index / MOST_ACROSS), index % MOST_ACROSS];
    const source = sourceCell(i, j);
    const mark = (fact: "driest" | "wettest") => `IF(${source}=${factCell(fact)},"${MARKS[fact]}","")`;
    const marks = `IF(${factCell("wettest")}>${factCell("driest")},${mark("driest")}&${mark("wettest")},"")`;
    const head = `IF(${hasHead(i, j)},"${MARKS.head}","")`;
    const shown = `IF(${source}<0,"${BELOW_0}",${marks}&LOOKUP(${source},${CLASS_LIMITS},${SYMBOLS})&${head})`;
    const symbol = `IF(AND(ISNUMBER(${source}),ISNUMBER(${factCell("mean")})),${shown},"")`;
    return [
      { at: rateCell(i, j), kind: "rate", formula: source, format: "0.0" },
      { at: symbolCell(i, j), kind: "symbol", formula: symbol },
    ];
  });
  return cans.flat();
}

const axisCell = (j: number) => cellAt(TOP - 1, j + 2);

function axes(): CellSpec[] {
  const whereRead = (cans: string, place: string) => `IF(${cans}>0,${place},"")`;
  const across = Array.from({ length: MOST_ACROSS }, (_, j): CellSpec => {
    const at = rateCell(0, j).replace(String(TOP), String(TOP - 1));
    return {
      at,
      kind: "unit",
      formula: whereRead(ofColumn("cans", j), acrossCell(j)),
      align: "center",
      format: "0.0#",
    };
  });
  const along = Array.from({ length: MOST_ALONG }, (_, i): CellSpec => {
    const row = TOP + 2 * i;
    const formula = whereRead(ofRow("cans", i), alongCell(i));
    return { at: `A${row}:A${row + 1}`, kind: "unit", formula, align: "right", format: "0.0#" };
  });
  return [{ at: `A${TOP - 1}`, kind: "unit", value: "m", align: "right" }, ...across, ...along];
}

function legend(): CellSpec[] {
  const lines = RATE_CLASSES.flatMap(({ number, symbol, from, range }, index): CellSpec[] => {
    const row = LEGEND_TOP + index;
    const reaching = (limit: string) => `COUNTIF(${SOURCE},">="&${limit})`;
    const more = index + 1 < RATE_CLASSES.length ? `-${reaching(classLimit(index + 1))}` : "";
    const cans = `IF(ISNUMBER(${factCell("mean")}),${reaching(classLimit(index))}${more},0)`;
    const limit = `IF(ISNUMBER(${factCell("mean")}),ROUND(${classStart(index)}*${factCell("mean")},9)-1/10^9,"")`;
    return [
      { at: `B${row}`, kind: "symbol", value: number },
      { at: `C${row}:D${row}`, kind: "symbol", formula: quoted(symbol) },
      { at: `E${row}:H${row}`, kind: "label", value: range },
      { at: `I${row}:J${row}`, kind: "working", formula: cans },
      { at: `K${row}:L${row}`, kind: "working", format: "0 %", formula: share(`I${row}`) },
      { at: classStart(index), kind: "working", value: from },
      { at: classSymbol(index), kind: "working", formula: quoted(shortSymbol(symbol)) },
      { at: classLimit(index).replaceAll("$", ""), kind: "working", formula: limit },
    ];
  });
  const head = LEGEND_TOP - 1;
  return [
    { at: `B${head}:D${head}`, kind: "heading", value: "Class" },
    { at: `E${head}:H${head}`, kind: "heading", value: "of the mean" },
    { at: `I${head}:J${head}`, kind: "heading", value: "Cans" },
    { at: `K${head}:L${head}`, kind: "heading", value: "Of them" },
    ...lines,
  ];
}

const share = (cans: string) => `IF(${factCell("cans")}>0,${cans}/${factCell("cans")},"")`;

function figures(): CellSpec[] {
  const lines: [string, string, string][] = [
    ["Mean", factCell("mean"), "0.0"],
    [`Driest ${MARKS.driest}`, factCell("driest"), "0.0"],
    [`Wettest ${MARKS.wettest}`, factCell("wettest"), "0.0"],
  ];
  return lines.flatMap(([value, formula, format], index): CellSpec[] => {
    const row = LEGEND_TOP + index;
    return [
      { at: `N${row}:P${row}`, kind: "label", value },
      { at: `Q${row}:R${row}`, kind: "working", formula, format },
      { at: `S${row}:U${row}`, kind: "unit", value: "mm/h" },
    ];
  });
}

function shades(): ShadeSpec[] {
  const cell = rateCell(0, 0);
  const above = axisCell(0);
  // a rate uses itself, a symbol by the rate above it
  const isOfClass = (number: number) =>
    `IF(ISNUMBER(${cell}),MATCH(${cell},${CLASS_LIMITS},1)=${number},IF(OR(${cell}="",${cell}="x"),FALSE,MATCH(${above},${CLASS_LIMITS},1)=${number}))`;
  return RATE_CLASSES.flatMap(({ number, colour }, index): ShadeSpec[] => {
    const ink = isDark(number) ? { colour: WHITE } : {};
    const row = LEGEND_TOP + index;
    return [
      { range: PICTURE, formula: isOfClass(number), fill: colour, ...ink },
      { range: `B${row}:D${row}`, formula: `$B${row}=${number}`, fill: colour, ...ink },
    ];
  });
}

const SIDE_COLUMNS = 62;

/** The bed in colour: each can's rate, live. */
export const COVERAGE: SheetSpec = {
  name: "Coverage",
  widths: Array.from({ length: SIDE_COLUMNS }, (_, column) => {
    if (column === 0) return AXIS_WIDTH;
    if (column <= MOST_ACROSS) return CELL_WIDTH;
    if (column === 55) return 34;
    return column > 44 && column < 54 ? 12 : 8;
  }),
  heights: {
    2: 30,
    3: 80,
    [LAST_ROW + 2]: 46,
    [TOP - 1]: 26,
    ...Object.fromEntries(Array.from({ length: 2 * MOST_ALONG }, (_, index) => [TOP + index, HALF_HEIGHT])),
  },
  printed: `A1:${LAST_COLUMN}${LAST_ROW + 2}`,
  hidden: [`${columnLetters(MOST_ACROSS + 3)}:${columnLetters(SIDE_COLUMNS)}`],
  cells: [
    { at: `A1:${LAST_COLUMN}1`, kind: "title", value: "Coverage" },
    { at: `A2:${LAST_COLUMN}2`, kind: "answer", name: "Coverage_Sentence", formula: SENTENCE },
    { at: `A3:${LAST_COLUMN}3`, kind: "answer", formula: "Cause_Sentence" },
    ...legend(),
    ...figures(),
    ...axes(),
    ...picture(),
    {
      at: `A${LAST_ROW + 1}:${LAST_COLUMN}${LAST_ROW + 1}`,
      kind: "note",
      value:
        "Classes are by the mean of the bed as on Results; where other cans are shown, by their mean. The picture's data are in hidden columns to its right.",
    },
    {
      at: `A${LAST_ROW + 2}:${LAST_COLUMN}${LAST_ROW + 2}`,
      kind: "said",
      value: `The bed from above, rates in mm/h, axes in metres from the left and the top edge. ${MARKS.driest} driest can, ${MARKS.wettest} wettest can, ${MARKS.head} a head is in the can's area: heads 1 to ${MOST_HEADS}, at the places on Heads; where those are blank, by the layout on Block. x: not read. ${BELOW_0}: typed below 0; Data checks on Cans say where.`,
    },
    ...sourceLabels(),
    ...sourceCells(),
    ...stripCells(),
    ...factCells(),
    ...headLabels(),
    ...headGroundCells(),
  ],
  areas: {
    Coverage_Rates: SOURCE.replaceAll("$", ""),
    Coverage_Across: SOURCE_ACROSS.replaceAll("$", ""),
    Coverage_Along: SOURCE_ALONG.replaceAll("$", ""),
    Coverage_Limits: CLASS_LIMITS.replaceAll("$", ""),
    Coverage_Legend: `B${LEGEND_TOP}:L${LEGEND_TOP + 6}`,
  },
  shades: shades(),
};
