import { CAUTION, TEST_CAUTIONS } from "../../cautions";
import type { CellSpec, SheetSpec } from "../../form/sheet-spec";
import { WORKBOOK_VERSION } from "../../version";

const STEPS = [
  ["Block", "Write down the site, the block, its pots, heads and water."],
  ["Limits", "Choose the limits to compare with, or type your own."],
  [
    "Heads",
    "Walk the block first: blocked, worn, mixed, leaning or leaking heads. Then pressure, buckets, wind and meter.",
  ],
  ["Cans", "Set out 24 cans or more, edges and corners too. Run a timed test, read at once, type the readings."],
  ["Results", "Read the rate and the evenness, and follow what the data checks on Cans say."],
  ["Coverage", "Look where it is dry, find the cause at the heads, and write on Actions what will be done."],
  ["Run time", "Say how much the pots need: this gives the minutes; Water and cost gives kL a year, Cost the money."],
  ["Report", "Print or save the report, and keep this workbook: it holds the raw readings."],
] as const;

const CAUTIONS = [...TEST_CAUTIONS, CAUTION.DECISION];

const USES = [
  "Any spreadsheet program: every figure is an ordinary formula, so Excel from 2010 on and LibreOffice calculate all of it. Only the cream cells can be typed in; the sheets are protected without a password.",
  "With the Canfall add-in: the pane beside the sheet adds the picture between cans, intervals, layouts, and the copy for the water authority.",
] as const;

const STEPS_FROM = 6;
const CAUTIONS_FROM = STEPS_FROM + STEPS.length + 2;
const USES_FROM = CAUTIONS_FROM + CAUTIONS.length + 2;
const MADE = USES_FROM + USES.length + 1;

const heights = (from: number, texts: readonly string[], line: number) =>
  Object.fromEntries(texts.map((text, index) => [from + index, 18 + 15 * Math.floor(text.length / line)]));

/** What to do, what to beware of, and what this file is. */
export const START: SheetSpec = {
  name: "Start",
  roomy: true,
  widths: [5, 16, 78],
  heights: {
    2: 33,
    3: 34,
    4: 50,
    ...heights(
      STEPS_FROM,
      STEPS.map(([, what]) => what),
      84,
    ),
    ...heights(CAUTIONS_FROM, CAUTIONS, 70),
    ...heights(USES_FROM, USES, 104),
  },
  shades: [{ range: "A3:C3", formula: '$A$3<>""', fill: "#f6e8c3", colour: "#543005", bold: true }],
  cells: [
    { at: "A1:C1", kind: "title", value: "Block audit: overhead sprinklers over potted plants" },
    {
      at: "A2:C2",
      kind: "label",
      formula:
        'IF(Site_Name&Block_Name="","A new audit: nothing is filled in yet.",Site_Name&IF(OR(Site_Name="",Block_Name=""),"",", ")&Block_Name)',
    },
    { at: "A3:C3", kind: "label", formula: 'Audit_Remark&""' },
    { at: "A4:C4", kind: "answer", formula: "Answer_Sentence" },
    { at: `A${STEPS_FROM - 1}:C${STEPS_FROM - 1}`, kind: "heading", value: "Eight steps" },
    ...STEPS.flatMap(([sheet, what], index): CellSpec[] => [
      { at: `A${STEPS_FROM + index}`, kind: "label", value: index + 1, align: "center" },
      { at: `B${STEPS_FROM + index}`, kind: "label", value: sheet },
      { at: `C${STEPS_FROM + index}`, kind: "label", value: what },
    ]),
    { at: `A${CAUTIONS_FROM - 1}:C${CAUTIONS_FROM - 1}`, kind: "heading", value: "Before you test" },
    ...CAUTIONS.map(
      (text, index): CellSpec => ({
        at: `A${CAUTIONS_FROM + index}:C${CAUTIONS_FROM + index}`,
        kind: "caution",
        value: text,
      }),
    ),
    { at: `A${USES_FROM - 1}:C${USES_FROM - 1}`, kind: "heading", value: "How to use this file" },
    ...USES.map(
      (text, index): CellSpec => ({ at: `A${USES_FROM + index}:C${USES_FROM + index}`, kind: "label", value: text }),
    ),
    { at: `A${MADE}:B${MADE}`, kind: "label", value: "Version" },
    { at: `C${MADE}`, kind: "label", value: WORKBOOK_VERSION, name: "Workbook_Version" },
    { at: `A${MADE + 1}:B${MADE + 1}`, kind: "label", value: "Made by" },
    { at: `C${MADE + 1}`, kind: "label", value: "Canfall, open source under the MIT licence" },
  ],
};
