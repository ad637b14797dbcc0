import { RUN_TIME } from "../../../core/figures/run-time";
import { number, words } from "../../form/allowed";
import { entryField } from "../../form/entry-field";
import { type Field, formLines } from "../../form/entry-lines";
import { nestedIfs } from "../../form/nested-ifs";
import type { SheetSpec } from "../../form/sheet-spec";
import { aboveZero, outside, wrong } from "../../form/typed-words";

const FIRST = 4;
const cell = (line: number) => `B${FIRST + line}`;
const [MINUTES, BEFORE, AFTER, POURED, TARGET] = [2, 3, 4, 5, 6].map(cell) as [string, string, string, string, string];
const minutes = "Leaching_Run_min";
const before = "Leaching_Before_g";
const after = "Leaching_After_g";
const poured = "Leaching_Poured_g";
const target = "Leaching_Target";
const mass = number(1, 1e6, "g");
const placed = ([when, said]: readonly [string, string], name: string, at: string): [string, string] => [
  when,
  said.replace(`in ${name}`, `in ${at}`),
];
/** The conditions that a mass fails, with what is said then. */
const heavy = (parameter: string, name: string, at: string) => placed(aboveZero(parameter, name, "g"), name, at);

const LINES: readonly (string | Field)[] = [
  "The test",
  { label: "Block and date", unit: "words", name: "Leaching_Block", allowed: words() },
  { label: `${RUN_TIME.TIME.name} of the test`, unit: "min", name: minutes, allowed: number(0.1, 1440, "min") },
  {
    label: "Before the run",
    unit: "g",
    name: before,
    allowed: mass,
    note: "Put a planted pot into a pot without holes and weigh both, at the driest can. Five pots or more: their mean. Watered the day before as usual.",
  },
  {
    label: "After the run",
    unit: "g",
    name: after,
    allowed: mass,
    note: "When the water stops, shake the leaves dry and weigh both again at once: the gain is all that the plant caught.",
  },
  {
    label: "After pouring off",
    unit: "g",
    name: poured,
    allowed: mass,
    note: "Let the pot drip into the outer one for half an hour, pour that away, weigh both again.",
  },
  {
    ...entryField("Leaching_Fraction"),
    name: target,
    note: "Under 0.15 is advised (Florida, UF EP529), but not with recycled or salty water whose EC is not known.",
  },
  "What follows",
  {
    label: "Applied to a pot",
    unit: "mL",
    name: "Leaching_Applied_mL",
    format: "#,##0",
    formula: nestedIfs(
      [
        heavy("before the run", before, BEFORE),
        heavy("after the run", after, AFTER),
        [`COUNT(${before},${after})<2`, '"needs both weights of the run"'],
        [
          `${after}<=${before}`,
          `"after the run in ${AFTER} must be more than the "&${before}&" g before, got "&${after}`,
        ],
      ],
      `${after}-${before}`,
    ),
    note: "After the run - before it: 1 g is 1 mL.",
  },
  {
    label: "Drained from a pot",
    unit: "mL",
    name: "Leaching_Drained_mL",
    format: "#,##0",
    formula: nestedIfs(
      [
        ["NOT(ISNUMBER(Leaching_Applied_mL))", '"needs the water applied"'],
        heavy("after pouring off", poured, POURED),
        [`NOT(ISNUMBER(${poured}))`, '"needs the weight after pouring off"'],
        [
          `OR(${poured}>${after},${poured}<${before})`,
          `"after pouring off in ${POURED} must be from "&${before}&" to "&${after}&" g, got "&${poured}`,
        ],
      ],
      `${after}-${poured}`,
    ),
    note: "After the run - after pouring off.",
  },
  {
    label: "Leaching fraction measured",
    unit: "share",
    name: "Leaching_Measured",
    format: "0.00",
    formula: 'IF(ISNUMBER(Leaching_Drained_mL),Leaching_Drained_mL/Leaching_Applied_mL,"needs applied and drained")',
    note: "Drained / applied (Million and Yeager, UF/IFAS EP529).",
  },
  {
    label: `${RUN_TIME.TIME.name} corrected`,
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
  heights: { 2: 46, ...heights },
  cells: [
    { at: "A1:D1", kind: "title", value: "Leaching test" },
    {
      at: "A2:D2",
      kind: "said",
      value:
        "How much of the water runs through the pots at the driest can, and the run time that would let through what is wanted there. An empty pot beside it does not tell: leaves lead water into a planted pot, or past it. Never test while fertiliser is injected.",
    },
    ...cells,
  ],
  checks,
};
