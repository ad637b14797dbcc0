import type { Stated } from "../cells/stated";
import { withUnit } from "../core/figures/figure";
import { MEASURES } from "../core/figures/measures";
import { WATER } from "../core/figures/water";
import type { CheckedFile } from "./copy-report";

/** The headings of the register, one column each. */
export const REGISTER_HEADINGS = [
  "File",
  "Site",
  "Block",
  "Date",
  withUnit({ ...MEASURES.MAR, name: MEASURES.MAR.short }),
  withUnit({ ...MEASURES.CU, name: MEASURES.CU.short }),
  withUnit({ ...MEASURES.DU, name: MEASURES.DU.short }),
  withUnit(MEASURES.SC_CAN),
  withUnit({ ...WATER.NOW, name: WATER.NOW.short }),
  "Agrees",
  "Findings",
];

const STATED = ["Used_MAR", "Used_CU", "Used_DU", "Used_SC_Can", "Result_Water_kL"] as const;

/** A line of the register: what one copy states and whether it agrees, or why it could not be read. */
export function registerRow({ name, report, problem }: CheckedFile): Stated[] {
  if (!report) return [name, "", "", "", ...STATED.map(() => ""), "not read", problem];
  const { facts, figures, findings, follows, agrees } = report;
  const stated = STATED.map((measure) => figures.find((figure) => figure.name === measure)?.stated ?? "");
  const wrong = figures
    .filter((figure) => !figure.agrees)
    .map(({ label, place }) => `${label} in ${place}: does not agree.`);
  const said = [...wrong, ...findings, ...follows].join(" ");
  return [name, facts.site, facts.block, facts.date, ...stated, agrees ? "agrees" : "does not agree", said];
}
