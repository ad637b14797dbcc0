import type { Stated } from "../cells/stated";
import { withUnit } from "../core/figures/figure";
import { MEASURES } from "../core/figures/measures";
import { WATER } from "../core/figures/water";
import type { CheckedFile, CopyReport } from "./copy-report";

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
  "Code",
  "Agrees",
  "Findings",
];

const STATED = ["Used_MAR", "Used_CU", "Used_DU", "Used_SC_Can", "Result_Water_kL"] as const;

/** A figure as a file states it; water of all beds on the valve, which workbooks before version 1.2 stated of one bed. */
export function statedFigure({ figures, line }: CopyReport, name: string): Stated {
  const found = figures.find((figure) => figure.name === name);
  const stated = found?.stated ?? "";
  if (name !== "Result_Water_kL" || typeof stated !== "number") return stated;
  const [ofBed, ofValve] = [found!.recomputed, line?.water];
  return typeof ofBed === "number" && ofBed > 0 && typeof ofValve === "number" ? stated * (ofValve / ofBed) : stated;
}

/** A line of the register: what one copy states and whether it agrees, or why it could not be read. */
export function registerRow({ name, report, problem }: CheckedFile, other = ""): Stated[] {
  if (!report) return [name, "", "", "", ...STATED.map(() => ""), "", "not read", problem];
  const { facts, figures, findings, follows, agrees } = report;
  const stated = STATED.map((measure) => statedFigure(report, measure));
  const wrong = figures
    .filter((figure) => !figure.agrees)
    .map(({ label, place }) => `${label} in ${place}: does not agree.`);
  const said = [other, ...wrong, ...findings.map(({ text }) => text), ...follows].filter(Boolean).join(" ");
  return [
    name,
    facts.site,
    facts.block,
    facts.date,
    ...stated,
    report.code,
    agrees ? "agrees" : "does not agree",
    said,
  ];
}
