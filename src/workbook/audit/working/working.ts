import { MOST_ACROSS, MOST_ALONG } from "../../../core/pattern/can-field";
import { areaCell } from "../../form/area-cell";
import { depthOfMillilitre } from "../../form/millilitres";
import type { CellSpec, SheetSpec } from "../../form/sheet-spec";
import { nearest, type StripCells, stripEnd, stripStart } from "../../form/strip-formulas";
import { CANS } from "../cans/cans";
import { AREA_GRID, areaGrid } from "./area-grid";
import { BASE_ROWS, baseCells } from "./bases";
import { keptCells } from "./kept";
import { FIRST, FIRST_ACROSS, FIRST_ALONG, LAST } from "./places";
import { AFTER_TOTALS, totalCells } from "./totals";

/** The measures on both bases follow the totals. */
const BASES = AFTER_TOTALS + 1;

const DEPTH_OF_1_ML = depthOfMillilitre("Can_Mouth_mm");

function canLine(index: number): CellSpec[] {
  const row = FIRST + index;
  const [i, j] = [Math.floor(index / MOST_ACROSS), index % MOST_ACROSS];
  const typed = areaCell(CANS, "Cans_Readings", i + 1, j + 1);
  const [across, along] = [FIRST_ACROSS + j, FIRST_ALONG + i];
  const working = (letter: string, formula: string): CellSpec => ({
    at: `${letter}${row}`,
    kind: "working",
    formula,
    ...("GHIJ".includes(letter) && { format: "0.00" }),
  });
  const whereRead = (letter: string, formula: string) => working(letter, `IF(ISNUMBER($F${row}),${formula},"")`);
  const whereWeighted = (letter: string, formula: string) => working(letter, `IF(ISNUMBER($I${row}),${formula},"")`);
  return [
    { at: `A${row}`, kind: "working", value: i + 1 },
    { at: `B${row}`, kind: "working", value: j + 1 },
    working("C", `$O$${across}`),
    working("D", `$O$${along}`),
    working("E", `IF(${typed}="","",${typed})`),
    working("F", `IF(ISNUMBER($E${row}),$E${row},"")`),
    whereRead("G", `IF(Mouth_Known,$F${row}*${DEPTH_OF_1_ML},"")`),
    working("H", `IF(AND(ISNUMBER($G${row}),Minutes_Known),$G${row}*60/Test_Minutes,"")`),
    whereRead("I", `IF(COUNT($T$${across},$T$${along})=2,$T$${across}*$T$${along},"")`),
    whereWeighted("J", `$I${row}*$F${row}`),
  ];
}

const stripCells = (row: number): StripCells => ({
  position: `$O${row}`,
  before: `$P${row}`,
  after: `$Q${row}`,
  from: `$R${row}`,
  to: `$S${row}`,
});

function stripTable(
  first: number,
  count: number,
  of: { place: (index: number) => string; readings: (index: number) => string; size: string },
): CellSpec[] {
  return Array.from({ length: count }, (_, index) => {
    const row = first + index;
    const cells = stripCells(row);
    const place = of.place(index + 1);
    const previous = index > 0 ? stripCells(row - 1) : undefined;
    const next = index < count - 1 ? stripCells(row + 1) : undefined;
    const formulas: Record<string, string> = {
      O: `IF(ISNUMBER(${place}),${place},"")`,
      P: nearest(previous, "before"),
      Q: nearest(next, "after"),
      R: stripStart(cells, of.size),
      S: stripEnd(cells, of.size),
      T: `IF(ISNUMBER($R${row}),$S${row}-$R${row},"")`,
      U: `COUNT(${of.readings(index + 1)})`,
    };
    return [
      { at: `N${row}`, kind: "working" as const, value: index + 1 },
      ...Object.entries(formulas).map(
        ([letter, formula]): CellSpec => ({
          at: `${letter}${row}`,
          kind: "working",
          formula,
          ...(letter !== "U" && { format: "0.00" }),
        }),
      ),
    ];
  }).flat();
}

