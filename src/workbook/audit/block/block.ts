import { CAUTION } from "../../cautions";
import { choiceFrom } from "../../form/allowed";
import { formLines, joined } from "../../form/entry-lines";
import type { CellSpec, SheetSpec } from "../../form/sheet-spec";
import { BLOCK_LINES, PRACTICE_LINES } from "./lines";

const FORM = { label: "A", entry: "B", unit: "C", note: "D", noteLine: 56 };

const MEANINGS = [
  ["full circles", "Every head waters a full circle, those on the edge as well."],
  ["part circles, matched", "Edge heads water a part circle with smaller nozzles: the rate stays the same."],
  ["part circles, same nozzle", "Edge heads water a part circle with the full nozzle: the rate there is higher."],
] as const;

const FIRST = 3;
const CAUTION_ROW = FIRST + BLOCK_LINES.length;
const PRACTICE_FROM = CAUTION_ROW + 1;
const ARCS_FROM = PRACTICE_FROM + PRACTICE_LINES.length;

const { cells, checks, shades, heights } = joined(
  formLines(FIRST, FORM, BLOCK_LINES),
  formLines(PRACTICE_FROM, FORM, PRACTICE_LINES),
  formLines(ARCS_FROM, FORM, ["The words for arcs"]),
);

const arc = cells.find(({ name }) => name === "Head_Arc")!.at;
const arcCheck = { range: arc, ...choiceFrom(`$B$${ARCS_FROM + 1}:$B$${ARCS_FROM + MEANINGS.length}`)(arc) };

/** What is known of the block before water runs. */
export const BLOCK: SheetSpec = {
  name: "Block",
  roomy: true,
  widths: [22, 26, 10, 46],
  heights: { ...heights, 2: 28, [CAUTION_ROW]: 28 },
  cells: [
    { at: "A1:D1", kind: "title", value: "Block" },
    {
      at: "A2:D2",
      kind: "said",
      value: "Fill in the cream cells; leave blank what is not known. One workbook holds the test of one bed.",
    },
    ...cells,
    {
      at: `A${CAUTION_ROW}:D${CAUTION_ROW}`,
      kind: "note",
      formula: `IF(Water_Source="recycled","${CAUTION.RECYCLED}","")`,
    },
    ...MEANINGS.flatMap(([arc, meaning], index): CellSpec[] => [
      { at: `B${ARCS_FROM + 1 + index}`, kind: "label", value: arc },
      { at: `C${ARCS_FROM + 1 + index}:D${ARCS_FROM + 1 + index}`, kind: "note", value: meaning },
    ]),
  ],
  checks: [...checks, arcCheck],
  shades: [
    ...shades,
    {
      range: `A${CAUTION_ROW}:D${CAUTION_ROW}`,
      formula: `$A$${CAUTION_ROW}<>""`,
      fill: "#f6e8c3",
      colour: "#543005",
      bold: true,
    },
  ],
};
