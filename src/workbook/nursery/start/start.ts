import { CAUTION, SCHEDULE_CAUTIONS } from "../../cautions";
import { date, number, words } from "../../form/allowed";
import { formLines, noteHeight } from "../../form/entry-lines";
import { quoted } from "../../form/nested-ifs";
import type { CellSpec, SheetSpec } from "../../form/sheet-spec";
import { outside } from "../../form/typed-words";
import { PLAN_VERSION } from "../../version";

const FORM = { label: "A:B", entry: "C", unit: "D", note: "E", noteLine: 52 };

const STEPS = [
  ["Demand", "The pot groups, and what they need month by month: from weighed pots or from the weather."],
  ["Weather", "Evapotranspiration of each month, typed or calculated, and the rain that counts."],
  ["Weighings", "Pots weighed twice, about a day apart: the surest way, and the only one under cover."],
  ["Leaching test", "What drains at the driest can, and a better run time from it."],
  ["Register", "One line for each block audit: from the files of the audits, or typed."],
  ["Program", "The blocks that share the pump, the hours, the tank and the day's limit; choose the month."],
  ["Start times", "In the pane, Fit the night finds the start times: print them for the controller."],
] as const;

const CAUTIONS = [...SCHEDULE_CAUTIONS, CAUTION.DECISION];

const LATITUDE_NOTE = "South negative. Only needed where evapotranspiration is calculated from the weather.";
const LATITUDE_WRONG = outside("Latitude_deg", -66.5, 66.5);

const FACTS = [
  "The nursery",
  { label: "Nursery", name: "Nursery_Name", unit: "words", allowed: words() },
  { label: "Planned by", name: "Plan_By", unit: "words", allowed: words() },
  { label: "Date", name: "Plan_Date", unit: "date", allowed: date, format: "yyyy-mm-dd" },
  {
    label: "Latitude",
    name: "Latitude_deg",
    unit: "degrees",
    allowed: number(-66.5, 66.5, "degrees"),
    note: LATITUDE_NOTE,
  },
  {
    label: "Elevation",
    name: "Elevation_m",
    unit: "m",
    allowed: number(-430, 5000, "m"),
    note: "Above the sea. Only needed with humidity, wind and sun.",
  },
] as const;

const FACTS_FROM = 4;
const STEPS_FROM = FACTS_FROM + FACTS.length + 2;
const CAUTIONS_FROM = STEPS_FROM + STEPS.length + 2;
const MADE = CAUTIONS_FROM + CAUTIONS.length + 1;

const facts = formLines(FACTS_FROM, FORM, FACTS);
const factCells = facts.cells.map(
  ({ value, ...cell }): CellSpec =>
    value === LATITUDE_NOTE
      ? {
          ...cell,
          formula: `IF(${LATITUDE_WRONG},"Cannot be used: must be from -66.5 to 66.5.",${quoted(LATITUDE_NOTE)})`,
        }
      : { ...cell, ...(value !== undefined && { value }) },
);
const LINE = 96;

/** Which nursery this is, what to do, and what to beware of. */
export const NURSERY: SheetSpec = {
  name: "Nursery",
  roomy: true,
  widths: [5, 16, 30, 10, 46],
  heights: {
    2: 30,
    ...facts.heights,
    ...Object.fromEntries(CAUTIONS.map(({ length }, index) => [CAUTIONS_FROM + index, 4 + noteHeight(length, LINE)])),
  },
  cells: [
    { at: "A1:E1", kind: "title", value: "Nursery plan: what pots need, and a night that fits" },
    {
      at: "A2:E2",
      kind: "said",
      value: "One workbook for the blocks that share a pump. Fill in the cream cells; leave blank what is not known.",
    },
    { at: "A3:E3", kind: "caution", name: "Plan_Remark", value: "" },
    ...factCells,
    { at: `A${STEPS_FROM - 1}:E${STEPS_FROM - 1}`, kind: "heading", value: "In this order" },
    ...STEPS.flatMap(([sheet, what], index): CellSpec[] => [
      { at: `A${STEPS_FROM + index}`, kind: "label", value: index + 1, align: "center" },
      { at: `B${STEPS_FROM + index}`, kind: "label", value: sheet },
      { at: `C${STEPS_FROM + index}:E${STEPS_FROM + index}`, kind: "label", value: what },
    ]),
    { at: `A${CAUTIONS_FROM - 1}:E${CAUTIONS_FROM - 1}`, kind: "heading", value: "Take care" },
    ...CAUTIONS.map(
      (value, index): CellSpec => ({
        at: `A${CAUTIONS_FROM + index}:E${CAUTIONS_FROM + index}`,
        kind: "caution",
        value,
      }),
    ),
    { at: `A${MADE}:B${MADE}`, kind: "label", value: "Version" },
    { at: `C${MADE}`, kind: "label", value: PLAN_VERSION, name: "Plan_Version" },
  ],
  checks: facts.checks,
  shades: [
    {
      range: factCells.find(({ formula }) => formula?.includes(LATITUDE_WRONG))!.at,
      formula: LATITUDE_WRONG,
      fill: "#f6e8c3",
      colour: "#543005",
      bold: true,
    },
  ],
};
