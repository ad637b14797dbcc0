import { ENTRIES } from "../../../core/figures/entries";
import { numberFormat, shortWithUnit } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import { RUN_TIME } from "../../../core/figures/run-time";
import { WATER as WATER_FIGURES } from "../../../core/figures/water";
import { isWarning } from "../../form/check-lines";
import { inRow } from "../../form/entry-lines";
import { nestedIfs } from "../../form/nested-ifs";
import type { CellSpec } from "../../form/sheet-spec";
import { given } from "./facts";

/** One line of a table of the report, by its cells. */
type Line = readonly (readonly [columns: string, formula: string, format?: string | undefined])[];

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

const ifKnown = (name: string) => `IF(ISNUMBER(${name}),${name},"not known")`;

/** The figures of the report, each with the endings of its names. */
const REPORTED = [
  [MEASURES.MAR, "MAR", "MAR"],
  [MEASURES.CU, "CU", "CU"],
  [MEASURES.DU, "DU", "DU"],
  [MEASURES.SC_CAN, "SC_Can", "SC"],
  [MEASURES.SC_QUARTER, "SC_Quarter", "SCQ"],
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
      ["E:G", "Limit"],
      ["H:L", "Verdict"],
      ["M:X", "Limit from"],
    ],
    REPORTED.map(([figure, used, limit]) => [
      ["A", `"${figure === MEASURES.MAR ? figure.short : figure.name}"`],
      ["B", `Used_${used}`, numberFormat(figure)],
      ["C", `"${figure.brief}"`],
      ["D", `"${figure.unit}"`],
      ["E:G", `Limit_${limit}_Text`],
      ["H:L", `Verdict_${limit}`],
      ["M:X", `Limit_${limit}_Source`],
    ]),
  ),
});

const WATER = [
  ['"Used now [kL]"', "Used_Now_kL", "#,##0"],
  [`"${WATER_FIGURES.NOW.name} [kL]"`, "Result_Water_kL", "#,##0"],
  ['"Needed after [kL]"', "Needed_After_kL", "#,##0"],
  [`"${WATER_FIGURES.SAVED.short} [kL]"`, "Saved_kL", "#,##0"],
  ['"Cost of the water needed now"&IF(Currency="",""," ["&Currency&"]")', "Result_Cost", "#,##0.00"],
  [`"${ENTRIES.Water_Days.label} a year"`, given("Water_Days"), "0"],
  ['"Beds on the valve"', given("Beds_On_Valve"), "0"],
  ['"Currency"', given("Currency")],
] as const;

const { TIME } = RUN_TIME;
const LEACHED = "IF(ISNUMBER(Gross_Multiplier),Gross_Multiplier,0)";
const BASIS = `IF(ISNUMBER(Run_Multiplier),"based on: "&Multiplier_Basis&IF(${LEACHED}>Run_Multiplier,"; with leaching "&TEXT(${LEACHED},"0.00"),""),"")`;
/** What goes beside the bed and through the pots, and what the run time comes from. */
const LOSSES: readonly (readonly [label: string, value: string, format: string, words?: string])[] = [
  ["Caught on the bed / metered", ifKnown("Caught_Metered_Share"), "0 %", "Water_Label"],
  ["Lands in the bed", ifKnown("In_Bed_Share"), "0 %"],
  ["Of that: falls between the pots", ifKnown("Between_Pots_Share"), "0 %"],
  [
    "Of that: drains from the pots",
    'IF(ISNUMBER(Pots_Drained_Share),Pots_Drained_Share,IF(ISNUMBER(Mean_Drained_Share),Mean_Drained_Share,"not known"))',
    "0 %",
  ],
  [
    shortWithUnit(RUN_TIME.NET_DEPTH),
    ifKnown("Net_Depth_mm"),
    numberFormat(RUN_TIME.NET_DEPTH),
    '"what each pot should get on a watering day"',
  ],
  ["Run-time multiplier", ifKnown("Run_Multiplier"), numberFormat(RUN_TIME.MULTIPLIER), BASIS],
  [`${TIME.name} of this bed [${TIME.unit}]`, ifKnown("Result_Run_Time_min"), numberFormat(TIME)],
  [`${TIME.name} of the valve [${TIME.unit}]`, ifKnown("Valve_Run_min"), numberFormat(TIME), "Valve_Words"],
];

/** Water a year beside losses and run time, and whether what is used now is what the saving is against. */
export const waterTable = (top: number) => ({
  rows: WATER.length + 1,
  cells: [
    ...table(
      top,
      [
        ["A", "Water a year"],
        ["B", "Value"],
        ["C", "Losses and run time"],
        ["D:X", ""],
      ],
      WATER.map(([label, value, format], index) => {
        const [loss, share, shown, words] = LOSSES[index]!;
        return [
          ["A", label],
          ["B", value, format],
          ["C", `"${loss}"`],
          ["D:H", share, shown],
          ...(words ? ([["I:X", words]] as const) : []),
        ];
      }),
    ),
    {
      at: `I${top + 2}:X${top + 4}`,
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
      ["C:D", "Action (all: sheet Actions)"],
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
