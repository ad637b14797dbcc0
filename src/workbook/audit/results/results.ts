import { MEASURES } from "../../../core/figures/measures";
import { entryField } from "../../form/entry-field";
import { type Field, formLines } from "../../form/entry-lines";
import type { SheetSpec } from "../../form/sheet-spec";
import { EARLIER_COMPARABLE, EARLIER_LINES } from "./earlier";
import { AFTER_MEASURES, MEASURE_CELLS, MEASURE_HEIGHTS } from "./measures";
import { OTHER_ROWS, otherBasis } from "./other-basis";
import { VERDICTS_USE } from "./words";

const OTHER = AFTER_MEASURES + 4;
const EARLIER = OTHER + OTHER_ROWS + 1;
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
        'IF(Lack_Rate<>"","Not all figures can be given: "&Lack_Rate&".",IF(By_Area,"Each can is weighted by the area that it is for: half-way lines to its neighbours and the edges of the bed."&IF(Weighed_Area_m2<0.999*Block_Area_m2," The ground of cans that were not read is left out: "&ROUND(Weighed_Area_m2,1)&" of "&ROUND(Block_Area_m2,1)&" m² count.",""),"Each can has equal weight: "&IF(COUNTA(Cans_Across_m)+COUNTA(Cans_Along_m)=0,"places of the cans are not typed.",IF(Positions_Problem<>"",Positions_Problem,"the sides of the bed are not typed."))))',
    },
    { at: "A3:F3", kind: "caution", formula: 'IF(Readings_Problem<>"",Readings_Problem,"")' },
    { at: "A5", kind: "heading", value: "Measure" },
    { at: "B5", kind: "heading", formula: 'IF(By_Area,"By area","Equal weight")' },
    { at: "C5", kind: "heading", value: "Unit" },
    { at: "D5", kind: "heading", value: "Limit" },
    { at: "E5", kind: "heading", value: "Verdict" },
    { at: "F5", kind: "heading", value: "Limit from" },
    ...MEASURE_CELLS,
    ...shareWanted.cells,
    {
      at: `A${AFTER_MEASURES + 1}:F${AFTER_MEASURES + 1}`,
      kind: "note",
      formula: `${VERDICTS_USE}&" The limit itself is within. Fewer than 16 cans get no verdict, 16 to 23 an indicative one. ${MEASURES.SC_CAN.name} has no interval: its value alone is compared."`,
    },
    {
      at: `A${AFTER_MEASURES + 2}:F${AFTER_MEASURES + 2}`,
      kind: "note",
      value: `SC has several definitions, so the one used is always named. If a can is dry, ${MEASURES.SC_CAN.name} is infinite: it is outside any limit. Limits differ between sources; the sheet Limits holds the ones in use.`,
    },
    ...otherBasis(OTHER),
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
