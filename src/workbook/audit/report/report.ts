import { cellAt } from "../../../cells/places";
import { MOST_ACROSS, MOST_ALONG } from "../../../core/pattern/can-field";
import { RATE_CLASSES } from "../../../core/pattern/rate-classes";
import { areaCell } from "../../form/area-cell";
import { inRow } from "../../form/entry-lines";
import type { CellSpec, ShadeSpec, SheetSpec } from "../../form/sheet-spec";
import { COVERAGE } from "../coverage/coverage";
import { BELOW_0, SOURCE_LEFT, TOP as SOURCE_TOP } from "../coverage/places";
import { VERDICTS_USE } from "../results/words";
import { actionTable, comparisonTable, measureTable, waterTable } from "./blocks";
import { IDLE_CHECKS, WARNING_CHECKS } from "./checks";
import { NO_COPY_CODE } from "./copy-code";
import { factCells, NAME_HEIGHT, NAME_ROWS, nameCells } from "./facts";
import { KEY_ROWS, keyCells, keyShades } from "./picture-key";

const NAMES_TOP = 5;
const TOP = NAMES_TOP + NAME_ROWS + 1;
/** The first row below the names, of what the bed is. */
export const FACTS_TOP = TOP;
const PICTURE_LEFT = 5;
/** About as wide [characters] as its rows are high. */
const PICTURE_CELL = 2.9;
const WHITE = "#ffffff";
const ALL = "A:X";
const LEGEND = TOP + MOST_ALONG;
const METHOD =
  "Method based on catch-can tests of common practice (Merriam and Keller 1978 for the low quarter, Christiansen 1942 for CU): cans alike, rim level, in a grid over the bed, one timed run, read at once. There is no standard for a nursery bed test.";
const ASSUMPTIONS = [
  "The test is for this bed at this pressure and wind; figures follow from the readings in this workbook and can be calculated again from them.",
  "Water needed: area · beds on the valve · net depth · watering days · multiplier of the valve's run, over the share that lands in the bed where that is known; a saving counts only where the pots that set the run time get enough now.",
];

/** A can takes so many cells across and along that the cans fill the picture. */
const SCALE = `$Z$${TOP}`;
const reached = (count: "COLUMN" | "ROW", from: number) =>
  `MAX(1,SUMPRODUCT(MAX((Coverage_Rates<>"")*(${count}(Coverage_Rates)-${from - 1}))))`;
const scale: CellSpec[] = [
  { at: `Z${TOP - 1}`, kind: "note", value: "Cells for a can" },
  {
    at: `Z${TOP}`,
    kind: "working",
    formula: `MAX(1,MIN(INT(${MOST_ACROSS}/${reached("COLUMN", SOURCE_LEFT)}),INT(${MOST_ALONG}/${reached("ROW", SOURCE_TOP)})))`,
  },
];

/** The rate shown in a cell of the picture, found in no larger rectangle than may hold it: the desk's grid is slow. */
function shownRate(i: number, j: number): string {
  const own = areaCell(COVERAGE, "Coverage_Rates", i + 1, j + 1);
  const last = areaCell(COVERAGE, "Coverage_Rates", Math.floor(i / 2) + 1, Math.floor(j / 2) + 1).split("!")[1];
  const first = areaCell(COVERAGE, "Coverage_Rates", 1, 1);
  return `IF(${SCALE}=1,${own},INDEX(${first}:${last},INT(${i}/${SCALE})+1,INT(${j}/${SCALE})+1))`;
}

function picture(): CellSpec[] {
  return Array.from({ length: MOST_ALONG * MOST_ACROSS }, (_, index): CellSpec => {
    const [i, j] = [Math.floor(index / MOST_ACROSS), index % MOST_ACROSS];
    const rate = shownRate(i, j);
    return {
      at: cellAt(TOP + i, PICTURE_LEFT + j),
      kind: "tile",
      formula: `IF(COUNT(Coverage_Limits)>0,IF(ISNUMBER(${rate}),IF(${rate}<0,"${BELOW_0}",MATCH(${rate},Coverage_Limits,1)),${rate}&""),"")`,
    };
  });
}

/** Each class in its colour; its number, or the x of a can that was not read, shows once a can, in the middle. */
function shades(): ShadeSpec[] {
  const first = cellAt(TOP, PICTURE_LEFT);
  const last = cellAt(TOP + MOST_ALONG - 1, PICTURE_LEFT + MOST_ACROSS - 1);
  const inTheMiddle = (count: "COLUMN" | "ROW", from: number) =>
    `MOD(${count}(${first})-${from},${SCALE})=INT(${SCALE}/2)`;
  const numbered = `AND(${inTheMiddle("ROW", TOP)},${inTheMiddle("COLUMN", PICTURE_LEFT)})`;
  const classes = RATE_CLASSES.flatMap(({ number, colour }): ShadeSpec[] => {
    const of = (formula: string, ink: string) => ({ range: `${first}:${last}`, formula, fill: colour, colour: ink });
    return [
      of(`AND(${first}=${number},${numbered})`, number === 1 || number === 7 ? WHITE : "#000000"),
      of(`${first}=${number}`, colour),
    ];
  });
  return [...classes, { range: `${first}:${last}`, formula: `AND(${first}="x",NOT(${numbered}))`, colour: WHITE }];
}

