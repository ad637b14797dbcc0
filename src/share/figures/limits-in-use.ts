import type { Stated } from "../../cells/stated";
import { InputError } from "../../core/errors";
import { parseLimit } from "../../core/figures/limits";
import { LIMITED_MEASURES, SET_LINES } from "../../workbook/audit/limits/limit-sets";
import type { AuditInputs } from "./audit-inputs";

/** A limit that verdicts use. */
export interface LimitInUse {
  /** `MAR` and the like, as in the names of its cells. */
  short: string;
  text: string;
  low: number | null;
  high: number | null;
}

function bounds(text: string): { low?: number; high?: number } {
  try {
    return parseLimit(text);
  } catch (error) {
    if (error instanceof InputError) return {};
    throw error;
  }
}

/** The limits of an audit: those that were typed, else those of the set that was chosen. */
export function limitsInUse(inputs: AuditInputs): LimitInUse[] {
  const set = inputs.text("Limit_Set");
  const own = new Map(inputs.cells("Limits_Own").map(({ row, cell }) => [row, String(cell.value ?? "").trim()]));
  return LIMITED_MEASURES.map(({ measure, short, low, high }, index) => {
    const ofSet = SET_LINES.find((line) => line.set === set && line.measure === measure)?.text ?? "";
    const typed = own.get(index + 1) ?? "";
    const text = typed === "" ? ofSet : typed.replaceAll("≤", "<=").replaceAll("≥", ">=");
    const found = bounds(text);
    const both = found.low !== undefined && found.high !== undefined;
    const usable = both ? low && high : true;
    return {
      short,
      text,
      low: usable && low && found.low !== undefined ? found.low : null,
      high: usable && high && found.high !== undefined ? found.high : null,
    };
  });
}

/** The limits by the names of their cells; "" where there is none. */
export function limitFigures(limits: readonly LimitInUse[]): Map<string, Stated> {
  return new Map<string, Stated>(
    limits.flatMap(({ short, text, low, high }): [string, Stated][] => [
      [`Limit_${short}_Text`, text],
      [`Limit_${short}_Low`, low ?? ""],
      [`Limit_${short}_High`, high ?? ""],
    ]),
  );
}
