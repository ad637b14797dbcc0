import { NOT_VALID } from "../../answer/answer-sentence";
import { choice, count, date, number, words } from "../../form/allowed";
import { entryField } from "../../form/entry-field";
import type { Field } from "../../form/entry-lines";

const DAY = "yyyy-mm-dd";

const text = (label: string, name: string, note = ""): Field => ({
  label,
  name,
  note,
  unit: "words",
  allowed: words(),
});
const pick = (label: string, name: string, of: readonly string[], note = ""): Field => ({
  label,
  name,
  note,
  unit: "choose",
  allowed: choice(...of),
});
const measure = (
  label: string,
  name: string,
  unit: string,
  [least, most]: readonly [number, number],
  note = "",
): Field => ({ label, name, unit, note, allowed: number(least, most, unit) });
const counted = (label: string, name: string, unit: string, most: number, note = ""): Field => ({
  label,
  name,
  unit,
  note,
  allowed: count(1, most),
});
const day = (label: string, name: string, note = ""): Field => ({
  label,
  name,
  note,
  unit: "date",
  format: DAY,
  allowed: date,
});

/** What a walk-through came to, and whether leaves hang over the cans. */
export const WALK_THROUGH = ["nothing found", "mended", "left as found"] as const;
export const CANOPY_OVER = ["no", "yes"] as const;

/** Where the water comes in, seen as the cans are typed in. */
export const SUPPLY_SIDES = ["top", "bottom", "left", "right", "unknown"] as const;

/** Heads whose circles do not meet leave ground dry, or one of the two figures is mistyped. */
const widerThanThrow = (spacing: string) => ({
  when: `IF(COUNT(${spacing},Head_Throw_m)=2,${spacing}>2*Head_Throw_m,FALSE)`,
  words: `"Wider than twice the throw, 2 × "&Head_Throw_m&" m: the circles of neighbours do not meet. Are spacing and throw right?"`,
});

