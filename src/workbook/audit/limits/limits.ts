import { choiceFrom, words } from "../../form/allowed";
import { noteHeight } from "../../form/entry-lines";
import { nestedIfs } from "../../form/nested-ifs";
import type { CellSpec, CheckSpec, SheetSpec } from "../../form/sheet-spec";
import { readLine } from "./in-force";
import { LIMIT_SETS, LIMITED_MEASURES, type LimitedMeasure, SET_LINES } from "./limit-sets";
import { LINES, OWN, QUOTED, READ, SETS, setColumn, TABLE } from "./places";

const SOURCE_LINE = 36;
const MEASURES = LIMITED_MEASURES.length;

function inUse({ measure, short, low, high, like }: LimitedMeasure, index: number): CellSpec[] {
  const [row, own, read] = [TABLE + index, OWN + index, READ + index];
  const typed = `TRIM(B${own})<>""`;
  const fromSet = (letter: string) => `IF($G${read}=0,"",INDEX(${setColumn(letter)},$G${read})&"")`;
  const either = (letter: string) => `IF(${typed},${letter}${own}&"",${fromSet(letter)})`;
  const [first, second] = [`$E${read}`, `$F${read}`];
  const between = low && high ? `AND($B${read}="to",COUNT(${first},${second})=2,${first}<=${second})` : "FALSE";
  return [
    { at: `A${row}`, kind: "label", value: measure },
    {
      at: `B${row}`,
      kind: "answer",
      name: `Limit_${short}_Text`,
      formula: `IF(${typed},SUBSTITUTE(SUBSTITUTE(TRIM(B${own}),"≤","<="),"≥",">="),${fromSet("B")})`,
    },
    {
      at: `C${row}`,
      kind: "answer",
      ...(low && { name: `Limit_${short}_Low`, formula: `IF($B${read}=">=",${first},IF(${between},${first},""))` }),
    },
    {
      at: `D${row}`,
      kind: "answer",
      ...(high && { name: `Limit_${short}_High`, formula: `IF($B${read}="<=",${first},IF(${between},${second},""))` }),
    },
    { at: `E${row}`, kind: "note", formula: either("E") },
    { at: `F${row}`, kind: "note", formula: either("F") },
    {
      at: `G${row}`,
      kind: "note",
      formula: nestedIfs(
        [
          [`B${row}=""`, '"no limit"'],
          [`COUNT(C${row}:D${row})=0`, `"cannot be read: write it like ${like}"`],
        ],
        either("G"),
      ),
    },
  ];
}

function ownLine({ measure, like }: LimitedMeasure, index: number): CellSpec[] {
  const row = OWN + index;
  return [
    { at: `A${row}`, kind: "label", value: measure },
    { at: `B${row}`, kind: "input" },
    { at: `C${row}:D${row}`, kind: "note", value: `like ${like}` },
    { at: `E${row}`, kind: "input" },
    { at: `F${row}`, kind: "input" },
    { at: `G${row}`, kind: "input" },
  ];
}

function quotedLine({ measure, short }: LimitedMeasure, index: number): CellSpec[] {
  const [row, table] = [QUOTED + index, TABLE + index];
  return [
    { at: `A${row}`, kind: "label", value: measure },
    {
      at: `B${row}:G${row}`,
      kind: "note",
      name: `Limit_${short}_Source`,
      formula: `IF(B${table}="","",E${table}&IF(F${table}="","",", "&F${table}))`,
    },
  ];
}

const headings = (row: number, texts: readonly (readonly [string, string])[]): CellSpec[] =>
  texts.map(([columns, value]) => {
    const [from, to] = columns.split(":");
    return { at: to ? `${from}${row}:${to}${row}` : `${from}${row}`, kind: "heading", value };
  });

const inputs = (range: string, most: number): CheckSpec => ({ range, ...words(most)(range.split(":")[0]!) });
const ownRange = (from: string, to = from) => `${from}${OWN}:${to}${OWN + MEASURES - 1}`;
const SET_NAMES = `$A$${SETS}:$A$${SETS + LIMIT_SETS.length - 1}`;

