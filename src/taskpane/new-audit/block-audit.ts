import type { WorkbookKind } from "./workbook-actions";

/** The audit of a block. */
export const BLOCK_AUDIT: WorkbookKind = {
  noun: "audit",
  blank: "block-audit",
  saved: "Block audit.xlsx",
  example: "example-audit",
  savedExample: "Example audit.xlsx",
  invented: "Example Nursery, block 7, an invented block",
  first: "Site_Name",
};
