import { InputError } from "./errors";

/** What a measure should be; `low` and `high` themselves are allowed. */
export interface Limit {
  /** One of MEASURES. */
  measure: string;
  low?: number;
  high?: number;
  /** As shown, such as ">= 85". */
  text: string;
  source: string;
  year: string;
}

/** The measures of the summary in their order, by the names that a limit uses. */
export const MEASURES = [
  "Cans counted",
  "Dry cans",
  "Mean application rate",
  "CU (Christiansen)",
  "DU (low quarter)",
  "SC (driest can)",
  "SC (low quarter)",
] as const;

export const BUILT_IN_LIMITS: readonly Limit[] = [
  {
    measure: "Mean application rate",
    ...parseLimit("5 to 12"),
    source: "NGIQ, Growing media and irrigation",
    year: "",
  },
  {
    measure: "CU (Christiansen)",
    ...parseLimit(">= 85"),
    source: "Measuring uniformity (an Australian consultant's page), rule of thumb",
    year: "",
  },
  {
    measure: "DU (low quarter)",
    ...parseLimit(">= 80"),
    source: "Haman and Yeager, Field Evaluation of Container Nursery Irrigation Systems: Uniformity, UF/IFAS AE194",
    year: "1998",
  },
  {
    measure: "SC (driest can)",
    ...parseLimit("<= 1.5"),
    source: "common practice",
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
