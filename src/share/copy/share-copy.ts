import { isReference } from "@borgar/fx/xlsx";
import { zipSync } from "fflate";
import { dayNumber } from "../../cells/day-number";
import { absolute, areaOf, placeName, type SheetArea } from "../../cells/sheet-area";
import { typedNames } from "../../cells/stored-name";
import { InputError } from "../../core/errors";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import { WORKBOOK_VERSION } from "../../workbook/version";
import { addSheet } from "../../xlsx/parts/add-sheet";
import { edited } from "../../xlsx/parts/edits";
import { escaped } from "../../xlsx/parts/escaped";
import { onlyRelation, relationsOf, textOf } from "../../xlsx/parts/relations";
import { removeParts } from "../../xlsx/parts/remove-parts";
import { type FileBook, namedArea, openBook } from "../../xlsx/parts/workbook-file";
import { tokensOf } from "../calls";
import { knownSheets } from "../known-sheets";
import { codeEdits } from "./code-stamp";
import { inputDigest, shortCode } from "./digest";
import { withEvidenceLooks } from "./evidence-looks";
import { EVIDENCE, evidenceRows } from "./evidence-rows";
import { evidenceXml, valueXml } from "./evidence-sheet";
import { inputNames, typedInputs } from "./input-list";
import { paintedFormulas, paintedInputs } from "./painted-coverage";
import { type ReplacedCell, replacedCells } from "./replaced-cells";

/** The rectangles that replaced formulas read and that have no name of an input. */
export function referencesOf(
  book: FileBook,
  formulas: readonly { formula: string; sheet: string }[],
  names: readonly string[],
) {
  const named = new Set(names.flatMap((name) => (namedArea(book, name) ? [absolute(namedArea(book, name)!)] : [])));
  const areas = new Map<string, SheetArea>();
  for (const { formula, sheet } of formulas) {
    for (const token of tokensOf(formula)) {
      if (!isReference(token) && token.type !== "unknown") continue;
      const area = areaOf(token.value, sheet) ?? namedArea(book, token.value);
      if (area && !named.has(absolute(area))) areas.set(absolute(area), area);
    }
  }
  return [...areas.values()];
}

function cellXml({ address, cell, formula, fills, value }: ReplacedCell): string {
  const style = cell.given.get("s");
  const array = fills === "" ? "" : ` t="array" ref="${escaped(fills)}"`;
  const text = formula === "" ? "" : `<f${array}>${escaped(formula)}</f>`;
  return valueXml(address, style === undefined ? "" : ` s="${escaped(style)}"`, value, text);
}

/** Writes each sheet with its replaced cells and the code of the copy. */
function writeSheets(book: FileBook, replaced: readonly ReplacedCell[], code: string): void {
  for (const sheet of book.sheets) {
    const xml = textOf(book.parts, sheet.part);
    const cells = replaced
      .filter((one) => one.sheet === sheet)
      .map((one) => ({ start: one.cell.start, end: one.cell.end, text: cellXml(one) }));
    const text = edited(xml, [...cells, ...codeEdits(book, sheet, xml, code)]);
    book.parts.set(sheet.part, new TextEncoder().encode(text));
  }
}

/** Takes out what only the add-in or its formulas need. */
function removeAddIn({ parts, main, sheets }: FileBook, replaced: readonly ReplacedCell[]): void {
  removeParts(parts, "", ({ kind, part }) => kind.startsWith("webextension") || part.includes("webextensions/"));
  const gone = new Set(replaced.map(({ cell }) => cell));
  const needed = sheets.some(({ cells }) =>
    [...cells.values()].some((cell) => !gone.has(cell) && (cell.given.has("cm") || cell.given.has("vm"))),
  );
  removeParts(parts, main, ({ kind }) => kind === "calcChain" || (kind === "sheetMetadata" && !needed));
}

function styled({ parts, main }: FileBook) {
  const part = onlyRelation(relationsOf(parts, main), "styles")?.part ?? "";
  if (!parts.has(part))
    throw new InputError(
      "the workbook",
      "be saved by a spreadsheet program first: open it there, save it, try again",
      "no styles",
    );
  const { styles, looks } = withEvidenceLooks(textOf(parts, part));
  parts.set(part, new TextEncoder().encode(styles));
  return looks;
}

/**
 * A copy of a workbook in which every figure can be followed without the add-in: its functions are as native formulas
 * or, where there are none, as values, and an Evidence sheet lists what was there and everything that was typed.
 *
 * @param file The open workbook as an .xlsx file; its bytes stay as they are
 * @param now When the copy is made
 * @param given The sheets whose named inputs are listed; left out: those of the audit, the nursery plan or both
 * @throws InputError if the file is no .xlsx workbook, is a share copy already, or a replaced cell shows an error
 */
export async function shareCopy(file: Uint8Array, now: Date, given?: readonly SheetSpec[]): Promise<Uint8Array> {
  const book = openBook(file);
  const specs = given ?? knownSheets(book);
  if (book.sheets.some(({ name }) => name.toLowerCase() === EVIDENCE.toLowerCase())) {
    throw new InputError("the workbook", `have no sheet named ${EVIDENCE}, as share copies have`, EVIDENCE);
  }
  const replaced = replacedCells(book);
  const names = inputNames(specs);
  const formulas = replaced.map(({ old, sheet }) => ({ formula: old, sheet: sheet.name }));
  const read = referencesOf(book, [...formulas, ...paintedFormulas(book)], names);
  const inputs = [...typedInputs(book, names, read), ...paintedInputs(book)];
  const digest = await inputDigest(inputs);
  const lines = replaced.map((one) => ({
    ...one,
    place: placeName(one.sheet.name, one.address),
    old: typedNames(one.old),
  }));
  const code = shortCode(digest);
  const evidence = evidenceRows(book, lines, inputs, { version: WORKBOOK_VERSION, day: dayNumber(now), digest });
  writeSheets(book, replaced, code);
  removeAddIn(book, replaced);
  addSheet(book, EVIDENCE, evidenceXml(evidence.rows, styled(book), code), evidence.names);
  return zipSync(Object.fromEntries(book.parts), { mtime: now });
}
