import type { Arrangement } from "../../core/layout/heads";

/** The arrangements by the words of the workbook's Head_Layout; other words have none. */
export const ARRANGEMENT_OF: Readonly<Record<string, Arrangement>> = {
  border: "border",
  inset: "inset",
  "centre line": "centre",
  staggered: "staggered",
};