const cansFromTo = (first: [number, number], last: [number, number]) =>
  `${areaCell(CANS, "Cans_Readings", ...first)}:${areaCell(CANS, "Cans_Readings", ...last).split("!")[1]}`;

const headings = (row: number, first: string, texts: readonly string[]): CellSpec[] =>
  texts.map((value, index) => ({
    at: `${String.fromCharCode(first.charCodeAt(0) + index)}${row}`,
    kind: "heading",
    value,
  }));

const STRIP_HEADINGS = ["place m", "one before m", "one after m", "from m", "to m", "strip m", "cans read"];

/** One line a can place, so that every figure can be followed. */
export const WORKING: SheetSpec = {
  name: "Working",
  roomy: true,
  widths: [6, 8, 8, 8, 9, 9, 9, 9, 9, 10, 3, 3, 3, 8, 9, 8, 9, 9, 9, 9, 9],
  heights: { 2: 62, 3: 78, 6: 45, [FIRST_ALONG - 1]: 45 },
  printed: `N1:V${BASES + BASE_ROWS - 1}`,
  pages: 2,
  frozenRows: FIRST - 1,
  cells: [
    { at: "A1:J1", kind: "title", value: "Working" },
    {
      at: "A2:K2",
      kind: "said",
      value:
        "One line for each place of the can grid. Nothing is typed here. The area of a can is the width of its column's strip times that of its row's: strips end half-way to the next column or row that has a place, and at the edges of the bed.",
    },
    {
      at: "A3:K3",
      kind: "said",
      value:
        "Driest quarter of the ground: with t the reading at which that quarter ends, its mean is t - 4 · Σ area · (t - reading) over the drier cans / whole area. Any other t gives less, so it is the largest of that over all readings. Mean distance from the mean: the cans under it lack as much as the others have too much, so twice what is lacking counts.",
    },
    { at: "N1:U1", kind: "title", value: "Working: strips and totals" },
    {
      at: "N2:U2",
      kind: "said",
      value:
        "This part is printed. The lines of the cans, left of it, are not: Cans prints their readings, Coverage their rates.",
    },
    ...headings(FIRST - 1, "A", [
      "row",
      "column",
      "across m",
      "along m",
      "typed",
      "reading mL",
      "depth mm",
      "rate mm/h",
      "area m²",
      "area × reading",
    ]),
    ...Array.from({ length: MOST_ACROSS * MOST_ALONG }, (_, index) => canLine(index)).flat(),
    ...headings(FIRST_ACROSS - 1, "N", ["column", ...STRIP_HEADINGS]),
    ...stripTable(FIRST_ACROSS, MOST_ACROSS, {
      place: (j) => areaCell(CANS, "Cans_Across_m", 1, j),
      readings: (j) => cansFromTo([1, j], [MOST_ALONG, j]),
      size: "Bed_Width_m",
    }),
    ...headings(FIRST_ALONG - 1, "N", ["row", ...STRIP_HEADINGS]),
    ...stripTable(FIRST_ALONG, MOST_ALONG, {
      place: (i) => areaCell(CANS, "Cans_Along_m", i, 1),
      readings: (i) => cansFromTo([i, 1], [i, MOST_ACROSS]),
      size: "Bed_Length_m",
    }),
    ...totalCells(),
    ...baseCells(BASES),
    ...keptCells(BASES + BASE_ROWS + 1),
    ...areaGrid(),
  ],
  areas: {
    Work_Reading: `F${FIRST}:F${LAST}`,
    Work_Area_Reading: `J${FIRST}:J${LAST}`,
    Work_Rate: `H${FIRST}:H${LAST}`,
    Work_Area: `I${FIRST}:I${LAST}`,
    Cans_Areas_m2: AREA_GRID,
  },
};
