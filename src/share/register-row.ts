import type { Stated } from "../cells/stated";
import type { CheckedFile } from "./copy-report";

/** The headings of the register, one column each. */
export const REGISTER_HEADINGS = [
  "File",
  "Site",
  "Block",
  "Date",
  "MAR [mm/h]",
  "CU [%]",
  "DU [%]",
  "SC (driest can)",
  "Water [kL a year]",
  "Agrees",
  "Findings",
] as const;

const MEASURES = ["Result_MAR", "Result_CU", "Result_DU_Quarter", "Result_SC_Can", "Result_Water_kL"] as const;

/** A line of the register: what one copy states and whether it agrees, or why it could not be read. */
export function registerRow({ name, report, problem }: CheckedFile): Stated[] {
  if (!report) return [name, "", "", "", ...MEASURES.map(() => ""), "not read", problem];
  const { facts, figures, findings, follows, agrees } = report;
  const stated = MEASURES.map((measure) => figures.find((figure) => figure.name === measure)?.stated ?? "");
  const wrong = figures
    .filter((figure) => !figure.agrees)
    .map(({ label, place }) => `${label} in ${place}: does not agree.`);
  const said = [...wrong, ...findings, ...follows].join(" ");
  return [name, facts.site, facts.block, facts.date, ...stated, agrees ? "agrees" : "does not agree", said];
}
