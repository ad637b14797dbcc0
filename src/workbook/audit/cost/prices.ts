import { COSTS } from "../../../core/figures/costs";
import { ENTRIES } from "../../../core/figures/entries";
import { number, timeOfDay } from "../../form/allowed";
import type { FormPart } from "../../form/entry-lines";
import type { CellSpec } from "../../form/sheet-spec";
import { headings } from "./lines";
import {
  BAND,
  BANDS_FLAT,
  BANDS_HEAD,
  FOUR,
  LEVELS,
  OTHERS,
  priceColumn,
  STEP,
  STEPS_FLAT,
  STEPS_HEAD,
} from "./places";

const PRICE = number(ENTRIES.Water_Price.least, ENTRIES.Water_Price.most, "");
const MONEY = "#,##0.00##";
const TIME = "h:mm";
const KL = "#,##0.0";

const label = (row: number, value: string): CellSpec => ({ at: `A${row}`, kind: "label", value });
const note = (row: number, value: string): CellSpec => ({ at: `H${row}`, kind: "note", value });
const input = (at: string, format?: string, name?: string): CellSpec => ({
  at,
  kind: "input",
  ...(format && { format }),
  ...(name && { name }),
});
const answer = (at: string, formula: string, format: string, name?: string): CellSpec => ({
  at,
  kind: "answer",
  formula,
  format,
  ...(name && { name }),
});

const priceOr = (name: string, otherwise: string) =>
  `IF(ISNUMBER(${name}),IF(${name}>=0,${name},"needs a price of 0 or more"),${otherwise})`;
/** Water in a step: that under its end and above the end of the step before. */
const inStep = (index: number, water: string) => {
  const row = STEP + index;
  const below = index === 0 ? "0" : `B${row - 1}`;
  return `IF(AND(Steps_In_Use>${index},Steps_Problem="",ISNUMBER(${water})),MAX(0,IF(Steps_In_Use=${index + 1},${water},MIN(${water},B${row}))-${below}),"")`;
};

const steps: CellSpec[] = [
  ...headings(STEPS_HEAD, ["Price of water [per kL]", "up to [kL]", "kL now", "kL after", "low", "likely", "high"]),
  { at: `H${STEPS_HEAD}`, kind: "heading", value: "A price left blank at low or high is as likely" },
  label(STEPS_FLAT, "At one price"),
  answer(`E${STEPS_FLAT}`, priceOr("Water_Price_Low", `F${STEPS_FLAT}`), MONEY, "One_Price_Low"),
  answer(`F${STEPS_FLAT}`, priceOr("Water_Price", '"needs a price"'), MONEY, "One_Price_Likely"),
  answer(`G${STEPS_FLAT}`, priceOr("Water_Price_High", `F${STEPS_FLAT}`), MONEY, "One_Price_High"),
  note(STEPS_FLAT, "Typed on Water and cost; counts where no step is filled in."),
  ...FOUR.flatMap((index): CellSpec[] => {
    const row = STEP + index;
    return [
      label(row, `Step ${index + 1}`),
      input(`B${row}`, KL),
      answer(`C${row}`, inStep(index, "Result_Water_kL"), KL),
      answer(`D${row}`, inStep(index, "Needed_After_kL"), KL),
      ...LEVELS.map((level) => input(`${priceColumn(level)}${row}`, MONEY)),
      note(
        row,
        [
          "By steps of kL a year: each price holds for its own step only.",
          "Fill the steps from the first on, ends rising.",
          "The last step has no end: leave it blank.",
          "Up to four. Filled in, they replace the one price.",
        ][index]!,
      ),
    ];
  }),
];

const bands: CellSpec[] = [
  ...headings(BANDS_HEAD, ["Price of power [per kWh]", "from", "to", "share of run", "low", "likely", "high", ""]),
  label(BANDS_FLAT, "At one tariff"),
  input(`E${BANDS_FLAT}`, MONEY, "Power_Tariff_Low"),
  answer(`F${BANDS_FLAT}`, priceOr("Power_Tariff", '"needs a tariff"'), MONEY, "One_Tariff"),
  input(`G${BANDS_FLAT}`, MONEY, "Power_Tariff_High"),
  note(BANDS_FLAT, "Likely: from Water and cost; used where no hours are filled in."),
  ...FOUR.flatMap((index): CellSpec[] => {
    const row = BAND + index;
    return [
      label(row, `Hours ${index + 1}`),
      input(`B${row}`, TIME),
      input(`C${row}`, TIME),
      input(`D${row}`, "0.00"),
      ...LEVELS.map((level) => input(`${priceColumn(level)}${row}`, MONEY)),
      note(
        row,
        [
          "Either hours: each line begins where the one above ends.",
          "The run then counts from its start below, without its rests.",
          "Or type each price's share of the run, together 1: shares replace the hours.",
          "Up to four; they go before the one tariff.",
        ][index]!,
      ),
    ];
  }),
];

const OTHER = [
  [
    `${COSTS.Fertiliser.short} [${ENTRIES.Fertiliser_Price.unit}]`,
    "Fertiliser_Price",
    "Of the fertiliser that is in the drained water.",
  ],
  [`${COSTS.Labour.short} [per hour]`, "Wage", "With all that comes on top of the wage."],
  ["A plant lost [each]", "Plant_Worth", "What it would have sold for, less what it saves not to grow it."],
] as const;

const others: CellSpec[] = [
  ...headings(OTHERS, ["Other prices", "", "", "", "low", "likely", "high", ""]),
  ...OTHER.flatMap(([words, name, means], index): CellSpec[] => {
    const row = OTHERS + 1 + index;
    return [
      label(row, words),
      input(`E${row}`, MONEY, `${name}_Low`),
      input(`F${row}`, MONEY, name),
      input(`G${row}`, MONEY, `${name}_High`),
      note(row, means),
    ];
  }),
];

const checkOf = (range: string, allowed: typeof PRICE) => ({ range, ...allowed(range.split(":")[0]!) });

/** The prices: of water by steps, of power by the hour, and the others. */
export const PRICES: FormPart = {
  cells: [...steps, ...bands, ...others],
  heights: { [STEPS_FLAT]: 28, [BANDS_FLAT]: 28 },
  checks: [
    checkOf(`B${STEP}:B${STEP + 3}`, number(0, 1e9, "kL")),
    checkOf(`E${STEP}:G${STEP + 3}`, PRICE),
    checkOf(`B${BAND}:C${BAND + 3}`, (cell) => ({ ...timeOfDay(cell), rule: { kind: "number", least: 0, most: 1 } })),
    checkOf(`D${BAND}:D${BAND + 3}`, number(0, 1, "")),
    checkOf(`E${BANDS_FLAT}`, PRICE),
    checkOf(`G${BANDS_FLAT}`, PRICE),
    checkOf(`E${BAND}:G${BAND + 3}`, PRICE),
    checkOf(`E${OTHERS + 1}:G${OTHERS + 3}`, PRICE),
  ],
};

export const PRICE_AREAS = {
  Step_Ends: `B${STEP}:B${STEP + 3}`,
  Step_Prices: `E${STEP}:G${STEP + 3}`,
  Band_Hours: `B${BAND}:D${BAND + 3}`,
  Band_Prices: `E${BAND}:G${BAND + 3}`,
};
