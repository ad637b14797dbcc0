import { InputError } from "../errors";
import { MEASURES } from "./measures";

/** What a measure should be; `low` and `high` themselves are allowed. */
export interface Limit {
  /** The name of a measure. */
  measure: string;
  low?: number;
  high?: number;
  /** As shown, such as ">= 85". */
  text: string;
  source: string;
  year: string;
}

/** The measures of the summary in their order, by the names that a limit uses. */
export const LIMITED = [
  MEASURES.CANS,
  MEASURES.DRY,
  MEASURES.MAR,
  MEASURES.CU,
  MEASURES.DU,
  MEASURES.SC_CAN,
  MEASURES.SC_QUARTER,
].map(({ name }) => name);

export const BUILT_IN_LIMITS: readonly Limit[] = [
  {
    measure: MEASURES.MAR.name,
    ...parseLimit("5 to 12"),
    source: "NGIQ, Growing media and irrigation",
    year: "",
  },
  {
    measure: MEASURES.CU.name,
    ...parseLimit(">= 85"),
    source: "Measuring uniformity (an Australian consultant's page), rule of thumb",
    year: "",
  },
  {
    measure: MEASURES.DU.name,
    ...parseLimit(">= 80"),
    source: "Haman and Yeager, Field Evaluation of Container Nursery Irrigation Systems: Uniformity, UF/IFAS AE194",
    year: "1998",
  },
  {
    measure: MEASURES.SC_CAN.name,
    ...parseLimit("<= 1.5"),
    source: "common practice, no source",
    year: "",
  },
];

/** The bounds in a text such as "<= 1.5", ">= 85" or "5 to 12". */
export function parseLimit(text: unknown): Pick<Limit, "low" | "high" | "text"> {
  const words = typeof text === "string" ? text.trim() : "";
  const [, sign, bound] = /^(<=|>=|≤|≥)\s*(\d+(?:\.\d+)?)$/.exec(words) ?? [];
  if (sign === "<=" || sign === "≤") return { high: Number(bound), text: words };
  if (sign === ">=" || sign === "≥") return { low: Number(bound), text: words };
  const [, low, high] = /^(\d+(?:\.\d+)?)\s+to\s+(\d+(?:\.\d+)?)$/i.exec(words) ?? [];
  if (Number(low) <= Number(high)) return { low: Number(low), high: Number(high), text: words };
  throw new InputError("limit", 'be like "<= 1.5", ">= 85" or "5 to 12"', text);
}
