import { type FormLine, formLine } from "../form-line";
import type { CellSpec, CheckSpec, SheetSpec } from "../sheet-spec";
import { withLeaching } from "./run-time";

/** A figure that stands twice: on the bed, and from the heads where the share that lands in the bed is known. */
interface Twofold {
  label: string;
  bed: string;
  heads: string;
  bedName: string;
  headsName: string;
  note: string;
}
type Line = FormLine | Twofold | string;

const NEEDS_SHARE = '"needs the share in the bed"';
const isShare = (name: string) => `IF(ISNUMBER(${name}),AND(${name}>0,${name}<=1),FALSE)`;
const ifNumber = (name: string, formula: string) => `IF(ISNUMBER(${name}),${formula},${name})`;
const overShare = (name: string, share: string) =>
  ifNumber(name, `IF(${isShare(share)},${name}/${share},${NEEDS_SHARE})`);
const yearOf = (multiplier: string) =>
  ifNumber(
    "Net_Depth_mm",
    ifNumber(
      multiplier,
      `IF(ISNUMBER(Block_Area_m2),IF(N(Water_Days)>0,Block_Area_m2*Net_Depth_mm*Water_Days*${multiplier}/1000,"needs watering days"),"needs the bed's size")`,
    ),
  );
const fromHeadsIfKnown = (heads: string, bed: string) => `IF(ISNUMBER(${heads}),${heads},${bed})`;
const SAVES = (formula: string) =>
  `IF(Waters_To_Driest="yes",${formula},IF(Waters_To_Driest="no","none: the gain is evenness","answer the question above"))`;
const atPrice = (price: string) =>
  ifNumber(
    "Saved_kL",
    `IF(ISNUMBER(${price}),Saved_kL*(${price}+IF(ISNUMBER(Power_Per_kL),Power_Per_kL,0)),"needs this price")`,
  );
const paybackOf = (saving: string) =>
  ifNumber(saving, `IF(${saving}>0,IF(ISNUMBER(Capital_Used),Capital_Used/${saving},"needs what it costs"),"never")`);

