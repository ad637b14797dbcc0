import type { BookChange, Shift } from "../desk-file/book";
import { onlyRelation, relationsOf, textOf } from "../parts/relations";
import { removeParts } from "../parts/remove-parts";
import { sharedStrings } from "../parts/shared-strings";
import { dynamicMark } from "./dynamic-arrays";
import { removeLostSlicers } from "./lost-slicers";
import { askCalculation, patchNames } from "./names";
import { patchPictures } from "./pictures";
import { renameReferences } from "./renamed-references";
import { deleteSheet, nameSheet, newSheet, orderSheets } from "./sheet-list";
import { patchSheet, type SheetTools } from "./sheet-patch";
import { shiftSheet } from "./shift-parts";
import { Styles } from "./styles";
import { nameColumns } from "./table-headers";
import { type Parts, writePart } from "./write-part";

/** Parts that say where formulas are, which programs make anew. */
const LISTS_OF_FORMULAS = ["calcChain", "volatileDependencies"];

/** Brings the list of sheets to what the desk has: deleted, added, renamed, moved. */
function patchSheets(parts: Parts, main: string, sheets: Map<string, string>, change: BookChange): boolean {
  const kept = new Set(change.sheets.map(({ key }) => key));
  const renames = new Map<string, string | null>();
  let changed = false;
  for (const [key, part] of [...sheets]) {
    if (kept.has(key)) continue;
    renames.set(deleteSheet(parts, main, part).toLowerCase(), null);
    sheets.delete(key);
    changed = true;
  }
  for (const { key, name } of change.sheets) {
    const part = sheets.get(key);
    if (part === undefined) {
      sheets.set(key, newSheet(parts, main, name));
      changed = true;
      continue;
    }
    const old = nameSheet(parts, main, part, name);
    if (old !== name) renames.set(old.toLowerCase(), name);
  }
  if (renames.size > 0) renameReferences(parts, renames);
  orderSheets(
    parts,
    main,
    change.sheets.map(({ key }) => sheets.get(key)!),
  );
  return changed || renames.size > 0;
}

/** A file with the sheets, rows and columns of the desk, before its cells. */
export interface ShapedBook {
  parts: Parts;
  /** The part of the sheet behind each key. */
  sheets: Map<string, string>;
  change: BookChange;
  /** Whether formulas changed. */
  formulas: boolean;
}

/** What of the rows and columns of a change is not in a book that was shaped before; null where that holds more. */
function furtherShifts({ change: held }: ShapedBook, change: BookChange): (readonly Shift[])[] | null {
  const further = change.sheets.map(({ key, name, shifts = [] }, i) => {
    const there = held.sheets[i];
    const done = there?.shifts ?? [];
    const goesOn = JSON.stringify(shifts.slice(0, done.length)) === JSON.stringify(done);
    return there?.key === key && there.name === name && goesOn ? shifts.slice(done.length) : null;
  });
  const known = further.flatMap((one) => (one ? [one] : []));
  return known.length === held.sheets.length && known.length === further.length ? known : null;
}

/** Brings sheets, rows and columns to what the desk has: each shift takes a pass through all parts, done but once. */
export function shapedBook(
  opened: { parts: Parts; sheets: Map<string, string> },
  main: string,
  change: BookChange,
  before: ShapedBook | null,
): ShapedBook {
  const further = before && furtherShifts(before, change);
  const from = before && further ? before : opened;
  const [parts, sheets] = [new Map(from.parts), new Map(from.sheets)];
  let formulas = before && further ? before.formulas : patchSheets(parts, main, sheets, change);
  if (formulas && !further) removeLostSlicers(parts, main);
  for (const [i, { key, name, shifts = [] }] of change.sheets.entries()) {
    for (const shift of further?.[i] ?? shifts) shiftSheet(parts, sheets.get(key)!, name, shift);
    if (shifts.length > 0) formulas = true;
  }
  return { parts, sheets, change, formulas };
}

/** Puts what changed at the desk into the parts of a file; all else in them stays byte for byte. */
export function patchBook(shaped: ShapedBook, main: string): Parts {
  const parts = new Map(shaped.parts);
  const { sheets, change } = shaped;
  let { formulas } = shaped;
  const relations = relationsOf(parts, main);
  const strings = onlyRelation(relations, "sharedStrings")?.part;
  const part = onlyRelation(relations, "styles")?.part;
  const before = part === undefined ? null : textOf(parts, part);
  const styles = before === null ? null : new Styles(before);
  let mark: number | undefined;
  const tools: SheetTools = {
    texts: strings === undefined ? [] : sharedStrings(textOf(parts, strings)),
    styles,
    dynamic: () => {
      mark ??= dynamicMark(parts, main);
      return mark;
    },
  };
  for (const given of change.sheets) {
    const at = sheets.get(given.key)!;
    const sheet = { ...given, cells: nameColumns(parts, at, given.cells) };
    if (patchSheet(parts, at, sheet, tools)) formulas = true;
    if (sheet.pictures) patchPictures(parts, at, sheet.pictures);
  }
  const after = styles?.text();
  if (part !== undefined && after !== undefined && after !== before) writePart(parts, part, after);
  patchNames(parts, main, change.addedNames, change.removedNames);
  if (formulas) removeParts(parts, main, ({ kind }) => LISTS_OF_FORMULAS.includes(kind));
  if (change.stale) askCalculation(parts, main);
  return parts;
}
