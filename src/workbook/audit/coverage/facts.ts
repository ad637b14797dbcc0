import { MOST_ACROSS, MOST_ALONG } from "../../../core/pattern/can-field";
import { nestedIfs } from "../../form/nested-ifs";
import type { CellSpec } from "../../form/sheet-spec";
import { HEAD_FACTS } from "./head-formulas";
import { PART_FORMULAS } from "./parts";
import {
  acrossCell,
  allColumns,
  allRows,
  alongCell,
  DRY_LIMIT,
  type Fact,
  factCell,
  factLabel,
  SOURCE,
} from "./places";

const $ = factCell;
const POINTS = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

const read = (quantity: "dry", side: "first" | "last", all: typeof allRows) => `SUMIF(${all(side)},1,${all(quantity)})`;
const end = (side: "first" | "last", all: typeof allRows) => `MATCH(1,${all(side)},0)`;

/** Distance between the first and the last column, or row, that hold readings. */
function reach(all: typeof allRows, place: (index: number) => string, count: number): string {
  const at = (side: "first" | "last") => `INDEX(${place(0)}:${place(count - 1)},${end(side, all)})`;
  return `IF(${$("cans")}=0,0,IF(AND(ISNUMBER(${at("first")}),ISNUMBER(${at("last")})),${at("last")}-${at("first")},0))`;
}

function dryCorner(row: "first" | "last", column: "first" | "last"): string {
  const at = `INDEX(${SOURCE},${end(row, allRows)},${end(column, allColumns)})`;
  return `IF(ISNUMBER(${at}),IF(${at}<${DRY_LIMIT},1,0),0)`;
}

/** First and last line that holds a dry can, as a span from 0. */
function drySpan(all: typeof allRows): string {
  const dry = all("dry");
  const place = `${all === allRows ? "ROW" : "COLUMN"}(${dry})`;
  return `SUMPRODUCT(MAX((${dry}>0)*${place}))+SUMPRODUCT(MAX((${dry}>0)*(1000-${place})))-1000`;
}

const big = `AND(${$("columns")}>=3,${$("rows")}>=3)`;
const longer = `${$("reach along")}>${$("reach across")}`;
const oblong = `${$("reach along")}<>${$("reach across")}`;
const leftRight = `${$("dry left")}+${$("dry right")}`;
const topBottom = `${$("dry top")}+${$("dry bottom")}`;
const isSide = `OR(${$("edge")}="left",${$("edge")}="right")`;
const faces = `IF(${$("edge")}="bottom",0,IF(${$("edge")}="left",90,IF(${$("edge")}="top",180,270)))`;
const point = `CHOOSE(MOD(ROUND(MOD(${$("bearing")}+${faces},360)/45,0),8)+1,${POINTS.map((name) => `"${name}"`).join(",")})`;
const byLength = `IF(${oblong},IF(${isSide}=(${longer}),"one long edge","one short edge"),"one edge")`;

const WHERE: [when: string, words: string][] = [
  [`AND(${big},${$("dry")}=${$("dry corners")})`, `IF(${$("dry")}=1,"in one corner","all in the corners")`],
  [`AND(${big},${$("edge")}<>"")`, `IF(${$("dry")}=1,"","all ")&"on "&${$("edge name")}`],
  [`AND(${big},${oblong},${$("dry")}=${$("dry long")})`, '"all on the long edges"'],
  [`AND(${big},${oblong},${$("dry")}=${$("dry short")})`, '"all on the short edges"'],
  [`AND(${big},${$("dry")}=${$("dry edges")})`, '"all on the edges"'],
  [$("one place"), `IF(${$("dry")}=1,"inside the bed","all in one place inside the bed")`],
];

