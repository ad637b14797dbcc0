import { ENTRIES, type EntryName } from "../../../core/figures/entries";
import { type Allowed, number, timeOfDay } from "../../form/allowed";
import { allowedOf } from "../../form/entry-field";
import type { FormPart } from "../../form/entry-lines";
import type { CellSpec, CheckSpec } from "../../form/sheet-spec";
import { ifNumber } from "../water-cost/formulas";
import { DRAINED_AFTER } from "../working/drains";
import { AMOUNTS } from "./places";

/** What a year takes: a figure of another sheet, or what is typed here, now and after. */
interface Amount {
  label: string;
  unit: string;
  note: string;
  format?: string;
  now: string | { name: string };
  after?: string | { name: string };
  allowed?: Allowed;
}

const asked = (name: EntryName): Pick<Amount, "label" | "unit" | "now" | "allowed"> => ({
  label: ENTRIES[name].label,
  unit: ENTRIES[name].unitWords,
  now: { name },
  allowed: allowedOf(ENTRIES[name]),
});

/** Where tops and spacings are not known, all the bed is taken for pots. */
const IF_REACHED = "IF(ISNUMBER(Reached_Share),Reached_Share,1)";
const reaching = (share: string) => ifNumber(share, `${IF_REACHED}*${share}`);

const LINES: readonly Amount[] = [
  {
    label: "Water needed",
    unit: "kL a year",
    format: "#,##0.0",
    now: "Result_Water_kL",
    after: "Needed_After_kL",
    note: "From Water and cost, for the pots that set the run time; from the heads where the share in the bed is known.",
  },
  {
    label: "Run on a watering day",
    unit: "min",
    format: "0",
    now: "Valve_Run_min",
    after: "Valve_Run_After_min",
    note: "Of the valve: from Run time, and from Water and cost.",
  },
  {
    label: "Start of the run",
    unit: "time",
    format: "h:mm",
    now: { name: "Run_Start" },
    allowed: timeOfDay,
    note: "Only needed where power has a price by the hour; the same after.",
  },
  {
    label: "Energy of pumping",
    unit: "kWh per kL",
    format: "0.000",
    now: "Energy_Per_kL",
    after: { name: "After_Energy_kWh_kL" },
    allowed: number(1e-6, 1e4, "kWh per kL"),
    note: "From Water and cost; after: another where the pressure changes. Blank: as now.",
  },
  {
    label: "Of the bed's water, drains from pots",
    unit: "share",
    format: "0 %",
    now: reaching("Mean_Drained_Share"),
    after: ifNumber(
      "Valve_Multiplier_After",
      `IF(Groups_In_Use>0,${reaching("Groups_Drained_After")},${IF_REACHED}*${DRAINED_AFTER})`,
    ),
    note: "From Pots; where the spacing is not known, as if all of it reached pots. After: the cans of now, their spread changed so that SC comes out as typed.",
  },
  {
    label: "Share of the bed's water that falls between pots",
    unit: "share",
    format: "0 %",
    now: "Between_Pots_Share",
    after: "Between_Pots_Share",
    note: "From Pots; the same after.",
  },
  {
    ...asked("Fertiliser_mgL"),
    after: { name: "After_Fertiliser_mgL" },
    note: "Whole fertiliser, measured or from its label and the conductivity of what drains. After blank: as now.",
  },
  {
    ...asked("Fertiliser_Water_mgL"),
    note: "Where fertiliser is injected: what falls between the pots is lost too. Blank: none. The same after.",
  },
  {
    ...asked("Labour_Hours"),
    after: { name: "After_Labour_Hours" },
    note: "For all beds on the valve: hand watering of dry spots, mending. After blank: as now.",
  },
  {
    ...asked("Plants_Lost"),
    after: { name: "After_Plants_Lost" },
    note: "On all beds of the valve, from too little or too much water. After blank: as now.",
  },
];

function cell(at: string, given: string | { name: string } | undefined, format: string): CellSpec[] {
  if (given === undefined) return [];
  if (typeof given === "object") return [{ at, kind: "input", name: given.name, ...(format && { format }) }];
  return [{ at, kind: "answer", formula: given, ...(format && { format }) }];
}

const rowOf = (index: number) => AMOUNTS + 1 + index;

/** The amounts that the prices are for. */
export const AMOUNT_LINES: FormPart = {
  heights: Object.fromEntries(LINES.map((_, index) => [rowOf(index), 28])),
  cells: [
    ...["What a year takes", "now", "after"].map(
      (value, index): CellSpec => ({ at: `${"ABC"[index]}${AMOUNTS}`, kind: "heading", value }),
    ),
    { at: `D${AMOUNTS}:H${AMOUNTS}`, kind: "heading", value: "" },
    ...LINES.flatMap(({ label, unit, note, format = "", now, after }, index): CellSpec[] => {
      const row = rowOf(index);
      return [
        { at: `A${row}`, kind: "label", value: label },
        ...cell(`B${row}`, now, format),
        ...cell(`C${row}`, after, format),
        { at: `D${row}:E${row}`, kind: "unit", value: unit },
        { at: `F${row}:H${row}`, kind: "note", value: note },
      ];
    }),
  ],
  checks: LINES.flatMap(({ now, after, allowed }, index): CheckSpec[] =>
    [now, after].flatMap((given, column) => {
      const range = `${"BC"[column]}${rowOf(index)}`;
      return typeof given === "object" && allowed ? [{ range, ...allowed(range) }] : [];
    }),
  ),
};

const amount = (line: number, span: "Now" | "After") => `${span === "Now" ? "B" : "C"}${rowOf(line)}`;
/** The cells of the amounts. */
export const WATER = (span: "Now" | "After") => amount(0, span);
export const RUN = (span: "Now" | "After") => amount(1, span);
export const RUN_START = amount(2, "Now");
export const BETWEEN = (span: "Now" | "After") => amount(5, span);
export const DRAINED = (span: "Now" | "After") => amount(4, span);
/** What is typed for after, or as now. */
const orAsNow = (line: number, span: "Now" | "After") =>
  span === "Now"
    ? amount(line, "Now")
    : `IF(${amount(line, "After")}="",${amount(line, "Now")},${amount(line, "After")})`;
export const ENERGY = (span: "Now" | "After") => orAsNow(3, span);
export const FERTILISER = (span: "Now" | "After") => orAsNow(6, span);
export const HOURS = (span: "Now" | "After") => orAsNow(8, span);
export const PLANTS = (span: "Now" | "After") => orAsNow(9, span);