/** What is asked of the block, up to its water. */
export const BLOCK_LINES: readonly (string | Field)[] = [
  "Who and where",
  text("Site", "Site_Name", "Name of the nursery."),
  text("Licence", "Licence", "Number of the water licence or account; none for mains without one."),
  text("Meter", "Meter", "Number on the meter that feeds this block."),
  text("Block", "Block_Name"),
  text("Auditor", "Auditor", "Who made the test."),
  day("Day of the test", "Test_Date"),
  pick(
    "Tested",
    "Test_State",
    ["as found", "as left", NOT_VALID],
    "As found: before anything was mended. As left: after. Not valid: no run time to set.",
  ),
  pick(
    "Walk-through",
    "Walk_Through",
    WALK_THROUGH,
    "Before the test, water running: blocked, leaning, mixed, leaking or stopped heads. Blank: not done.",
  ),
  text("What it found", "Walk_Found", "How many heads, and what was wrong."),
  pick(
    "Leaves over the cans",
    "Canopy_Over",
    CANOPY_OVER,
    "Hanging baskets or a wet canopy above cans: they catch, drip and shift water, so the figures are of the cans only.",
  ),
  { label: "Remarks", name: "Audit_Remark", unit: "words", wide: true, allowed: words(160) },
  "Crop and pots",
  text("Crop", "Crop"),
  pick("Pot shape", "Pot_Shape", ["round", "square"]),
  measure("Pot top", "Pot_Top_mm", "mm", [20, 2000], "Diameter of a round pot, side of a square one, at the rim."),
  measure("Pot spacing", "Pot_Spacing_mm", "mm", [20, 5000], "From the middle of a pot to the middle of the next."),
  pick("Cover", "Cover", ["open", "shade cloth", "plastic house", "glasshouse"]),
  "The bed that is tested",
  entryField("Bed_Width_m", { note: "Across, left to right as the cans are typed in." }),
  entryField("Bed_Length_m", { note: "Along, top to bottom as the cans are typed in." }),
  {
    label: "Area",
    unit: "m²",
    name: "Block_Area_m2",
    format: "#,##0.0",
    formula: 'IF(COUNT(Bed_Width_m,Bed_Length_m)=2,Bed_Width_m*Bed_Length_m,"")',
    note: "Width × length.",
  },
  measure(
    "Bearing of the length",
    "Bed_Bearing_deg",
    "deg",
    [0, 360],
    "Compass bearing from the top row of cans to the bottom row; 0 north, 90 east. Leave it blank when unknown.",
  ),
  counted("Beds on the valve", "Beds_On_Valve", "beds", 500, "Beds that are watered when this valve is open."),
  counted("Beds tested", "Beds_Tested", "beds", 500, "How many of these beds were tested: one workbook for each."),
  text("Other beds, tested", "Beds_Also_Tested", "Names of beds on this valve that have a workbook of their own."),
  text("Other beds, not tested", "Beds_Not_Tested", "Names; they get what the tested ones are given."),
  "Heads",
  counted("Heads of this bed", "Head_Count", "heads", 5000, "All that water the tested bed, on its border too."),
  text("Head", "Head_Model", "In words, as the box or the head says."),
  text("Nozzle", "Nozzle", "Colour, number or size."),
  pick(
    "Layout",
    "Head_Layout",
    ["border", "inset", "centre line", "staggered", "other"],
    "Border: heads on the bed's edge. Inset: half a spacing inside. Centre line: one row down the middle. Staggered: as border, every second row shifted half a spacing.",
  ),
  {
    ...measure("Head spacing", "Head_Spacing_m", "m", [0.3, 50], "Across the width, from head to head."),
    asks: widerThanThrow("Head_Spacing_m"),
  },
  {
    ...measure("Row spacing", "Row_Spacing_m", "m", [0.3, 50], "Along the length, from row to row."),
    asks: widerThanThrow("Row_Spacing_m"),
  },
  measure(
    "Throw",
    "Head_Throw_m",
    "m",
    [0.3, 50],
    "Wetted radius of a head at the pressure that it has here, by the maker or measured with the tape.",
  ),
  pick(
    "Supply side",
    "Supply_Side",
    SUPPLY_SIDES,
    "Side of the bed where the water comes in, as the cans are typed in: pressure falls away from it.",
  ),
  {
    label: "Arc",
    unit: "choose",
    name: "Head_Arc",
    note: "What the three words mean is at the foot of this sheet.",
  },
  measure("Riser", "Riser_m", "m", [0, 10], "Height of the nozzle above the ground."),
  pick("Pressure regulated", "Pressure_Regulated", ["yes", "no"], "By a regulator at the valve or in each head."),
  "Water",
  pick("Source", "Water_Source", ["mains", "bore", "dam", "recycled"]),
  measure(
    "EC of the water",
    "Water_EC_dSm",
    "dS/m",
    [0, 60],
    "Electrical conductivity, measured. Salty from 0.7 (FAO-29, 1985).",
  ),
  pick(
    "Run-off returned",
    "Runoff_Returned",
    ["yes", "no"],
    "Does what drains from the bed go back to storage? If so, Cost counts no lost fertiliser; the water figures stay the same.",
  ),
];

/** What is asked of present practice and of the instruments. */
export const PRACTICE_LINES: readonly (string | Field)[] = [
  "Watering as it is done now",
  measure("Run", "Run_Minutes_Now", "min a run", [0.1, 1440], "Pulses of one watering added up."),
  measure("Runs", "Runs_A_Year_Now", "a year", [1, 5000]),
  measure("Metered", "Metered_kL", "kL a year", [0, 1e6], "In a year, by the meter, for all beds on this valve."),
  "Last check of the instruments",
  day("Pressure gauge", "Gauge_Checked", "Against a second gauge or by a workshop."),
  day("Measuring cylinder", "Cylinder_Checked", "Against a known weight of water: 100 g is 100 mL."),
  day("Water meter", "Meter_Checked", "Against a tank or a second meter."),
];
