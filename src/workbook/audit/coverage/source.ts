import { plainAddress } from "../../../cells/letters";
import { MOST_ACROSS, MOST_ALONG } from "../../../core/pattern/can-field";
import { areaCell } from "../../form/area-cell";
import type { CellSpec } from "../../form/sheet-spec";
import { nearest, type StripCells, stripEnd, stripStart } from "../../form/strip-formulas";
import { CANS } from "../cans/cans";
import { WORKING } from "../working/working";
import { headPlaceCells } from "./head-formulas";
import {
  acrossCell,
  alongCell,
  columnLabel,
  DRY_LIMIT,
  factCell,
  ofColumn,
  ofRow,
  type Quantity,
  rowLabel,
  SOURCE_HEADING,
  sourceCell,
  sourceColumn,
  sourceRow,
} from "./places";

const working = (at: string, formula: string): CellSpec => ({ at: plainAddress(at), kind: "working", formula });
const measured = (at: string, formula: string): CellSpec => ({ ...working(at, formula), format: "0.00" });
const range = (count: number) => Array.from({ length: count }, (_, index) => index);

/** The rates, places and bed that the picture shows unless it is pointed elsewhere. */
export function sourceCells(): CellSpec[] {
  const rates = range(MOST_ALONG).flatMap((i) =>
    range(MOST_ACROSS).map((j) => {
      const rate = areaCell(WORKING, "Work_Rate", i * MOST_ACROSS + j + 1, 1);
      const typed = areaCell(CANS, "Cans_Readings", i + 1, j + 1);
      return measured(sourceCell(i, j), `IF(ISNUMBER(${rate}),${rate},IF(TRIM(${typed})="x","x",""))`);
    }),
  );
  const numberOf = (cell: string) => `IF(ISNUMBER(${cell}),${cell},"")`;
  return [
    ...rates,
    ...range(MOST_ACROSS).map((j) => measured(acrossCell(j), numberOf(areaCell(CANS, "Cans_Across_m", 1, j + 1)))),
    ...range(MOST_ALONG).map((i) => measured(alongCell(i), numberOf(areaCell(CANS, "Cans_Along_m", i + 1, 1)))),
    working(factCell("width"), numberOf("Bed_Width_m")),
    working(factCell("length"), numberOf("Bed_Length_m")),
    working(factCell("bearing"), numberOf("Bed_Bearing_deg")),
    working(factCell("layout"), 'IF(Head_Layout="","",Head_Layout)'),
    working(factCell("spacing"), numberOf("Head_Spacing_m")),
    working(factCell("rowSpacing"), numberOf("Row_Spacing_m")),
    working(factCell("ground mean"), numberOf("Used_MAR")),
    ...headPlaceCells(),
  ];
}

interface Line {
  at: (quantity: Quantity, index: number) => string;
  position: (index: number) => string;
  readings: (index: number) => string;
  count: number;
  size: string;
}

const COLUMNS: Line = {
  at: ofColumn,
  position: acrossCell,
  readings: sourceColumn,
  count: MOST_ACROSS,
  size: factCell("width"),
};
const ROWS: Line = {
  at: ofRow,
  position: alongCell,
  readings: sourceRow,
  count: MOST_ALONG,
  size: factCell("length"),
};

function lineCells(line: Line): CellSpec[] {
  const { at, position, count, size } = line;
  const cellsOf = (index: number): StripCells => ({
    position: position(index),
    before: at("before", index),
    after: at("after", index),
    from: at("from", index),
    to: at("to", index),
  });
  const others = (from: number, to: number) => (from > to ? "0" : `SUM(${at("cans", from)}:${at("cans", to)})`);
  return range(count).flatMap((index) => {
    const cells = cellsOf(index);
    const formulas: Record<Quantity, string> = {
      cans: `COUNT(${line.readings(index)})`,
      sum: `SUM(${line.readings(index)})`,
      before: nearest(index > 0 ? cellsOf(index - 1) : undefined, "before"),
      after: nearest(index < count - 1 ? cellsOf(index + 1) : undefined, "after"),
      from: stripStart(cells, size),
      to: stripEnd(cells, size),
      strip: `IF(ISNUMBER(${cells.from}),COUNT(${at("from", 0)}:${cells.from}),"")`,
      dry: `IF(ISNUMBER(${DRY_LIMIT}),COUNTIF(${line.readings(index)},"<"&${DRY_LIMIT}),0)`,
      first: `IF(AND(${at("cans", index)}>0,${others(0, index - 1)}=0),1,0)`,
      last: `IF(AND(${at("cans", index)}>0,${others(index + 1, count - 1)}=0),1,0)`,
    };
    return Object.entries(formulas).map(([quantity, formula]) =>
      (LENGTHS.has(quantity) ? measured : working)(at(quantity as Quantity, index), formula),
    );
  });
}

const LENGTHS = new Set(["sum", "before", "after", "from", "to"]);
const QUANTITIES: Record<Quantity, string> = {
  cans: "cans read",
  sum: "sum mm/h",
  before: "one before m",
  after: "one after m",
  from: "strip from m",
  to: "strip to m",
  strip: "strip number",
  dry: "cans under 75 %",
  first: "first read: 1",
  last: "last read: 1",
};

/** What the numbers beside the picture are. */
export const sourceLabels = (): CellSpec[] => [
  {
    at: SOURCE_HEADING,
    kind: "heading",
    value: "What the picture draws on: rates [mm/h] by place [m]; above, by column",
  },
  ...Object.entries(QUANTITIES).flatMap(([quantity, value]): CellSpec[] => [
    { at: columnLabel(quantity as Quantity), kind: "note", value },
    { at: rowLabel(quantity as Quantity), kind: "note", value },
  ]),
];

/** What is calculated for each column and each row of cans. */
export const stripCells = (): CellSpec[] => [...lineCells(COLUMNS), ...lineCells(ROWS)];
