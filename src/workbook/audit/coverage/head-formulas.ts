import { cellAt } from "../../../cells/places";
import { MOST_HEADS } from "../../../core/bed/bed-heads";
import { MOST_ACROSS, MOST_ALONG } from "../../../core/pattern/can-field";
import { areaCell } from "../../form/area-cell";
import type { CellSpec } from "../../form/sheet-spec";
import { HEADS } from "../heads/heads";
import { type Fact, factCell, ofColumn, ofRow, TOP } from "./places";

const $ = factCell;
/** A head this near beside the bed [m] is on its edge, as in `bedHeads`. */
const ON_EDGE_M = 0.05;
const LEFT = 60;
const TYPED_LINES = Number(HEADS.areas!.Head_Across_m!.split(":")[1]!.slice(1)) - 3;

const headCell = (index: number, offset: number) => cellAt(TOP + index, LEFT + offset);
const last = headCell(MOST_HEADS - 1, 2).replace(/([A-Z]+)(\d+)/, "$$$1$$$2");
const GROUNDS = `${headCell(0, 2).replace(/([A-Z]+)(\d+)/, "$$$1$$$2")}:${last}`;

/** Where the list of heads is: across and along, which are blank where other cans are shown. */
export const HEAD_PLACES = `${headCell(0, 0)}:${headCell(MOST_HEADS - 1, 1)}`;

/** Native twin of the gap rule of layouts: equal gaps, at most 5 % wider than the spacing asked for. */
function gaps(size: Fact, spacing: Fact): string {
  return `MAX(1,ROUNDUP(${$(size)}/(1.05*${$(spacing)})-1/10^9,0))`;
}

const layout = $("layout");
const onBorder = `OR(${layout}="border",${layout}="staggered")`;
const known = `OR(${onBorder},${layout}="inset",${layout}="centre line")`;
const counted = (size: Fact, spacing: Fact, formula: string) =>
  `IF(COUNT(${$(size)},${$(spacing)})=2,IF(AND(${$(spacing)}>0,${known}),${formula},""),"")`;

/** How many heads a layout has in a row and how many rows; twins of `headCounts`. */
export const HEAD_FACTS: Partial<Record<Fact, [label: string, formula: string]>> = {
  "row heads": [
    "heads in a row",
    counted("width", "spacing", `IF(${layout}="centre line",1,${gaps("width", "spacing")}+IF(${onBorder},1,0))`),
  ],
  "head rows": [
    "rows of heads",
    counted("length", "rowSpacing", `${gaps("length", "rowSpacing")}+IF(${onBorder},1,0)`),
  ],
  "two rows": [
    "heads in two rows",
    `IF(ISNUMBER(${$("row heads")}),2*${$("row heads")}-IF(${layout}="staggered",1,0),"")`,
  ],
  "head start": ["gaps before the first head", `IF(${onBorder},0,0.5)`],
};

/** Where the layout has a head of a number, in gaps from the first; the second row of two may be shifted by half a gap. */
function laidOut(index: number): [across: string, along: string] {
  const inTwo = `MOD(${index},${$("two rows")})`;
  const second = `(${inTwo}>=${$("row heads")})`;
  const row = `2*INT(${index}/${$("two rows")})+IF(${second},1,0)`;
  const place = (size: Fact, at: string, count: Fact) =>
    `${$(size)}*(${at}+${$("head start")})/(${$(count)}-1+2*${$("head start")})`;
  const there = (formula: string) =>
    `IF(COUNT(${$("two rows")},${$("head rows")})=2,IF(${row}<${$("head rows")},${formula},""),"")`;
  return [
    there(place("width", `${inTwo}-IF(${second},${$("two rows")}/2,0)`, "row heads")),
    there(place("length", `(${row})`, "head rows")),
  ];
}

/** A place as typed on Heads, else of the layout; none where the arc is 0. */
function placesOf(index: number): [across: string, along: string] {
  const laid = laidOut(index);
  if (index >= TYPED_LINES) return laid;
  const typed = (name: string) => areaCell(HEADS, name, index + 1, 1);
  const [across, along, arc] = [typed("Head_Across_m"), typed("Head_Along_m"), typed("Head_Arc_deg")];
  const one = (own: string, other: string) =>
    `IF(AND(ISNUMBER(${arc}),N(${arc})=0),"",IF(COUNT(${across},${along})=2,${own},${other}))`;
  return [one(across, laid[0]), one(along, laid[1])];
}

const range = Array.from({ length: MOST_HEADS }, (_, index) => index);

/** Places of the heads, as typed or of the layout. */
export const headPlaceCells = (): CellSpec[] =>
  range.flatMap((index): CellSpec[] =>
    placesOf(index).map((formula, offset) => ({
      at: headCell(index, offset),
      kind: "working",
      format: "0.00",
      formula,
    })),
  );

/** Strips of columns and rows start in rising order: as many as start at or before a place say which it is in. */
function strip(place: string, first: string, end: string): string {
  return `COUNTIF(${first}:${end},"<="&(MAX(0,${place})+1/10^6))`;
}

/** On the ground of which can each head is: 1000 times its column plus its row, counting those that have a place. */
export const headGroundCells = (): CellSpec[] =>
  range.map((index): CellSpec => {
    const [x, y] = [headCell(index, 0), headCell(index, 1)];
    const within = (place: string, size: Fact) => `${place}>=-${ON_EDGE_M},${place}<=${$(size)}+${ON_EDGE_M}`;
    const column = strip(x, ofColumn("from", 0), ofColumn("from", MOST_ACROSS - 1));
    const row = strip(y, ofRow("from", 0), ofRow("from", MOST_ALONG - 1));
    return {
      at: headCell(index, 2),
      kind: "working",
      formula: `IF(COUNT(${x},${y},${$("width")},${$("length")})=4,IF(AND(${within(x, "width")},${within(y, "length")}),1000*${column}+${row},""),"")`,
    };
  });

export const headLabels = (): CellSpec[] =>
  ["head across m", "head along m", "1000 x its column of cans + its row"].map(
    (value, offset): CellSpec => ({
      at: cellAt(TOP - 1, LEFT + offset),
      kind: "note",
      value,
    }),
  );

/** Whether a head is on the ground of the can in a column and a row. */
export function hasHead(i: number, j: number): string {
  const [column, row] = [ofColumn("strip", j), ofRow("strip", i)];
  return `IF(AND(N(${column})>0,N(${row})>0),COUNTIF(${GROUNDS},1000*N(${column})+N(${row}))>0,FALSE)`;
}
