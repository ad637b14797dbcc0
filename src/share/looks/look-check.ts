import { cellAt } from "../../cells/places";
import { areaOf } from "../../cells/sheet-area";
import { namesOf } from "../../workbook/form/build";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import { type BookSheet, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { within, type XmlElement } from "../../xlsx/parts/xml-tree";
import { EVIDENCE } from "../copy/evidence-rows";
import { type Finding, misleading } from "../finding";
import { bookFindings } from "./book/book-settings";
import { escapeFindings } from "./book/escapes";
import { oddNotation } from "./book/notations";
import { propertyFindings } from "./book/properties";
import { cellLookFindings, lookOf } from "./cells/cell-looks";
import { conditionalFindings } from "./cells/conditional";
import { type FileLooks, fileLooks } from "./cells/file-looks";
import { typedTextFindings } from "./cells/typed-texts";
import { drawingFindings } from "./drawings/drawings";
import { besideFindings } from "./sheets/beside";
import { farFindings } from "./sheets/far-beside";
import { hiddenFindings } from "./sheets/hidden";
import { ownSheetFindings, strayFindings } from "./sheets/look-alike";
import { type OwnSheet, ownSheet } from "./sheets/own-sheet";
import { sheetFrame } from "./sheets/sheet-frame";
import { typedCheckFindings } from "./sheets/typed-checks";
import { protectionFindings, viewAndPrintFindings } from "./sheets/views";

const EVIDENCE_NAMES = ["Evidence_Version", "Evidence_Day", "Evidence_Hash", "Evidence_Formulas", "Evidence_Inputs"];

const USUAL_SIZE = 11;

/** What of the looks of a file as a whole can be read in more than one way, or makes its columns narrow. */
function styleFindings({ twofold, usualSize }: FileLooks): Finding[] {
  const narrow = usualSize < 0.75 * USUAL_SIZE || usualSize > 1.4 * USUAL_SIZE;
  return [
    ...(twofold === "" ? [] : [misleading("the file", twofold)]),
    ...(narrow
      ? [misleading("the file", "measures its columns by another font", `${USUAL_SIZE} pt`, `${usualSize} pt`)]
      : []),
  ];
}

/** What of a sheet is written in a way that programs read differently. */
function notationFindings(name: string, { rows, cells }: BookSheet, frame: XmlElement): Finding[] {
  const odd =
    oddNotation(within(frame)) ||
    oddNotation(rows.map(({ given }) => ({ name: "row", given }))) ||
    oddNotation([...cells.values()].map(({ given }) => ({ name: "c", given })));
  return odd === "" ? [] : [misleading(name, `is written in a way that programs read differently (${odd})`)];
}

/**
 * Whatever of a file shows other than it holds, or hides it: looks of cells, hidden rows, columns and sheets, what is drawn
 * over cells, views, print, and settings of the whole file.
 *
 * @param more Sheets that the file has beside those of the workbook, such as Evidence
 * @param code What the foot of each page may say; "" for a file that is no copy
 */
export function lookFindings(
  book: FileBook,
  specs: readonly SheetSpec[],
  more: readonly OwnSheet[],
  code: string,
): Finding[] {
  const looks = fileLooks(book);
  const formatOf = (reference: string, from: string) => {
    const area = namedArea(book, reference) ?? areaOf(reference, from);
    const sheet = book.sheets.find(({ name }) => name === area?.sheet);
    return area ? lookOf(looks, sheet?.cells.get(cellAt(area.top, area.left)))?.format : undefined;
  };
  const names = specs.flatMap((spec) => [...namesOf(spec).keys()]);
  const own = [...specs.map((spec) => ownSheet(spec, specs)), ...more];
  const frames = new Map(book.sheets.map((sheet) => [sheet.name, sheetFrame(book, sheet)]));
  const sheets = new Set([...own.map(({ name }) => name), EVIDENCE].map((name) => name.toLowerCase()));
  return [
    ...styleFindings(looks),
    ...bookFindings(
      book,
      new Set([...names, ...EVIDENCE_NAMES].map((name) => name.toLowerCase())),
      sheets,
      own,
      frames,
    ),
    ...propertyFindings(book, code),
    ...escapeFindings(book),
    ...(specs.length > 1 ? ownSheetFindings(book, specs, [EVIDENCE]) : []),
    ...own.flatMap((one) => {
      const sheet = book.sheets.find(({ name }) => name === one.name);
      if (!sheet) return [];
      const frame = frames.get(sheet.name)!;
      return [
        ...cellLookFindings(one.name, one.cells, sheet, looks, formatOf),
        ...typedTextFindings(one.name, one.cells, sheet),
        ...besideFindings(one, sheet, frame, looks),
        ...strayFindings(one, sheet),
        ...hiddenFindings(one, sheet, frame),
        ...notationFindings(one.name, sheet, frame),
        ...viewAndPrintFindings(book, one, sheet, frame, code),
        ...typedCheckFindings(one, frame),
        ...(specs.length > 1 ? protectionFindings(one, frame) : []),
        ...conditionalFindings(one, frame, looks),
        ...farFindings(one, sheet, frame, looks),
        ...drawingFindings(book, one, sheet, frame),
      ];
    }),
  ];
}