const LINES: Line[] = [
  "Days, price and power",
  { label: "Watering days", kind: "input", name: "Water_Days", unit: "days a year" },
  {
    label: "Price of water, likely",
    kind: "input",
    name: "Water_Price",
    unit: "per kL",
    note: "In any currency, the same throughout; 0 where water is free.",
  },
  { label: "Price of water, low", kind: "input", name: "Water_Price_Low", unit: "per kL" },
  { label: "Price of water, high", kind: "input", name: "Water_Price_High", unit: "per kL" },
  {
    label: "Share of the heads' water in the bed",
    kind: "input",
    name: "In_Bed_Share",
    unit: "0 to 1",
    note: "From Heads (caught / metered) or a layout. Left blank, figures hold for water falling on the bed only.",
  },
  { label: "Pumping pressure", kind: "input", name: "Pump_kPa", unit: "kPa" },
  {
    label: "Efficiency of the pump",
    kind: "input",
    name: "Pump_Efficiency",
    unit: "0 to 1",
    note: "0.48 on average in Queensland field tests, 0.23 the lowest (NGIQ).",
  },
  { label: "Efficiency of the motor", kind: "input", name: "Motor_Efficiency", unit: "0 to 1" },
  { label: "Tariff", kind: "input", name: "Power_Tariff", unit: "per kWh" },
  {
    label: "Energy",
    kind: "answer",
    name: "Energy_Per_kL",
    unit: "kWh per kL",
    format: "0.000",
    formula:
      'IF(COUNT(Pump_kPa,Pump_Efficiency,Motor_Efficiency)=3,IF(AND(Pump_Efficiency>0,Motor_Efficiency>0),Pump_kPa/3600/(Pump_Efficiency*Motor_Efficiency),"needs efficiencies above 0"),"needs pump and motor")',
    note: "kPa / 3600 / (pump · motor efficiency).",
  },
  {
    label: "Power",
    kind: "answer",
    name: "Power_Per_kL",
    unit: "per kL",
    format: "0.00",
    formula: ifNumber("Energy_Per_kL", 'IF(ISNUMBER(Power_Tariff),Energy_Per_kL*Power_Tariff,"needs a tariff")'),
  },
  "Water a year",
  {
    label: "Used now",
    bedName: "Used_Now_Bed_kL",
    headsName: "Used_Now_Heads_kL",
    bed: `IF(AND(ISNUMBER(Used_Now_Heads_kL),${isShare("In_Bed_Share")}),Used_Now_Heads_kL*In_Bed_Share,IF(AND(ISNUMBER(Used_MAR),ISNUMBER(Block_Area_m2),COUNT(Run_Minutes_Now,Runs_A_Year_Now)=2),Used_MAR*Run_Minutes_Now/60*Runs_A_Year_Now*Block_Area_m2/1000,"needs minutes and runs: see Block"))`,
    heads:
      'IF(ISNUMBER(Metered_kL),Metered_kL,IF(AND(ISNUMBER(Bed_Flow_Lh),COUNT(Run_Minutes_Now,Runs_A_Year_Now)=2),Bed_Flow_Lh*Run_Minutes_Now/60*Runs_A_Year_Now/1000,"needs meter, or flow and runs"))',
    note: "From the heads: metered, or flow · minutes · runs. On the bed: that times the share; without it, MAR · minutes · runs · area.",
  },
  {
    label: "Needed now",
    bedName: "Needed_Now_Bed_kL",
    headsName: "Needed_Now_Heads_kL",
    bed: yearOf("Gross_Multiplier"),
    heads: overShare("Needed_Now_Bed_kL", "In_Bed_Share"),
    note: "Area · net depth · days · multiplier of this audit, with leaching as on Run time.",
  },
  {
    label: "Needed after",
    bedName: "Needed_After_Bed_kL",
    headsName: "Needed_After_Heads_kL",
    bed: ifNumber("After_Multiplier", yearOf("After_Multiplier")),
    heads: overShare("Needed_After_Bed_kL", "After_Share_Used"),
    note: "The same with the SC after the change.",
  },
  {
    label: "These two lines count",
    kind: "answer",
    name: "Water_Label",
    formula: `IF(${isShare("In_Bed_Share")},"water from the heads","water falling on the bed only")`,
    note: "From the heads where the share in the bed is known.",
  },
  {
    label: "Needed now",
    kind: "answer",
    name: "Result_Water_kL",
    unit: "kL a year",
    format: "#,##0.0",
    formula: fromHeadsIfKnown("Needed_Now_Heads_kL", "Needed_Now_Bed_kL"),
  },
  {
    label: "Water bill for it, at the likely price",
    kind: "answer",
    name: "Result_Cost",
    unit: "a year",
    format: "#,##0.00",
    formula: ifNumber("Result_Water_kL", 'IF(ISNUMBER(Water_Price),Result_Water_kL*Water_Price,"needs a price")'),
  },
  {
    label: "Power for it",
    kind: "answer",
    name: "Result_Power",
    unit: "a year",
    format: "#,##0.00",
    formula: ifNumber("Result_Water_kL", ifNumber("Power_Per_kL", "Result_Water_kL*Power_Per_kL")),
  },
  "After a change: from a second audit, or worked out by the layout planner",
  { label: "SC after", kind: "input", name: "After_SC", note: "Of the same kind as the multiplier on Run time." },
  { label: "MAR after", kind: "input", name: "After_MAR", unit: "mm/h" },
  {
    label: "Share in the bed after",
    kind: "input",
    name: "After_In_Bed_Share",
    unit: "0 to 1",
    note: "Blank: as now.",
  },
  {
    label: "What the change costs",
    kind: "input",
    name: "After_Capital",
    unit: "once",
    note: "Blank: the sum on Actions.",
  },
  {
    label: "Run time after",
    kind: "answer",
    name: "Run_Time_After_min",
    unit: "min a day",
    format: "0",
    formula: ifNumber(
      "After_Multiplier",
      ifNumber("Net_Depth_mm", 'IF(N(After_MAR)>0,60*Net_Depth_mm*After_Multiplier/After_MAR,"needs MAR after")'),
    ),
  },
  "Saving",
  {
    label: "Is the bed watered to its driest pot now?",
    kind: "input",
    name: "Waters_To_Driest",
    note: "Only then does evener water mean less of it; else plants that are dry now get more, and the gain is evenness.",
  },
  {
    label: "Water saved",
    kind: "answer",
    name: "Saved_kL",
    unit: "kL a year",
    format: "#,##0.0",
    formula: SAVES(ifNumber("Result_Water_kL", ifNumber("Needed_After_kL", "Result_Water_kL-Needed_After_kL"))),
    note: "Needed now - needed after; both from the heads where the share is known.",
  },
];

const PRICES = [
  ["low", "Water_Price_Low", "Saved_Low"],
  ["likely", "Water_Price", "Saved_Likely"],
  ["high", "Water_Price_High", "Saved_High"],
] as const;

const FIRST = 3;
const rowOf = (name: string) =>
  FIRST + LINES.findIndex((line) => typeof line !== "string" && "name" in line && line.name === name);
const twofold = (line: Line): line is Twofold => typeof line !== "string" && "bed" in line;

function cells(line: Line, index: number): CellSpec[] {
  const row = FIRST + index;
  if (typeof line === "string") {
    const heading: CellSpec = { at: `A${row}:D${row}`, kind: "heading", value: line };
    if (line !== "Water a year") return [heading];
    return [
      { ...heading, at: `A${row}` },
      { at: `B${row}`, kind: "heading", value: "On the bed, kL" },
      { at: `C${row}`, kind: "heading", value: "From heads, kL" },
      { at: `D${row}`, kind: "heading", value: "" },
    ];
  }
  if (!twofold(line)) return formLine(row, line);
  const { label, bed, heads, bedName, headsName, note } = line;
  return [
    { at: `A${row}`, kind: "label", value: label },
    { at: `B${row}`, kind: "answer", formula: bed, name: bedName, format: "#,##0.0" },
    { at: `C${row}`, kind: "answer", formula: heads, name: headsName, format: "#,##0.0" },
    { at: `D${row}`, kind: "note", value: note },
  ];
}

