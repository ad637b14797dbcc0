import type { Stated } from "../../cells/stated";
import { verdict } from "../../core/summary/verdict";
import type { BedCans } from "./bed-cans";
import type { LimitInUse } from "./limits-in-use";
import type { Measures } from "./uniformity-figures";

/** So that a value which is its limit but for rounding is within. */
const DIGITS = 9;

const MEASURE_OF: Readonly<Record<string, keyof Measures>> = {
  MAR: "mar",
  CU: "cu",
  DU: "du",
  SC: "scCan",
  SCQ: "scQuarter",
};

/** What is said where there is no value: a dry can or quarter is outside, fewer than four cans are too few. */
function withoutValue(short: string, used: Measures, { catches, dry }: BedCans): string {
  if (catches.length === 0) return "";
  if (short === "SC" && dry > 0) return "outside";
  if ((short === "DU" || short === "SCQ") && used.du === null) return "too few cans";
  return short === "SCQ" ? "outside" : "";
}

/** Where each measure lies against its limit, by value alone, by the names of the cells. */
export function verdictFigures(limits: readonly LimitInUse[], used: Measures, cans: BedCans): Map<string, Stated> {
  return new Map(
    limits.map(({ short, low, high, text }) => {
      const name = `Verdict_${short}`;
      if (low === null && high === null) return [name, ""];
      const value = used[MEASURE_OF[short]!];
      if (value === null) return [name, withoutValue(short, used, cans)];
      const rounded = Number(value.toFixed(DIGITS));
      const limit = {
        measure: short,
        text,
        source: "",
        year: "",
        ...(low !== null && { low }),
        ...(high !== null && { high }),
      };
      return [name, verdict([rounded, rounded], limit, cans.count)];
    }),
  );
}
