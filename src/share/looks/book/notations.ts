import type { XmlElement } from "../../../xlsx/parts/xml-tree";

const listed = (...names: string[]): ReadonlySet<string> => new Set(names.flatMap((some) => some.split(" ")));

/** Attributes that say yes or no. */
const FLAGS = listed(
  "hidden customFormat customHeight customWidth collapsed ph phonetic zeroHeight thickTop thickBottom showFormulas",
  "showZeros rightToLeft date1904 dateCompatibility showSheetTabs showHorizontalScroll showVerticalScroll minimized",
  "fullPrecision iterate fitToPage blackAndWhite draft useFirstPageNumber man differentFirst differentOddEven wrapText",
  "shrinkToFit pivotButton diagonalUp diagonalDown outline locked auto stopIfTrue showInputMessage showErrorMessage",
  "sheet objects scenarios formatCells formatColumns formatRows insertColumns insertRows insertHyperlinks deleteColumns",
  "deleteRows selectLockedCells selectUnlockedCells transitionEvaluation enableFormatConditionsCalculation tabSelected",
  "applyNumberFormat applyFont applyFill applyBorder applyAlignment applyProtection",
);
/** Attributes that are a number. */
const NUMBERS = listed(
  "min max width outlineLevel ht s defaultRowHeight defaultColWidth baseColWidth zoomScale zoomScaleNormal",
  "zoomScaleSheetLayoutView zoomScalePageLayoutView xSplit ySplit scale fitToWidth fitToHeight paperSize firstPageNumber",
  "left right top bottom header footer numFmtId fontId fillId borderId xfId theme indexed tint dxfId priority indent",
  "textRotation readingOrder tabRatio windowWidth windowHeight xWindow yWindow firstSheet localSheetId builtinId",
);
/** Parts of a look whose attribute `val` says yes or no, or is a number. */
const FLAG_PARTS = listed("b i strike outline shadow condense extend");
const NUMBER_PARTS = listed("sz family charset");

const FLAG = /^(0|1|true|false)$/;
const NUMBER = /^-?(0|[1-9]\d*)?(\.\d*)?(e[-+]?\d+)?$/i;
const COLOUR = /^([0-9a-f]{2})?[0-9a-f]{6}$/i;

function formOf(element: string, attribute: string): RegExp | null {
  if (FLAGS.has(attribute) || (attribute === "val" && FLAG_PARTS.has(element))) return FLAG;
  if (attribute === "rgb") return COLOUR;
  const isNumber =
    NUMBERS.has(attribute) ||
    (attribute === "val" && NUMBER_PARTS.has(element)) ||
    (attribute === "style" && element === "col") ||
    (attribute === "id" && element === "brk");
  return isNumber ? NUMBER : null;
}

/** The first yes, number or colour that is written as the standard does not, which programs read in different ways; "" for none. */
export function oddNotation(elements: Iterable<Pick<XmlElement, "name" | "given">>): string {
  for (const { name, given } of elements) {
    for (const [attribute, value] of given) {
      const form = formOf(name, attribute);
      if (form && (value === "" || !form.test(value))) return `${attribute}="${value.slice(0, 20)}"`;
    }
  }
  return "";
}
