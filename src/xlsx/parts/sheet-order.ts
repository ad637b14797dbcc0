/** What a sheet's part holds, in the order that the schema asks for (ECMA-376, CT_Worksheet). */
const ORDER = [
  "sheetPr",
  "dimension",
  "sheetViews",
  "sheetFormatPr",
  "cols",
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
  "rowBreaks",
  "colBreaks",
  "customProperties",
  "cellWatches",
  "ignoredErrors",
  "smartTags",
  "drawing",
  "legacyDrawing",
  "legacyDrawingHF",
  "drawingHF",
  "picture",
  "oleObjects",
  "controls",
  "webPublishItems",
  "tableParts",
  "extLst",
] as const;

/** An element of a sheet's part. */
export type SheetElement = (typeof ORDER)[number];

/** The elements of a sheet, from its cells on, that come before one of this name. */
export const before = (name: SheetElement): readonly string[] =>
  ORDER.slice(ORDER.indexOf("sheetData"), ORDER.indexOf(name));

/** The elements of a sheet that come after one of this name. */
export const after = (name: SheetElement): readonly string[] => ORDER.slice(ORDER.indexOf(name) + 1);