/** The limits that verdicts use, and where they come from. */
export const LIMITS: SheetSpec = {
  name: "Limits",
  roomy: true,
  widths: [26, 11, 9, 9, 34, 8, 27],
  heights: {
    2: 28,
    ...Object.fromEntries(
      LIMITED_MEASURES.map((_, index) => [TABLE + index, noteHeight(3 * SOURCE_LINE, SOURCE_LINE)]),
    ),
    ...Object.fromEntries(
      SET_LINES.map(({ source }, index) => [LINES + index, noteHeight(source.length, SOURCE_LINE)]),
    ),
  },
  cells: [
    { at: "A1:G1", kind: "title", value: "Limits" },
    {
      at: "A2:G2",
      kind: "said",
      value:
        "What each measure is compared with. Choose a set, or type limits of your own: they go before the set. Sources differ, so say which one was used.",
    },
    { at: "A3", kind: "label", value: "Set in use" },
    { at: "B3:D3", kind: "input", name: "Limit_Set", value: LIMIT_SETS[0][0] },
    { at: "E3", kind: "unit", value: "choose" },
    ...headings(TABLE - 1, [
      ["A", "Measure"],
      ["B", "Limit"],
      ["C", "Low"],
      ["D", "High"],
      ["E", "Source"],
      ["F", "Year"],
      ["G", "Note"],
    ]),
    ...LIMITED_MEASURES.flatMap(inUse),
    ...headings(OWN - 1, [
      ["A", "Limits of your own"],
      ["B", "[as said]"],
      ["C:D", "Written"],
      ["E", "Source [words]"],
      ["F", "[year]"],
      ["G", "Note [words]"],
    ]),
    ...LIMITED_MEASURES.flatMap(ownLine),
    ...headings(QUOTED - 1, [["A:G", "As quoted with the results"]]),
    ...LIMITED_MEASURES.flatMap(quotedLine),
    ...headings(SETS - 1, [["A:G", "Sets to choose from"]]),
    ...LIMIT_SETS.flatMap(([name, what], index): CellSpec[] => [
      { at: `A${SETS + index}`, kind: "label", value: name },
      { at: `B${SETS + index}:G${SETS + index}`, kind: "note", value: what },
    ]),
    ...headings(LINES - 1, [
      ["A", "Measure"],
      ["B", "Limit"],
      ["C:D", "Set"],
      ["E", "Source"],
      ["F", "Year"],
      ["G", "Note"],
    ]),
    ...SET_LINES.flatMap(({ set, measure, text, source, year, note }, index): CellSpec[] => {
      const row = LINES + index;
      return [
        { at: `A${row}`, kind: "label", value: measure },
        { at: `B${row}`, kind: "label", value: text },
        { at: `C${row}:D${row}`, kind: "note", value: set },
        { at: `E${row}`, kind: "note", value: source },
        { at: `F${row}`, kind: "note", value: year },
        { at: `G${row}`, kind: "note", value: note },
      ];
    }),
    ...headings(READ - 1, [
      ["A", "How limits are read"],
      ["B", "Sign"],
      ["C", "First"],
      ["D", "Second"],
      ["E", "First as a number"],
      ["F", "Second"],
      ["G", "Line of the set in use"],
    ]),
    ...LIMITED_MEASURES.flatMap(readLine),
  ],
  areas: {
    Limits_Table: `A${TABLE}:B${TABLE + MEASURES - 1}`,
    Limits_Own: ownRange("B"),
    Limits_Own_Source: ownRange("E", "G"),
  },
  checks: [
    { range: "B3", ...choiceFrom(SET_NAMES)("B3") },
    {
      range: ownRange("B"),
      message: "Write a limit as <= 1.5, as >= 85 or as 5 to 12.",
      rule: {
        kind: "formula",
        formula: `OR(LEFT(TRIM(B${OWN}),2)="<=",LEFT(TRIM(B${OWN}),2)=">=",ISNUMBER(SEARCH("? to ?",B${OWN})))`,
      },
    },
    inputs(ownRange("E"), 120),
    inputs(ownRange("F"), 20),
    inputs(ownRange("G"), 120),
  ],
  shades: [
    {
      range: `G${TABLE}:G${TABLE + MEASURES - 1}`,
      formula: `LEFT($G${TABLE},6)="cannot"`,
      fill: "#f6e8c3",
      bold: true,
    },
  ],
};
