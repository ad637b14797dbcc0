import { checkLines } from "../../form/check-lines";
import { type FormPart, formLines, joined, noteHeight } from "../../form/entry-lines";
import type { CellSpec, SheetSpec } from "../../form/sheet-spec";
import { USED_AGAINST_NEEDED, WATER_A_YEAR, worked } from "./formulas";
import { CHANGE_LINES, NEED_LINES, PRICE_LINES } from "./lines";

const FORM = { label: "A", entry: "B", unit: "C", note: "D", noteLine: 56 };
const KL = "#,##0.0";

const FIRST = 3;
const YEAR = FIRST + PRICE_LINES.length;
const NEED = YEAR + 1 + WATER_A_YEAR.length;
const CHANGE = NEED + NEED_LINES.length;
const REMARK = CHANGE + CHANGE_LINES.length;
const WORKED = REMARK + 2;

const year: Partial<FormPart> = {
  heights: Object.fromEntries(
    WATER_A_YEAR.map(({ note }, index) => [YEAR + 1 + index, noteHeight(note.length, FORM.noteLine)]),
  ),
  cells: [
    ...["Water a year", "On the bed, kL", "From heads, kL", ""].map(
      (value, index): CellSpec => ({ at: `${"ABCD"[index]}${YEAR}`, kind: "heading", value }),
    ),
    ...WATER_A_YEAR.flatMap(({ label, bed, heads, bedName, headsName, note }, index): CellSpec[] => {
      const row = YEAR + 1 + index;
      return [
        { at: `A${row}`, kind: "label", value: label },
        { at: `B${row}`, kind: "answer", formula: bed, name: bedName, format: KL },
        { at: `C${row}`, kind: "answer", formula: heads, name: headsName, format: KL },
        { at: `D${row}`, kind: "note", value: note },
      ];
    }),
  ],
};

const onTheWay: CellSpec[] = [
  { at: `A${WORKED - 1}:D${WORKED - 1}`, kind: "heading", value: "Intermediate results" },
  ...worked.flatMap(([label, name, formula, format], index): CellSpec[] => [
    { at: `A${WORKED + index}`, kind: "label", value: label },
    { at: `B${WORKED + index}:C${WORKED + index}`, kind: "working", name, formula, format },
  ]),
];

const remark = checkLines(REMARK, { label: "A", text: "B:D" }, [USED_AGAINST_NEEDED]);
const { cells, checks, heights } = joined(
  formLines(FIRST, FORM, PRICE_LINES),
  year,
  formLines(NEED, FORM, NEED_LINES),
  formLines(CHANGE, FORM, CHANGE_LINES),
  remark,
  { cells: onTheWay },
);

/** What the bed's water is a year, and what a change would save. */
export const WATER_COST: SheetSpec = {
  name: "Water and cost",
  roomy: true,
  widths: [36, 22, 22, 52],
  heights,
  cells: [
    { at: "A1:D1", kind: "title", value: "Water and cost" },
    {
      at: "A2:D2",
      kind: "said",
      formula:
        '"What is used, what this audit says is needed, and what a change would need: three figures, kept apart, each of "&Valve_Words&". Cost says what they cost."',
    },
    ...cells,
  ],
  checks,
  shades: remark.shades,
};