const MEASURES_TOP = LEGEND + KEY_ROWS + 1;
const MEASURES = measureTable(MEASURES_TOP);
const COUNTING = MEASURES_TOP + MEASURES.rows;
const WARNING = COUNTING + 1;
const WATER_TOP = WARNING + 2;
const WATER = waterTable(WATER_TOP);
const ACTIONS_TOP = WATER_TOP + WATER.rows;
const ACTIONS = actionTable(ACTIONS_TOP);
const COMPARISON_TOP = ACTIONS_TOP + ACTIONS.rows;
const COMPARISON = comparisonTable(COMPARISON_TOP);
const METHOD_ROW = COMPARISON_TOP + COMPARISON.rows;
const SIGNATURES = METHOD_ROW + 3 + ASSUMPTIONS.length;

const tall = (first: number, count: number, height: number) =>
  Object.fromEntries(Array.from({ length: count }, (_, index) => [first + index, height]));

/** Two pages for the water authority: what was found, then water, actions and method. */
export const REPORT: SheetSpec = {
  name: "Report",
  roomy: true,
  printed: `A1:X${SIGNATURES + 3}`,
  pageEnds: [COUNTING],
  hidden: ["Y:Z"],
  widths: [28, 18, 26, 6, ...Array.from({ length: MOST_ACROSS }, () => PICTURE_CELL), 3, 40],
  heights: {
    2: 30,
    3: 44,
    4: 50,
    [COUNTING]: 26,
    [METHOD_ROW + 1]: 26,
    [SIGNATURES]: 30,
    [SIGNATURES + 1]: 24,
    [COMPARISON_TOP + 1]: 26,
    ...tall(WARNING, 2, 26),
    ...tall(NAMES_TOP + 1, NAME_ROWS - 1, NAME_HEIGHT),
    ...tall(MEASURES_TOP + 1, MEASURES.rows - 1, 36),
    ...tall(ACTIONS_TOP + 1, ACTIONS.rows - 1, 26),
    ...Object.fromEntries(Array.from({ length: MOST_ALONG }, (_, index) => [TOP + index, 14])),
  },
  cells: [
    { at: inRow(ALL, 1), kind: "title", value: "Report of a block audit" },
    {
      at: inRow(ALL, 2),
      kind: "caution",
      formula: 'IF(Lack_Rate<>"","Not complete: "&Lack_Rate&". ","")&Readings_Problem&Audit_Remark',
    },
    { at: inRow(ALL, 3), kind: "answer", formula: "Answer_Sentence" },
    { at: inRow(ALL, 4), kind: "note", formula: 'Coverage_Sentence&" "&Cause_Sentence' },
    ...nameCells(NAMES_TOP),
    ...factCells(TOP),
    { at: `E${TOP - 1}:X${TOP - 1}`, kind: "heading", value: "Coverage of the bed, from above" },
    ...scale,
    ...picture(),
    ...keyCells(LEGEND),
    ...MEASURES.cells,
    {
      at: inRow(ALL, COUNTING),
      kind: "note",
      formula:
        'IF(By_Area,"Each can is weighted by the area that it is for (half-way lines to its neighbours and the bed\'s edges).","Each can has equal weight: places of the cans are not typed.")&" Each SC is named by its definition, since several are in use. "&Groups_Words',
    },
    { at: inRow(ALL, WARNING), kind: "entry", formula: WARNING_CHECKS },
    { at: inRow(ALL, WARNING + 1), kind: "entry", formula: IDLE_CHECKS },
    ...WATER.cells,
    ...ACTIONS.cells,
    ...COMPARISON.cells,
    { at: inRow(ALL, METHOD_ROW), kind: "heading", value: "Method and assumptions" },
    { at: inRow(ALL, METHOD_ROW + 1), kind: "note", value: METHOD },
    ...ASSUMPTIONS.map((value, index): CellSpec => ({ at: inRow(ALL, METHOD_ROW + 2 + index), kind: "note", value })),
    {
      at: inRow(ALL, METHOD_ROW + 2 + ASSUMPTIONS.length),
      kind: "note",
      formula: `${VERDICTS_USE}&" They are no certificate. Local rules and licensed people come first."`,
    },
    { at: `A${SIGNATURES}:C${SIGNATURES}`, kind: "signature", formula: '"Auditor: "&Auditor' },
    { at: `E${SIGNATURES}:X${SIGNATURES}`, kind: "signature", value: "Signature, date:" },
    { at: `A${SIGNATURES + 1}:C${SIGNATURES + 1}`, kind: "signature", value: "For the licence holder:" },
    { at: `E${SIGNATURES + 1}:X${SIGNATURES + 1}`, kind: "signature", value: "Signature, date:" },
    { at: inRow(ALL, SIGNATURES + 3), kind: "note", name: "Copy_Code", value: NO_COPY_CODE },
    {
      at: inRow(ALL, SIGNATURES + 2),
      kind: "note",
      formula:
        '"Canfall block audit, version "&Workbook_Version&" of the workbook. Photos and the raw readings go with it."',
    },
  ],
  shades: [...shades(), ...keyShades(LEGEND)],
};
