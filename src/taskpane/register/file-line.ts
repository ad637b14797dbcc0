import type { Input } from "../../cells/cell";
import { dayOf } from "../../cells/day-number";
import type { CheckedFile } from "../../share/copy-report";

/** What a file gives the register: a line, or why there is none. */
export type FileLine =
  | { name: string; problem: string }
  | { name: string; block: string; day: number; inputs: Input[] };

/** A text that the sheet takes as it is. */
const asText = (text: string): Input => (text === "" ? "" : `'${text}`);

/** The line of a file in the order of the register's columns, from what our own computation gave. */
export function fileLine({ name, report, problem }: CheckedFile): FileLine {
  if (!report) return { name, problem };
  const { facts, line } = report;
  if (!line) return { name, problem: `no audit that could be recomputed (${facts.kind})` };
  if (facts.block.trim() === "") return { name, problem: "the audit has no block: fill it in on its sheet Block" };
  if (facts.date === "") return { name, problem: "the audit has no date: fill it in on its sheet Block" };
  const day = dayOf(facts.date);
  const { cans, grid, wind, pressure, mar, cu, du, scCan, scQuarter, kind, multiplier, water, area, flow } = line;
  const figures = [cans, grid, wind, pressure, mar, cu, du, scCan, scQuarter, kind, multiplier, water, area, flow];
  return {
    name,
    block: facts.block.trim(),
    day,
    inputs: [
      asText(facts.site.trim()),
      asText(facts.block.trim()),
      day,
      ...figures.map((figure) => figure ?? ""),
      report.agrees ? "agrees" : "does not agree",
      asText(name),
    ],
  };
}
