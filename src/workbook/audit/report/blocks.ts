import { numberFormat } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import { WATER as WATER_FIGURES } from "../../../core/figures/water";
import { isWarning } from "../../form/check-lines";
import { inRow } from "../../form/entry-lines";
import { nestedIfs } from "../../form/nested-ifs";
import type { CellSpec } from "../../form/sheet-spec";

/** One line of a table of the report, by its cells. */
type Line = readonly (readonly [columns: string, formula: string, format?: string])[];

function table(top: number, head: readonly (readonly [columns: string, words: string])[], lines: readonly Line[]) {
  return [
    ...head.map(([columns, value]): CellSpec => ({ at: inRow(columns, top), kind: "heading", value })),
    ...lines.flatMap((line, index) =>
      line.map(
        ([columns, formula, format]): CellSpec => ({
          at: inRow(columns, top + 1 + index),
          kind: columns === "A" ? "label" : "entry",
          formula,
          ...(format && { format }),
        }),
      ),
    ),
  ];
}

const given = (name: string) => `IF(${name}="","not given",${name})`;
const percent = (name: string) => `IF(ISNUMBER(${name}),${name},"not known")`;

/** The figures of the report, each with the ending of its names and its definition in the room that there is. */
const REPORTED = [
  [MEASURES.MAR, "MAR", "MAR", "mean depth in an hour"],
  [MEASURES.CU, "CU", "CU", "100 (1 - mean distance / mean)"],
  [MEASURES.DU, "DU", "DU", "100 · driest quarter / mean"],
  [MEASURES.SC_CAN, "SC_Can", "SC", "mean / driest can"],
  [MEASURES.SC_QUARTER, "SC_Quarter", "SCQ", "mean / mean of driest quarter"],
] as const;

/** The figures with definition, limit, its source, and verdict. */
export const measureTable = (top: number) => ({
  rows: REPORTED.length + 1,
  cells: table(
    top,
    [
      ["A", "Result"],
      ["B", "Value"],
      ["C", "What it is"],
      ["D", "Unit"],
      ["E:H", "Limit"],
      ["I:N", "Verdict"],
      ["O:X", "Limit from"],
    ],
    REPORTED.map(([figure, used, limit, means]) => [
      ["A", `"${figure === MEASURES.MAR ? figure.short : figure.name}"`],
      ["B", `Used_${used}`, numberFormat(figure)],
      ["C", `"${means}"`],
      ["D", `"${figure.unit}"`],
      ["E:H", `Limit_${limit}_Text`],
      ["I:N", `Verdict_${limit}`],
      ["O:X", `Limit_${limit}_Source`],
    ]),
  ),
});

const WATER = [
  ["Used now", "Used_Now_kL", "#,##0"],
  [WATER_FIGURES.NOW.name, "Result_Water_kL", "#,##0"],
  ["Needed after", "Needed_After_kL", "#,##0"],
  [WATER_FIGURES.SAVED.short, "Saved_kL", "#,##0"],
  ["Water bill for it", "Result_Cost", "#,##0.00"],
] as const;
const LOSSES = [
  ["Caught on the bed / metered", percent("Caught_Metered_Share"), "0 %"],
  ["Lands in the bed", percent("In_Bed_Share"), "0 %"],
  ["Of that: falls between the pots", percent("Between_Pots_Share"), "0 %"],
  [
    "Of that: drains from the pots",
    'IF(ISNUMBER(Pots_Drained_Share),Pots_Drained_Share,IF(ISNUMBER(Mean_Drained_Share),Mean_Drained_Share,"not known"))',
    "0 %",
  ],
  ["Run time wanted [min a day]", "Valve_Run_min", "0"],
] as const;

/** Water a year beside losses, and whether what is used now is what the saving is against. */
export const waterTable = (top: number) => ({
  rows: WATER.length + 1,
  cells: [
    ...table(
      top,
      [
        ["A", "Water a year"],
        ["B", "kL a year"],
        ["C", "Losses and run time"],
        ["D:X", ""],
      ],
      WATER.map(([label, value, format], index) => {
        const [loss, share, shown] = LOSSES[index] ?? ["", '""', ""];
        return [
          ["A", `"${label}"`],
          ["B", value, format],
          ["C", `"${loss}"`],
          ["D:H", share, shown],
          ...(index === 0 ? ([["I:X", "Water_Label"]] as const) : []),
        ];
      }),
    ),
    {
      at: `I${top + 2}:X${top + WATER.length}`,
      kind: "entry",
      formula: `IF(${isWarning("Used_Against_Needed")},Used_Against_Needed,"")`,
    } satisfies CellSpec,
  ],
});

const ACTION_LINES = 5;
const action = (row: number, column: number) => `INDEX(Actions_Table,${row},${column})`;
const shownAction = (row: number, column: number) => `IF(${action(row, column)}="","",${action(row, column)})`;

/** The first actions. */
export const actionTable = (top: number) => ({
  rows: ACTION_LINES + 1,
  cells: table(
    top,
    [
      ["A:B", "Cause"],
      ["C:D", "Action (all of them: sheet Actions)"],
      ["E:K", "Owner"],
      ["L:Q", "Due"],
      ["R:U", "Cost"],
      ["V:X", "Done"],
    ],
    Array.from({ length: ACTION_LINES }, (_, index) => [
      ["A:B", shownAction(index + 1, 1)],
      ["C:D", shownAction(index + 1, 2)],
      ["E:K", shownAction(index + 1, 3)],
      ["L:Q", shownAction(index + 1, 4), "yyyy-mm-dd"],
      ["R:U", shownAction(index + 1, 5), "#,##0"],
      ["V:X", shownAction(index + 1, 6)],
    ]),
  ),
});

