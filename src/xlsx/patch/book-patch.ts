import type { BookChange } from "../desk-file/book";
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

/** Puts what changed at the desk into the parts of a file; all else in them stays byte for byte. */
export function patchBook(parts: Parts, main: string, sheets: Map<string, string>, change: BookChange): void {
  let formulas = patchSheets(parts, main, sheets, change);
  if (formulas) removeLostSlicers(parts, main);
  for (const { key, name, shifts = [] } of change.sheets) {
    for (const shift of shifts) shiftSheet(parts, sheets.get(key)!, name, shift);
    if (shifts.length > 0) formulas = true;
  }
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
}
