import { InputError } from "../core/errors";
import { BUILT_IN_LIMITS, LIMITED, type Limit, parseLimit } from "../core/figures/limits";
import { cellsOf, placeOf, plain } from "./cells";

/** The limits in a range of two columns, measure and limit; the built-in ones where no range is given. */
export function limits(range: unknown): readonly Limit[] {
  if (range === null || range === undefined || range === "") return BUILT_IN_LIMITS;
  const rows = cellsOf("limits", range);
  const width = rows[0]!.length;
  if (width !== 2) throw new InputError("limits", "have two columns, measure and limit", width);
  const found = new Map<string, Limit>();
  rows.forEach((row, r) => {
    const limit = limitIn(row, r);
    if (!limit) return;
    if (found.has(limit.measure)) {
      throw new InputError("limits", "name each measure once", limit.measure, { place: placeOf(r, 0) });
    }
    found.set(limit.measure, limit);
  });
  return [...found.values()];
}

function limitIn(row: unknown[], r: number): Limit | undefined {
  const [measure, text] = row.map(plain);
  // a measure without a limit, as in a table that lists them all
  if (text === null || (typeof text === "string" && text.trim() === "")) return undefined;
  const name = typeof measure === "string" ? measure.trim().toLowerCase() : "";
  const uncounted = name.replace(/^sc \(driest of \d+ cans\)$/, "sc (driest can)");
  const known = LIMITED.find((candidate) => candidate.toLowerCase() === uncounted);
  if (!known) {
    throw new InputError("limits", "name measures of the summary", measure, { place: placeOf(r, 0) });
  }
  try {
    return { measure: known, ...parseLimit(text), source: "limits range", year: "" };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError("limits", error.rule, text, { place: placeOf(r, 1) });
  }
}
