import type { Stated } from "../../cells/stated";
import { verdict } from "../../core/summary/verdict";
import { WITH_ENDS } from "../../workbook/answer/test-summary";
import { OUT_OF_DATE } from "../../workbook/audit/results/words";
import type { BedCans } from "./bed-cans";
import type { KeptEnds } from "./kept-ends";
import type { LimitInUse } from "./limits-in-use";
import type { Measures } from "./uniformity-figures";

const MEASURE_OF: Readonly<Record<string, keyof Measures>> = {
  MAR: "mar",
  CU: "cu",
  DU: "du",
  SC: "scCan",
  SCQ: "scQuarter",
};

const HAVE_ENDS = new Set(WITH_ENDS.map(([short]) => short));

/** What is said where there is no value: a dry can or quarter is outside, fewer than four cans are too few. */
function withoutValue(short: string, used: Measures, { catches, dry }: BedCans): string {
  if (catches.length === 0) return "";
  if (short === "SC" && dry > 0) return "outside";
  if ((short === "DU" || short === "SCQ") && used.du === null) return "too few cans";
  return short === "SCQ" ? "outside" : "";
}

/** Where each measure lies against its limit, by the names of the cells: by its interval where the file keeps it. */
export function verdictFigures(
  limits: readonly LimitInUse[],
  used: Measures,
  cans: BedCans,
  kept: KeptEnds,
): Map<string, Stated> {
  return new Map(
    limits.map(({ short, low, high, text }) => {
      const name = `Verdict_${short}`;
      if (low === null && high === null) return [name, ""];
      const value = used[MEASURE_OF[short]!];
      if (value === null) return [name, withoutValue(short, used, cans)];
      const limit = {
        measure: short,
        text,
        source: "",
        year: "",
        ...(low !== null && { low }),
        ...(high !== null && { high }),
      };
      const said = verdict(kept.ends.get(short) ?? [value, value], limit, cans.count);
      return [name, kept.stale && HAVE_ENDS.has(short) && !said.startsWith("too few") ? OUT_OF_DATE : said];
    }),
  );
}
