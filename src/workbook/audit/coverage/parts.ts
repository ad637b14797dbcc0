import { nestedIfs } from "../../form/nested-ifs";
import { allColumns, allRows, type Fact, factCell, SOURCE, SOURCE_ACROSS, SOURCE_ALONG } from "./places";

const $ = factCell;
/** One half is told from the other where it gets less than this part of it. */
const APART = 0.9;

/** Edges and middle are called equal where the one is within this part of the other. */
const EQUAL = 0.05;

const big = `AND(${$("columns")}>=3,${$("rows")}>=3)`;
const ends = ["first", "last"] as const;
const end = (side: "first" | "last", all: typeof allRows) => `MATCH(1,${all(side)},0)`;
const corners = ends.flatMap((row) =>
  ends.map((column) => `INDEX(${SOURCE},${end(row, allRows)},${end(column, allColumns)})`),
);
const onEdges = (quantity: "sum" | "cans") =>
  [allRows, allColumns].flatMap((all) => ends.map((side) => `SUMIF(${all(side)},1,${all(quantity)})`)).join("+");
const over = (sum: string, count: string) => `IF(${count}>0,(${sum})/(${count}),"")`;

/** Mean of the lines on one side of a half. */
function half(places: string, all: typeof allRows, sign: "<" | ">", middle: Fact): string {
  const criterion = `"${sign}"&(${$(middle)}${sign === "<" ? "-" : "+"}0.001)`;
  return `IF(ISNUMBER(${$(middle)}),${over(`SUMIF(${places},${criterion},${all("sum")})`, `SUMIF(${places},${criterion},${all("cans")})`)},"")`;
}

const middleOf = (places: string, all: typeof allRows) => {
  const at = (side: "first" | "last") => `INDEX(${places},${end(side, all)})`;
  return `IF(${$("cans")}=0,"",IF(COUNT(${at("first")},${at("last")})=2,(${at("first")}+${at("last")})/2,""))`;
};

const ratio = (one: Fact, other: Fact) =>
  `IF(COUNT(${$(one)},${$(other)})=2,IF(MAX(${$(one)},${$(other)})>0,MIN(${$(one)},${$(other)})/MAX(${$(one)},${$(other)}),1),1)`;
const told = (one: Fact, other: Fact, names: readonly [string, string]) => {
  const words = (less: string, more: string) =>
    `"The ${less} half gets "&ROUND(100*MIN(${$(one)},${$(other)})/MAX(${$(one)},${$(other)}),0)&" % of the ${more} half. "`;
  return `IF(${$(one)}<${$(other)},${words(...names)},${words(names[1], names[0])})`;
};
const across = ratio("left mean", "right mean");
const along = ratio("top mean", "bottom mean");
const edgeShare = `${$("edge mean")}/${$("middle mean")}`;
const edgeWords = `IF(ABS(${edgeShare}-1)<${EQUAL},"The edges get about as much as the middle. ","The edges get "&ROUND(100*${edgeShare},0)&" % of the middle. ")`;
const edges = `IF(${big},IF(COUNT(${$("edge mean")},${$("middle mean")})=2,IF(${$("middle mean")}>0,${edgeWords},""),""),"")`;

/** What the parts of a bed get against each other; twins of partsOfBed. */
export const PART_FORMULAS: Partial<Record<Fact, [label: string, formula: string]>> = {
  "corners sum": [
    "sum of the corner cans mm/h",
    `IF(${big},${corners.map((corner) => `IF(ISNUMBER(${corner}),${corner},0)`).join("+")},0)`,
  ],
  "corners read": ["corner cans read", `IF(${big},COUNT(${corners.join(",")}),0)`],
  "edge mean": [
    "mean of the edge cans mm/h",
    `IF(${big},${over(`${onEdges("sum")}-${$("corners sum")}`, `${onEdges("cans")}-${$("corners read")}`)},"")`,
  ],
  "middle mean": [
    "mean of the others mm/h",
    `IF(${big},${over(`SUM(${SOURCE})-(${onEdges("sum")}-${$("corners sum")})`, `${$("cans")}-(${onEdges("cans")}-${$("corners read")})`)},"")`,
  ],
  "half across": ["middle across m", middleOf(SOURCE_ACROSS, allColumns)],
  "half along": ["middle along m", middleOf(SOURCE_ALONG, allRows)],
  "left mean": ["mean left of it mm/h", half(SOURCE_ACROSS, allColumns, "<", "half across")],
  "right mean": ["right of it mm/h", half(SOURCE_ACROSS, allColumns, ">", "half across")],
  "top mean": ["mean above it mm/h", half(SOURCE_ALONG, allRows, "<", "half along")],
  "bottom mean": ["below it mm/h", half(SOURCE_ALONG, allRows, ">", "half along")],
  parts: [
    "edges and halves in words",
    `${edges}&${nestedIfs(
      [
        [`MIN(${across},${along})>=${APART}`, '""'],
        [`${across}<${along}`, told("left mean", "right mean", ["left", "right"])],
      ],
      told("top mean", "bottom mean", ["top", "bottom"]),
    )}`,
  ],
};
