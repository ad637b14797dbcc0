import { cellAt } from "../../../cells/places";
import { MOST_ACROSS, MOST_ALONG } from "../../../core/pattern/can-field";

/** The first row of the picture; a can takes two rows of it. */
export const TOP = 14;
const LEFT = 2;
export const SOURCE_LEFT = 25;
const absolute = (row: number, column: number) => cellAt(row, column).replace(/([A-Z]+)(\d+)/, "$$$1$$$2");
const block = (left: number, rows: number, first = TOP) =>
  `${absolute(first, left)}:${absolute(first + rows - 1, left + MOST_ACROSS - 1)}`;

/** Cells of the picture: the rate of a can, and its symbol beneath. */
export const rateCell = (i: number, j: number) => cellAt(TOP + 2 * i, LEFT + j);
export const symbolCell = (i: number, j: number) => cellAt(TOP + 2 * i + 1, LEFT + j);
export const PICTURE = `${rateCell(0, 0)}:${symbolCell(MOST_ALONG - 1, MOST_ACROSS - 1)}`;

/** The source block that the whole picture draws on: a rate, x or "" for each place. */
export const sourceCell = (i: number, j: number) => cellAt(TOP + i, SOURCE_LEFT + j);
export const SOURCE = block(SOURCE_LEFT, MOST_ALONG);
export const SOURCE_ACROSS = block(SOURCE_LEFT, 1, TOP - 1);
export const SOURCE_ALONG = `${absolute(TOP, SOURCE_LEFT - 1)}:${absolute(TOP + MOST_ALONG - 1, SOURCE_LEFT - 1)}`;
export const acrossCell = (j: number) => absolute(TOP - 1, SOURCE_LEFT + j);
export const alongCell = (i: number) => absolute(TOP + i, SOURCE_LEFT - 1);

/** What is calculated for each column of cans is above the source block, one quantity a row. */
export const COLUMN_ROWS = {
  sum: 2,
  cans: 3,
  before: 4,
  after: 5,
  from: 6,
  to: 7,
  strip: 8,
  dry: 9,
  first: 10,
  last: 11,
};
/** What is calculated for each row of cans is right of the source block, one quantity a column. */
export const ROW_COLUMNS = {
  cans: 46,
  before: 47,
  after: 48,
  from: 49,
  to: 50,
  strip: 51,
  dry: 52,
  first: 53,
  last: 54,
  sum: 55,
};
export type Quantity = keyof typeof COLUMN_ROWS;

export const ofColumn = (quantity: Quantity, j: number) => absolute(COLUMN_ROWS[quantity], SOURCE_LEFT + j);
export const ofRow = (quantity: Quantity, i: number) => absolute(TOP + i, ROW_COLUMNS[quantity]);
export const columnLabel = (quantity: Quantity) => {
  const row = COLUMN_ROWS[quantity];
  return `${cellAt(row, SOURCE_LEFT - 2)}:${cellAt(row, SOURCE_LEFT - 1)}`;
};
export const rowLabel = (quantity: Quantity) => cellAt(TOP - 1, ROW_COLUMNS[quantity]);
export const SOURCE_HEADING = `${cellAt(TOP - 2, SOURCE_LEFT - 2)}:${cellAt(TOP - 2, SOURCE_LEFT + MOST_ACROSS - 1)}`;
export const allColumns = (quantity: Quantity) => block(SOURCE_LEFT, 1, COLUMN_ROWS[quantity]);
export const allRows = (quantity: Quantity) => `${ofRow(quantity, 0)}:${ofRow(quantity, MOST_ALONG - 1)}`;
export const sourceColumn = (j: number) =>
  `${absolute(TOP, SOURCE_LEFT + j)}:${absolute(TOP + MOST_ALONG - 1, SOURCE_LEFT + j)}`;
export const sourceRow = (i: number) =>
  `${absolute(TOP + i, SOURCE_LEFT)}:${absolute(TOP + i, SOURCE_LEFT + MOST_ACROSS - 1)}`;

const FACTS = [
  "width",
  "length",
  "bearing",
  "layout",
  "spacing",
  "rowSpacing",
  "mean",
  "driest",
  "wettest",
  "cans",
  "columns",
  "rows",
  "reach across",
  "reach along",
  "dry",
  "dry top",
  "dry bottom",
  "dry left",
  "dry right",
  "dry corners",
  "dry edges",
  "dry long",
  "dry short",
  "edge",
  "edge name",
  "one place",
  "where",
  "corners sum",
  "corners read",
  "edge mean",
  "middle mean",
  "half across",
  "half along",
  "left mean",
  "right mean",
  "top mean",
  "bottom mean",
  "parts",
  "ground mean",
  "row heads",
  "head rows",
  "two rows",
  "head start",
] as const;
export type Fact = (typeof FACTS)[number];
const FACT_COLUMN = 57;

/** What is in the picture for a reading below 0, which belongs to no class. */
export const BELOW_0 = "< 0";

/** Facts of the whole picture, one a row. */
export const factRow = (fact: Fact) => TOP + FACTS.indexOf(fact);
export const factLabel = (fact: Fact) => cellAt(factRow(fact), FACT_COLUMN - 1);
export const factCell = (fact: Fact) => absolute(factRow(fact), FACT_COLUMN);

/** The legend, one line a class. */
export const LEGEND_TOP = 5;
const legendColumn = (offset: number) =>
  `${absolute(LEGEND_TOP, FACT_COLUMN + offset)}:${absolute(LEGEND_TOP + 6, FACT_COLUMN + offset)}`;
export const classStart = (index: number) => cellAt(LEGEND_TOP + index, FACT_COLUMN);
export const SYMBOLS = legendColumn(1);
export const classSymbol = (index: number) => cellAt(LEGEND_TOP + index, FACT_COLUMN + 1);
/** The least rates of the classes [mm/h]. */
export const CLASS_LIMITS = legendColumn(2);
export const classLimit = (index: number) => absolute(LEGEND_TOP + index, FACT_COLUMN + 2);
/** A can under this rate is dry: three quarters of the mean. */
export const DRY_LIMIT = classLimit(2);