const whereComparable = (formula: string) => `IF(Earlier_Comparable="yes",${formula},"")`;
/** A figure of this audit in the weighting of the earlier one. */
const now = (name: string) => `IF(Earlier_Weighting="by area",Weighted_${name},Result_${name})`;
const SC_NOW = `IF(Earlier_SC_Kind="low quarter",${now("SC_Quarter")},${now("SC_Can")})`;

/** Before and after, where both tests can be compared. */
export const comparisonTable = (top: number) => ({
  rows: 3,
  cells: table(
    top,
    [
      ["A", "Before and after"],
      ["B", `${MEASURES.MAR.short} ${MEASURES.MAR.unit}`],
      ["C", `${MEASURES.CU.short} ${MEASURES.CU.unit}`],
      ["D:H", `${MEASURES.DU.short} ${MEASURES.DU.unit}`],
      ["I:N", "SC"],
      ["O:X", "SC definition, or why no comparison"],
    ],
    [
      [
        [
          "A",
          nestedIfs(
            [
              ['Earlier_Comparable<>"yes"', '"Before: not shown"'],
              ["ISNUMBER(Earlier_Date)", '"Before"'],
            ],
            '"Before, no date"',
          ),
        ],
        ["B", whereComparable("Earlier_MAR"), numberFormat(MEASURES.MAR)],
        ["C", whereComparable("Earlier_CU"), numberFormat(MEASURES.CU)],
        ["D:H", whereComparable("Earlier_DU"), numberFormat(MEASURES.DU)],
        ["I:N", whereComparable("Earlier_SC"), numberFormat(MEASURES.SC_QUARTER)],
        ["O:X", 'IF(Earlier_Comparable="yes",Earlier_SC_Kind,Earlier_Comparable)'],
      ],
      [
        ["A", whereComparable('"This audit"')],
        ["B", whereComparable(now("MAR")), numberFormat(MEASURES.MAR)],
        ["C", whereComparable(now("CU")), numberFormat(MEASURES.CU)],
        ["D:H", whereComparable(now("DU_Quarter")), numberFormat(MEASURES.DU)],
        ["I:N", whereComparable(SC_NOW), numberFormat(MEASURES.SC_QUARTER)],
        ["O:X", whereComparable("Earlier_Weighting")],
      ],
    ],
  ),
});

/** Who and where, how and when: label, value, second value. */
export const FACTS: readonly (
  | string
  | readonly [label: string, value: string, second?: string | undefined, format?: string]
)[] = [
  "Who and where",
  ["Site", given("Site_Name")],
  ["Licence", given("Licence")],
  ["Meter; last check", given("Meter"), given("Meter_Checked"), "yyyy-mm-dd"],
  ["Block", given("Block_Name")],
  ["Crop; cover", given("Crop"), given("Cover")],
  [
    "Pot top [mm]; shape",
    `IF(Groups_In_Use>0,Groups_In_Use&" sizes: see Pots",${given("Pot_Top_mm")})`,
    given("Pot_Shape"),
  ],
  ["Bed [m]", 'IF(ISNUMBER(Block_Area_m2),Bed_Width_m&" × "&Bed_Length_m,"not given")'],
  ["Bed [m²]; bearing [deg]", given("Block_Area_m2"), given("Bed_Bearing_deg")],
  ["Heads; their layout", given("Head_Count"), given("Head_Layout")],
  ["Head; nozzle", given("Head_Model"), given("Nozzle")],
  ["Spacing [m] across; along", given("Head_Spacing_m"), given("Row_Spacing_m")],
  ["Arc; riser [m]", given("Head_Arc"), given("Riser_m")],
  ["Water source", given("Water_Source")],
  ["Run-off returned", given("Runoff_Returned")],
  "How and when",
  ["Date; state", given("Test_Date"), given("Test_State"), "yyyy-mm-dd"],
  ["Walk-through before; found", 'IF(Walk_Through="","not done",Walk_Through)', given("Walk_Found")],
  ["Leaves over the cans", `IF(Canopy_Over="yes","yes: of the cans only",${given("Canopy_Over")})`],
  ["Beds on the valve; tested", given("Beds_On_Valve"), given("Beds_Tested")],
  ["Start; stop", given("Test_Start"), given("Test_Stop"), "h:mm"],
  ["Minutes; can mouth [mm]", given("Test_Minutes"), given("Can_Mouth_mm")],
  ["Cans read; dry", "Cans_Counted", "Cans_Dry", "0"],
  ["Grid: columns; rows", "Grid_Columns", "Grid_Rows", "0"],
  ["Wind [m/s] mean; most", "Wind_Mean_ms", "Wind_Max_ms", "0.0"],
  ["Pressure range [%]", "Pressure_Range_Percent", undefined, "0"],
  ["Flow range [%]", "Flow_Range_Percent", undefined, "0"],
  ["Gauge; cylinder checked", given("Gauge_Checked"), given("Cylinder_Checked"), "yyyy-mm-dd"],
  ["Metered [kL a year]", given("Metered_kL"), undefined, "#,##0"],
  ["Runs now: minutes; a year", given("Run_Minutes_Now"), given("Runs_A_Year_Now")],
];