const SAVING = FIRST + LINES.length;

function savingCells(): CellSpec[] {
  const columns = ["B", "C", "D"] as const;
  return [
    { at: `A${SAVING}`, kind: "label", value: "Price of water" },
    { at: `A${SAVING + 1}`, kind: "label", value: "Saved, water and power, a year" },
    { at: `A${SAVING + 2}`, kind: "label", value: "Pays back in [years]" },
    ...PRICES.flatMap(([word, price, name], index): CellSpec[] => {
      const column = columns[index]!;
      return [
        { at: `${column}${SAVING}`, kind: "unit", value: word },
        { at: `${column}${SAVING + 1}`, kind: "answer", name, formula: atPrice(price), format: "#,##0.00" },
        {
          at: `${column}${SAVING + 2}`,
          kind: "answer",
          name: name.replace("Saved", "Payback"),
          formula: paybackOf(name),
          format: "0.0",
        },
      ];
    }),
  ];
}

const WORKED = SAVING + 4;
const worked: [label: string, name: string, formula: string][] = [
  [
    "Multiplier after, with leaching",
    "After_Multiplier",
    `IF(ISNUMBER(After_SC),IF(After_SC>=1,${withLeaching("After_SC")},"needs an SC of 1 or more"),"needs SC after")`,
  ],
  [
    "Share in the bed after, as used",
    "After_Share_Used",
    `IF(${isShare("After_In_Bed_Share")},After_In_Bed_Share,IF(${isShare("In_Bed_Share")},In_Bed_Share,""))`,
  ],
  [
    "Used now, as counted",
    "Used_Now_kL",
    `IF(${isShare("In_Bed_Share")},${fromHeadsIfKnown("Used_Now_Heads_kL", '"needs meter, or flow and runs"')},Used_Now_Bed_kL)`,
  ],
  [
    "Needed after, as counted",
    "Needed_After_kL",
    `IF(${isShare("In_Bed_Share")},Needed_After_Heads_kL,Needed_After_Bed_kL)`,
  ],
  [
    "Cost of the change, as used",
    "Capital_Used",
    'IF(ISNUMBER(After_Capital),After_Capital,IF(N(Actions_Cost)>0,Actions_Cost,""))',
  ],
];

const number = (name: string, least: number, most: number, message: string): CheckSpec => ({
  range: `B${rowOf(name)}`,
  message,
  rule: { kind: "number", least, most },
});
const share = (name: string, what: string) => number(name, 0.01, 1, `${what} must be from 0.01 to 1.`);

/** What the bed's water is a year, what it costs, and what a change would save. */
export const WATER_COST: SheetSpec = {
  name: "Water and cost",
  widths: [36, 22, 18, 50],
  heights: Object.fromEntries(
    LINES.flatMap((line, index) => {
      const long = typeof line !== "string" && (line.note ?? "").length > 56;
      return long || twofold(line) ? [[FIRST + index, 38]] : [];
    }),
  ),
  cells: [
    { at: "A1:D1", kind: "title", value: "Water and cost" },
    {
      at: "A2:D2",
      kind: "said",
      value: "What is used, what this audit says is needed, and what a change would need: three figures, kept apart.",
    },
    ...LINES.flatMap(cells),
    ...savingCells(),
    { at: `A${WORKED - 1}:D${WORKED - 1}`, kind: "heading", value: "Worked out on the way" },
    ...worked.flatMap(([label, name, formula], index): CellSpec[] => [
      { at: `A${WORKED + index}`, kind: "label", value: label },
      { at: `B${WORKED + index}`, kind: "working", name, formula },
    ]),
  ],
  checks: [
    number("Water_Days", 0.01, 366, "Days must be more than 0 and at most 366."),
    number("Water_Price", 0, 1e6, "The price must be 0 or more."),
    number("Water_Price_Low", 0, 1e6, "The price must be 0 or more."),
    number("Water_Price_High", 0, 1e6, "The price must be 0 or more."),
    share("In_Bed_Share", "The share"),
    number("Pump_kPa", 0, 10000, "The pressure must be from 0 to 10000 kPa."),
    share("Pump_Efficiency", "The efficiency"),
    share("Motor_Efficiency", "The efficiency"),
    number("Power_Tariff", 0, 1e6, "The tariff must be 0 or more."),
    number("After_SC", 1, 1000, "SC must be from 1 to 1000."),
    number("After_MAR", 0.01, 1000, "MAR must be more than 0 and at most 1000 mm/h."),
    share("After_In_Bed_Share", "The share"),
    number("After_Capital", 0, 1e9, "The cost must be 0 or more."),
    {
      range: `B${rowOf("Waters_To_Driest")}`,
      message: "Choose yes or no.",
      rule: { kind: "list", of: ["yes", "no"] },
    },
  ],
};
