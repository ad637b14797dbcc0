import type { CellSpec } from "../../form/sheet-spec";

/** What was typed, or words that it was not. */
export const given = (name: string) => `IF(${name}="","not given",${name})`;

const DAY = "yyyy-mm-dd";
const CLOCK = "h:mm";

/** Names and words, as long as they may be, side by side. */
const NAMED = [
  [
    ["Site", "Site_Name"],
    ["Licence", "Licence"],
  ],
  [
    ["Block", "Block_Name"],
    ["Meter", "Meter"],
  ],
  [
    ["Crop", "Crop"],
    ["Auditor", "Auditor"],
  ],
  [
    ["Head", "Head_Model"],
    ["Nozzle", "Nozzle"],
  ],
  [
    ["Walk-through found", "Walk_Found"],
    ["Other beds, not tested", "Beds_Not_Tested"],
  ],
] as const;

/** Rows that the names take, with their heading. */
export const NAME_ROWS = NAMED.length + 1;
/** A name of 60 characters takes two lines. */
export const NAME_HEIGHT = 27;

/** Who and where, in words. */
export const nameCells = (top: number): CellSpec[] => [
  { at: `A${top}:X${top}`, kind: "heading", value: "Who and where" },
  ...NAMED.flatMap(([[left, leftName], [right, rightName]], index): CellSpec[] => {
    const row = top + 1 + index;
    return [
      { at: `A${row}`, kind: "label", value: left },
      { at: `B${row}:C${row}`, kind: "entry", formula: given(leftName) },
      { at: `D${row}:I${row}`, kind: "label", value: right },
      { at: `J${row}:X${row}`, kind: "entry", formula: given(rightName) },
    ];
  }),
];

type Shown = readonly [formula: string, format?: string];

/** The bed and its test: label, value, second value, each with its own format. */
const FACTS: readonly (string | readonly [label: string, value: Shown, second?: Shown])[] = [
  "The bed",
  ["Cover; pot shape", [given("Cover")], [given("Pot_Shape")]],
  [
    "Pot top; spacing [mm]",
    [`IF(Groups_In_Use>0,Groups_In_Use&" sizes: see Pots",${given("Pot_Top_mm")})`],
    [given("Pot_Spacing_mm")],
  ],
  ["Bed [m]", ['IF(ISNUMBER(Block_Area_m2),Bed_Width_m&" × "&Bed_Length_m,"not given")']],
  ["Bed [m²]; bearing [deg]", [given("Block_Area_m2")], [given("Bed_Bearing_deg")]],
  ["Heads; their layout", [given("Head_Count")], [given("Head_Layout")]],
  ["Spacing [m] across; along", [given("Head_Spacing_m")], [given("Row_Spacing_m")]],
  ["Throw; riser [m]", [given("Head_Throw_m")], [given("Riser_m")]],
  ["Arc", [given("Head_Arc")]],
  ["Water; run-off returned", [given("Water_Source")], [given("Runoff_Returned")]],
  ["Metered [kL a year]", [given("Metered_kL"), "#,##0"]],
  ["Runs now: minutes; a year", [given("Run_Minutes_Now")], [given("Runs_A_Year_Now")]],
  "The test",
  ["Date; state", [given("Test_Date"), DAY], [given("Test_State")]],
  ["Walk-through before", ['IF(Walk_Through="","not done",Walk_Through)']],
  ["Leaves over the cans", [`IF(Canopy_Over="yes","yes: of the cans only",${given("Canopy_Over")})`]],
  ["Beds on the valve; tested", [given("Beds_On_Valve")], [given("Beds_Tested")]],
  ["Start; stop", [given("Test_Start"), CLOCK], [given("Test_Stop"), CLOCK]],
  ["Minutes; can mouth [mm]", [given("Test_Minutes")], [given("Can_Mouth_mm")]],
  ["Cans read; dry", ["Cans_Counted", "0"], ["Cans_Dry", "0"]],
  ["Grid: columns; rows", ["Grid_Columns", "0"], ["Grid_Rows", "0"]],
  ["Wind [m/s] mean; most", ["Wind_Mean_ms", "0.0"], ["Wind_Max_ms", "0.0"]],
  ["Pressure range [%]", ["Pressure_Range_Percent", "0"]],
  ["Flow range [%]", ["Flow_Range_Percent", "0"]],
  ["Gauge; cylinder checked", [given("Gauge_Checked"), DAY], [given("Cylinder_Checked"), DAY]],
  ["Meter checked", [given("Meter_Checked"), DAY]],
];

/** What the bed is and how it was tested, left of the picture. */
export const factCells = (top: number): CellSpec[] =>
  FACTS.flatMap((fact, index): CellSpec[] => {
    const row = top + index;
    if (typeof fact === "string") return [{ at: `A${row}:C${row}`, kind: "heading", value: fact }];
    const [label, value, second] = fact;
    const shown = ([formula, format]: Shown) => ({ kind: "entry" as const, formula, ...(format && { format }) });
    return [
      { at: `A${row}`, kind: "label", value: label },
      ...(second
        ? [
            { at: `B${row}`, ...shown(value) },
            { at: `C${row}`, ...shown(second) },
          ]
        : [{ at: `B${row}:C${row}`, ...shown(value) }]),
    ];
  });