const FACT_FORMULAS: Partial<Record<Fact, [label: string, formula: string]>> = {
  mean: [
    "mean mm/h",
    `IF(COUNT(${SOURCE})>=2,IF(SUM(${SOURCE})>0,IF(ISNUMBER(${$("ground mean")}),${$("ground mean")},AVERAGE(${SOURCE})),""),"")`,
  ],
  driest: ["driest mm/h", `IF(ISNUMBER(${$("mean")}),MIN(${SOURCE}),"")`],
  wettest: ["wettest mm/h", `IF(ISNUMBER(${$("mean")}),MAX(${SOURCE}),"")`],
  cans: ["cans read", `COUNT(${SOURCE})`],
  columns: ["columns that hold readings", `COUNTIF(${allColumns("cans")},">0")`],
  rows: ["rows that hold readings", `COUNTIF(${allRows("cans")},">0")`],
  "reach across": ["first to last column m", reach(allColumns, acrossCell, MOST_ACROSS)],
  "reach along": ["first to last row m", reach(allRows, alongCell, MOST_ALONG)],
  dry: ["cans under 75 % of the mean", `SUM(${allRows("dry")})`],
  "dry top": ["of them in the first row", read("dry", "first", allRows)],
  "dry bottom": ["in the last row", read("dry", "last", allRows)],
  "dry left": ["in the first column", read("dry", "first", allColumns)],
  "dry right": ["in the last column", read("dry", "last", allColumns)],
  "dry corners": [
    "in the corners",
    `IF(${$("dry")}=0,0,${dryCorner("first", "first")}+${dryCorner("first", "last")}+${dryCorner("last", "first")}+${dryCorner("last", "last")})`,
  ],
  "dry edges": ["on any edge", `IF(${big},${leftRight}+${topBottom}-${$("dry corners")},${$("dry")})`],
  "dry long": ["on the long edges", `IF(${longer},${leftRight},${topBottom})`],
  "dry short": ["on the short edges", `IF(${longer},${topBottom},${leftRight})`],
  edge: [
    "the edge that holds them all",
    `IF(${$("dry")}=0,"",IF(${$("dry")}=${$("dry top")},"top",IF(${$("dry")}=${$("dry bottom")},"bottom",IF(${$("dry")}=${$("dry left")},"left",IF(${$("dry")}=${$("dry right")},"right","")))))`,
  ],
  "edge name": ["its name", `IF(${$("edge")}="","",IF(ISNUMBER(${$("bearing")}),"the "&${point}&" edge",${byLength}))`],
  "one place": [
    "all in one block of cans",
    `IF(${$("dry")}=0,FALSE,OR(AND(${drySpan(allRows)}<=1,${drySpan(allColumns)}<=1),${$("dry")}=(${drySpan(allRows)}+1)*(${drySpan(allColumns)}+1)))`,
  ],
  where: ["where they are", nestedIfs(WHERE, `${$("dry edges")}&" of them on the edges"`)],
};
const SOURCE_LABELS: Partial<Record<Fact, string>> = {
  width: "width of the bed m",
  length: "length of the bed m",
  bearing: "bearing of the length deg",
  layout: "layout of the heads",
  spacing: "heads across m",
  rowSpacing: "heads along m",
  "ground mean": "mean of Results mm/h",
};

/** Facts of the whole picture. */
export function factCells(): CellSpec[] {
  return [
    ...Object.entries(SOURCE_LABELS).map(
      ([fact, value]): CellSpec => ({ at: factLabel(fact as Fact), kind: "label", value }),
    ),
    ...Object.entries({ ...FACT_FORMULAS, ...PART_FORMULAS, ...HEAD_FACTS }).flatMap(
      ([fact, [label, formula]]): CellSpec[] => [
        { at: factLabel(fact as Fact), kind: "label", value: label },
        { at: factCell(fact as Fact).replaceAll("$", ""), kind: "working", formula },
      ],
    ),
  ];
}

/** What is seen, in a sentence; what is lacking while there is nothing to see. */
export const SENTENCE = `IF(ISNUMBER(${$("mean")}),${$("parts")}&IF(${$("dry")}=0,"No can gets under three quarters of the mean.",${$("dry")}&" of "&${$("cans")}&" cans "&IF(${$("dry")}=1,"gets","get")&" under three quarters of the mean, "&${$("where")}&"."),IF(${$("cans")}<2,"The picture needs readings, minutes and mouth: see Cans.","Every can is dry."))`;
