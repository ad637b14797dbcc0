import { entryField } from "../../form/entry-field";
import { type Field, formLines } from "../../form/entry-lines";
import type { SheetSpec } from "../../form/sheet-spec";
import { BOTH_ROWS, bothCells } from "./both-ways";
import { EARLIER_COMPARABLE, EARLIER_LINES } from "./earlier";
import { AFTER_MEASURES, MEASURE_CELLS, MEASURE_HEIGHTS } from "./measures";

/** The figures by area come first where the largest area of a can is over the smallest by more than this. */
const EVEN_UP_TO = 1.05;
const BOTH = AFTER_MEASURES + 5;

const EVENNESS = BOTH + 2 + BOTH_ROWS;
const EARLIER = EVENNESS + 2;
const AFTER_EARLIER = EARLIER + EARLIER_LINES.length;
const FORM = { label: "A", entry: "B", unit: "C", note: "D:F", noteLine: 80 };
const SHARE_LINE: Field = entryField("Share_Wanted", {
  value: 0.9,
  format: "0.00",
  note: "For the SC above: which share of the pots must get the depth wanted?",
});
const earlier = formLines(EARLIER, FORM, EARLIER_LINES);
const shareWanted = formLines(AFTER_MEASURES, FORM, [SHARE_LINE]);

/** The figures of the test against the limits in use. */
export const RESULTS: SheetSpec = {
  name: "Results",
  roomy: true,
  widths: [28, 21, 9, 12, 24, 34],
  heights: {
    2: 30,
    ...MEASURE_HEIGHTS,
    [AFTER_MEASURES + 1]: 40,
    [AFTER_MEASURES + 2]: 28,
  },
  cells: [
    { at: "A1:F1", kind: "title", value: "Results" },
    {
      at: "A2:F2",
      kind: "said",
      formula:
        'IF(Lack_Rate<>"","Not all figures can be given: "&Lack_Rate&".",IF(Positions_Uneven,"The cans stand for areas of different size, so each counts by its area; counted alike, they are further down.","Each can counts alike; counted by area, the figures are further down."))',
    },
    { at: "A3:F3", kind: "caution", formula: 'IF(Readings_Problem<>"",Readings_Problem,"")' },
    { at: "A5", kind: "heading", value: "Measure" },
    { at: "B5", kind: "heading", formula: 'IF(Positions_Uneven,"By area","Each can alike")' },
    { at: "C5", kind: "heading", value: "Unit" },
    { at: "D5", kind: "heading", value: "Limit" },
    { at: "E5", kind: "heading", value: "Verdict" },
    { at: "F5", kind: "heading", value: "Limit from" },
    ...MEASURE_CELLS,
    ...shareWanted.cells,
    {
      at: `A${AFTER_MEASURES + 1}:F${AFTER_MEASURES + 1}`,
      kind: "note",
      value:
        "Verdicts here compare the value alone with the limit; the limit itself is within. Fewer than 16 cans get no verdict, 16 to 23 an indicative one. The add-in's pane and SUMMARY go by the 90 % interval and count each can alike, so they may say too close to call, or another verdict, where this sheet says within or outside.",
    },
    {
      at: `A${AFTER_MEASURES + 2}:F${AFTER_MEASURES + 2}`,
      kind: "note",
      value:
        "SC has several definitions, so the one used is always named. A dry can makes the SC of the driest can endless: it is outside any limit. Limits differ between sources; the sheet Limits holds the ones in use.",
    },
    { at: `A${BOTH}:F${BOTH}`, kind: "heading", value: "Both ways of counting" },
    { at: `B${BOTH + 1}`, kind: "unit", value: "each can alike" },
    { at: `D${BOTH + 1}:E${BOTH + 1}`, kind: "unit", value: "by the area it stands for" },
    ...bothCells(BOTH + 2),
    { at: `A${EVENNESS}`, kind: "label", value: "Areas of cans differ" },
    {
      at: `B${EVENNESS}`,
      kind: "answer",
      name: "Positions_Uneven",
      formula: `IF(ISNUMBER(Area_Ratio),Area_Ratio>${EVEN_UP_TO},FALSE)`,
    },
    {
      at: `D${EVENNESS}:F${EVENNESS}`,
      kind: "note",
      value: "TRUE where the largest area is over the smallest by more than 5 %: by area comes first.",
    },
    ...earlier.cells,
    { at: `A${AFTER_EARLIER}`, kind: "label", value: "Can they be compared?" },
    {
      at: `B${AFTER_EARLIER}:F${AFTER_EARLIER}`,
      kind: "answer",
      name: "Earlier_Comparable",
      formula: EARLIER_COMPARABLE,
    },
  ],
  checks: [...shareWanted.checks, ...earlier.checks],
};
