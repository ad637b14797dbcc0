import { type Figure, withUnit } from "../../core/figures/figure";
import { MEASURES } from "../../core/figures/measures";

/** A measure of an audit with its names in the workbook. */
export interface Definition {
  label: string;
  meaning: string;
  source: string;
  /** Defined names of its value with equal weight, of the one that is put first, and of its limit's text and source. */
  result: string;
  used: string;
  limit?: { text: string; source: string };
}

const definition = (figure: Figure, result: string, used: string, limit?: string): Definition => ({
  label: withUnit(figure),
  meaning: figure.definition,
  source: figure.source,
  result: `Result_${result}`,
  used: `Used_${used}`,
  ...(limit && { limit: { text: `Limit_${limit}_Text`, source: `Limit_${limit}_Source` } }),
});

/** The measures that an audit states, in the order of its results. */
export const DEFINITIONS: readonly Definition[] = [
  definition(MEASURES.MAR, "MAR", "MAR", "MAR"),
  definition(MEASURES.CU, "CU", "CU", "CU"),
  definition(MEASURES.DU, "DU_Quarter", "DU", "DU"),
  definition(MEASURES.SC_CAN, "SC_Can", "SC_Can", "SC"),
  definition(MEASURES.SC_QUARTER, "SC_Quarter", "SC_Quarter", "SCQ"),
  definition(MEASURES.SC_SHARE, "SC_Share", "SC_Share"),
];
