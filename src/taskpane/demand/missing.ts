import { MONTHS } from "../../workbook/nursery/months";
import type { Group } from "./read-demand";

/** Months of one reason, as `May to July, October`. */
export function spans(months: readonly number[]): string {
  const runs: [first: number, last: number][] = [];
  for (const month of months) {
    const run = runs.at(-1);
    if (run && run[1] === month - 1) run[1] = month;
    else runs.push([month, month]);
  }
  return runs
    .map(([first, last]) => (first === last ? MONTHS[first]! : `${MONTHS[first]} to ${MONTHS[last]}`))
    .join(", ");
}

/** Each reason why a group has no depth, with its months. */
function reasons({ depths, reasons }: Group): string[] {
  const byReason = new Map<string, number[]>();
  for (const [month, depth] of depths.entries()) {
    if (typeof depth === "number") continue;
    const reason = reasons[month] || depth;
    byReason.set(reason, [...(byReason.get(reason) ?? []), month]);
  }
  return [...byReason].map(([reason, months]) =>
    months.length === MONTHS.length ? `every month: ${reason}` : `${spans(months)}: ${reason}`,
  );
}

/** A line for each reason why months are missing, with the groups that it holds for. */
export function missing(groups: readonly Group[]): string[] {
  const byLine = new Map<string, string[]>();
  for (const group of groups) {
    for (const line of reasons(group)) byLine.set(line, [...(byLine.get(line) ?? []), titleOf(group)]);
  }
  return [...byLine].map(([line, names]) =>
    names.length === groups.length && names.length > 1 ? `every group, ${line}` : `${names.join(", ")}, ${line}`,
  );
}

/** A column that someone has begun to fill in. */
export const used = ({ name, depths }: Group): boolean => name !== "" || depths.some((depth) => depth !== "");

/** A group by its name, or by its column while it has none. */
export const titleOf = ({ name, number }: Group): string => name || `group ${number}, no name yet`;
