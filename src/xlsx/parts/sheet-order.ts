/** What a sheet's part holds, in the order that the schema asks for, up to its footer (ECMA-376, CT_Worksheet). */
const ORDER = [
  "sheetData",
  "sheetCalcPr",
  "sheetProtection",
  "protectedRanges",
  "scenarios",
  "autoFilter",
  "sortState",
  "dataConsolidate",
  "customSheetViews",
  "mergeCells",
  "phoneticPr",
  "conditionalFormatting",
  "dataValidations",
  "hyperlinks",
  "printOptions",
  "pageMargins",
  "pageSetup",
  "headerFooter",
] as const;

/** The elements of a sheet, from its cells on, that come before one of this name. */
export const before = (name: (typeof ORDER)[number]): readonly string[] => ORDER.slice(0, ORDER.indexOf(name));
