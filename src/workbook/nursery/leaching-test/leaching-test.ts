import { number, words } from "../../form/allowed";
import { type Field, formLines } from "../../form/entry-lines";
import { nestedIfs } from "../../form/nested-ifs";
import type { SheetSpec } from "../../form/sheet-spec";
import { aboveZero, outside, wrong } from "../../form/typed-words";

const FIRST = 4;
const cell = (line: number) => `B${FIRST + line}`;
const [MINUTES, APPLIED, DRAINED, TARGET] = [cell(2), cell(3), cell(4), cell(5)];
const NAMES = ["Leaching_Run_min", "Leaching_Applied_mL", "Leaching_Drained_mL", "Leaching_Target"] as const;
const [minutes, applied, drained, target] = NAMES;
const placed = ([when, said]: readonly [string, string], name: string, at: string): [string, string] => [
  when,
  said.replace(`in ${name}`, `in ${at}`),
];

const LINES: readonly (string | Field)[] = [
  "The test",
  { label: "Block and date", unit: "words", name: "Leaching_Block", allowed: words() },
  { label: "Run time of the test", unit: "min", name: minutes, allowed: number(0.1, 1440, "min") },
  {
    label: "Applied to a pot",
    unit: "mL",
    name: applied,
    allowed: number(0.1, 1e6, "mL"),
    note: "Empty pots of the same size, closed below, beside the driest can: their mean catch.",
  },
  {
    label: "Drained from a pot",
    unit: "mL",
    name: drained,
    allowed: number(0, 1e6, "mL"),
    note: "Caught below planted pots at the same place, until the dripping ends: their mean. Watered the day before as usual.",
  },
  {
    label: "Leaching fraction wanted",
    unit: "0 to 0.9",
    name: target,
    allowed: number(0, 0.9, ""),
    note: "Under 0.15 is advised (Florida, UF EP529).",
  },
  "What follows",
  {
    label: "Leaching fraction measured",
    unit: "share",
    name: "Leaching_Measured",
    format: "0.00",
    formula: nestedIfs(
      [
        placed(aboveZero("applied", applied, "mL"), applied, APPLIED),
        [
          outside(drained, 0, 1e9),
          wrong("drained", drained, "be 0 mL or more").replace(`in ${drained}`, `in ${DRAINED}`),
        ],
        [`COUNT(${applied},${drained})<2`, '"needs applied and drained"'],
        [
          `${drained}>${applied}`,
          `"drained in ${DRAINED} must be at most the "&${applied}&" mL applied, got "&${drained}`,
        ],
      ],
      `${drained}/${applied}`,
    ),
    note: "Drained / applied.",
  },
  {
    label: "Run time corrected",
    unit: "min",
    name: "Leaching_Run_Time_min",
    format: "0.0",
    formula: nestedIfs(
      [
        ["NOT(ISNUMBER(Leaching_Measured))", '"needs the fraction measured"'],
        ["Leaching_Measured=1", '"everything drained: look at the pots first"'],
        placed(aboveZero("run time", minutes, "min"), minutes, MINUTES),
        [
          outside(target, 0, 0.9),
          wrong("fraction wanted", target, "be from 0 to 0.9").replace(`in ${target}`, `in ${TARGET}`),
        ],
        [`COUNT(${minutes},${target})<2`, '"needs run time and fraction wanted"'],
      ],
      `${minutes}*(1-Leaching_Measured)/(1-${target})`,
    ),
    note: "Run time of the test · (1 - measured) / (1 - wanted): what stays in the pot is what it needs.",
  },
  {
    label: "What that means",
    unit: "words",
    name: "Leaching_Said",
    wide: true,
    formula: nestedIfs(
      [
        ["NOT(ISNUMBER(Leaching_Run_Time_min))", '""'],
        [
          "Leaching_Measured=0",
          '"Nothing drained: this run time is only a floor. The pots may need much more; run longer and test again."',
        ],
        [
          `Leaching_Measured>${target}`,
          '"More drained than wanted: run shorter, and test again at the corrected time."',
        ],
        [
          `Leaching_Measured<${target}`,
          '"Less drained than wanted: run longer, and test again at the corrected time."',
        ],
      ],
      '"As wanted: leave the run time."',
    ),
  },
];

const { cells, checks, heights } = formLines(
  FIRST,
  { label: "A", entry: "B", unit: "C", note: "D", noteLine: 60 },
  LINES,
);

/** From what drains out of pots at the driest can to a better run time. */
export const LEACHING_TEST: SheetSpec = {
  name: "Leaching test",
  widths: [30, 36, 11, 52],
  heights: { 2: 32, ...heights },
  cells: [
    { at: "A1:D1", kind: "title", value: "Leaching test" },
    {
      at: "A2:D2",
      kind: "said",
      value:
        "How much of the water runs through the pots at the driest can, and the run time that would let through what is wanted there. Never test while fertiliser is injected.",
    },
    ...cells,
  ],
  checks,
};
