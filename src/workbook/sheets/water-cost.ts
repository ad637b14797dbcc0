import { type FormPart, formLines, joined, noteHeight } from "../form";
import type { CellSpec, SheetSpec } from "../sheet-spec";
import { atPrice, paybackOf, WATER_A_YEAR, worked } from "./water-cost-formulas";
import { CHANGE_LINES, NEED_LINES, PRICE_LINES } from "./water-cost-lines";

const FORM = { label: "A", entry: "B", unit: "C", note: "D", noteLine: 56 };
const PRICES = [
  ["low", "Water_Price_Low", "Saved_Low"],
  ["likely", "Water_Price", "Saved_Likely"],
  ["high", "Water_Price_High", "Saved_High"],
] as const;
const KL = "#,##0.0";

const FIRST = 3;
const YEAR = FIRST + PRICE_LINES.length;
const NEED = YEAR + 1 + WATER_A_YEAR.length;
const CHANGE = NEED + NEED_LINES.length;
const SAVING = CHANGE + CHANGE_LINES.length;
const WORKED = SAVING + 4;

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

const saving: CellSpec[] = [
  { at: `A${SAVING}`, kind: "label", value: "Price of water" },
  { at: `A${SAVING + 1}`, kind: "label", value: "Saved, water and power, a year" },
  { at: `A${SAVING + 2}`, kind: "label", value: "Pays back in [years]" },
  ...PRICES.flatMap(([word, price, name], index): CellSpec[] => {
    const column = "BCD"[index]!;
    const payback = name.replace("Saved", "Payback");
    return [
      { at: `${column}${SAVING}`, kind: "unit", value: word },
      { at: `${column}${SAVING + 1}`, kind: "answer", name, formula: atPrice(price), format: "#,##0.00" },
      { at: `${column}${SAVING + 2}`, kind: "answer", name: payback, formula: paybackOf(name), format: "0.0" },
    ];
  }),
];

const onTheWay: CellSpec[] = [
  { at: `A${WORKED - 1}:D${WORKED - 1}`, kind: "heading", value: "Worked out on the way" },
  ...worked.flatMap(([label, name, formula], index): CellSpec[] => [
    { at: `A${WORKED + index}`, kind: "label", value: label },
    { at: `B${WORKED + index}`, kind: "working", name, formula },
  ]),
];

const { cells, checks, heights } = joined(
  formLines(FIRST, FORM, PRICE_LINES),
  year,
  formLines(NEED, FORM, NEED_LINES),
  formLines(CHANGE, FORM, CHANGE_LINES),
  { cells: [...saving, ...onTheWay] },
);

/** What the bed's water is a year, what it costs, and what a change would save. */
export const WATER_COST: SheetSpec = {
  name: "Water and cost",
  widths: [36, 22, 18, 50],
  heights,
  cells: [
    { at: "A1:D1", kind: "title", value: "Water and cost" },
    {
      at: "A2:D2",
      kind: "said",
      value: "What is used, what this audit says is needed, and what a change would need: three figures, kept apart.",
    },
    ...cells,
  ],
  checks,
};
