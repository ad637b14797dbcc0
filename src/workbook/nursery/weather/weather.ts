import { columnLetters } from "../../../cells/letters";
import { number } from "../../form/allowed";
import type { CellSpec, CheckSpec, SheetSpec } from "../../form/sheet-spec";
import { DAYS_OF_MONTH, MONTHS } from "../months";
import { FIRST_MONTH, LAST_MONTH, NOTE_COLUMN, WORKING_HEADING } from "./places";
import { usedFormula, usefulRainFormula, wayFormula } from "./words";
import { SOIL_HEAT, WORKING_CELLS, WORKING_HEIGHTS } from "./working";

const column = (letter: string) => `${letter}${FIRST_MONTH}:${letter}${LAST_MONTH}`;

const INPUTS: readonly [letter: string, heading: string, least: number, most: number, unit: string][] = [
  ["B", "Tmin [°C]", -60, 60, "°C"],
  ["C", "Tmax [°C]", -60, 60, "°C"],
  ["D", "RHmin [%]", 0, 100, "%"],
  ["E", "RHmax [%]", 0, 100, "%"],
  ["F", "Wind at 2 m [m/s]", 0, 100, "m/s"],
  ["G", "Sun [h a day]", 0, 24, "h"],
  ["H", "ET0 typed [mm a day]", 0, 30, "mm a day"],
  ["I", "Rain [mm a month]", 0, 10000, "mm"],
  ["J", "Useful share [0 to 1]", 0, 1, ""],
];

const monthLines = MONTHS.flatMap((month, index): CellSpec[] => {
  const row = FIRST_MONTH + index;
  const days = DAYS_OF_MONTH[index]!;
  return [
    { at: `A${row}`, kind: "label", value: month },
    ...INPUTS.map(([letter]): CellSpec => ({ at: `${letter}${row}`, kind: "input" })),
    { at: `K${row}`, kind: "answer", formula: usedFormula(row, index), format: "0.00" },
    { at: `L${row}`, kind: "answer", formula: usefulRainFormula(row, days), format: "0.00" },
    { at: `M${row}`, kind: "label", value: days, align: "center" },
    { at: `${NOTE_COLUMN}${row}`, kind: "note", formula: wayFormula(row, index) },
  ];
});

const headings = [
  "Month",
  ...INPUTS.map(([, heading]) => heading),
  "ET0 used [mm a day]",
  "Useful rain [mm a day]",
  "Days",
  "How ET0 came about, or what is missing",
];

/** The weather of the twelve months, and what it asks of a reference grass. */
export const WEATHER: SheetSpec = {
  name: "Weather",
  widths: [25, ...Array.from({ length: 12 }, () => 9.5), 52],
  heights: {
    2: 32,
    3: 32,
    [FIRST_MONTH - 1]: 62,
    ...Object.fromEntries(MONTHS.map((_, index) => [FIRST_MONTH + index, 26])),
    ...WORKING_HEIGHTS,
  },
  landscape: true,
  cells: [
    { at: "A1:N1", kind: "title", value: "Weather" },
    {
      at: "A2:N2",
      kind: "said",
      value:
        "Means of each month, of one year or of many. ET0 is typed, or calculated: with all six from temperature to sun by Penman-Monteith, else from Tmin and Tmax alone by Hargreaves (FAO-56, 1998). Both need the latitude, the first the elevation too: see Nursery.",
    },
    {
      at: "A3:N3",
      kind: "caution",
      value:
        "ET0 from weather is that of grass in the open. It does not hold under cover: weigh pots there (sheet Weighings), or type an ET0 that was measured under it.",
    },
    ...headings.map(
      (value, index): CellSpec => ({ at: `${columnLetters(index + 1)}${FIRST_MONTH - 1}`, kind: "heading", value }),
    ),
    ...monthLines,
    { at: `A${WORKING_HEADING}`, kind: "heading", value: "Working" },
    ...MONTHS.map(
      (month, index): CellSpec => ({
        at: `${columnLetters(index + 2)}${WORKING_HEADING}`,
        kind: "heading",
        value: month.slice(0, 3),
      }),
    ),
    { at: `${NOTE_COLUMN}${WORKING_HEADING}`, kind: "heading", value: "Equations of FAO-56" },
    ...WORKING_CELLS,
  ],
  areas: {
    Weather_Typed: `B${FIRST_MONTH}:J${LAST_MONTH}`,
    Weather_ET0: column("K"),
    Weather_Rain: column("L"),
    Weather_How: column(NOTE_COLUMN),
    Weather_Soil_Heat: SOIL_HEAT,
  },
  checks: INPUTS.map(
    ([letter, , least, most, unit]): CheckSpec => ({ range: column(letter), ...number(least, most, unit)("") }),
  ),
};
