import { cellAt, placesOf } from "../../cells/places";
import { areaOf, placeName } from "../../cells/sheet-area";
import { type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { ourCalls } from "../calls";
import type { Evidence } from "../copy/evidence";
import type { ReplacedLine } from "../copy/evidence-rows";
import { nativeCells, nativeFormula, type SpillOf } from "../copy/native-formula";
import { changed, type Finding, saying } from "../finding";
import { readable } from "../looks/cells/shown";
import { sameFormula } from "../same-formula";
import { sameValue } from "./agreement";
import { evidencePlace } from "./evidence-check";

const MOST_READINGS = 20_000;

/** Rectangles that the old formulas filled, by the key of their first cells, as far as Evidence lists their cells. */
function spills(formulas: readonly ReplacedLine[]): Map<string, string> {
  const filled = new Map<string, { first: string; last: string }>();
  for (const { place, old } of formulas) {
    const at = evidencePlace(place);
    if (!at) continue;
    const key = `${at.sheet}\n${old}`;
    filled.set(key, { first: filled.get(key)?.first ?? at.address, last: at.address });
  }
  return new Map([...filled].map(([key, { first, last }]) => [`${key.split("\n")[0]}!${first}`, `${first}:${last}`]));
}

/** The cells of readings one by one, as a formula on a sheet names them. */
function cellsOf(book: FileBook, sheet: string): (readings: string) => string[] | null {
  return (readings) => {
    const area = areaOf(readings, sheet) ?? namedArea(book, readings);
    if (!area || (area.bottom - area.top + 1) * (area.right - area.left + 1) > MOST_READINGS) return null;
    const places = placesOf(`${cellAt(area.top, area.left)}:${cellAt(area.bottom, area.right)}`);
    return places.map((address) => (area.sheet === sheet ? address : placeName(area.sheet, address)));
  };
}

/** Whether a formula is the native twin of an old one, for its whole or for one cell of its spill. */
function isTwin(book: FileBook, sheet: string, { old, formula }: ReplacedLine, spillOf: SpillOf): boolean {
  const native = nativeFormula(old, spillOf);
  if (native && native.formula !== old && sameFormula(native.formula, formula, sheet)) return true;
  return nativeCells(old, cellsOf(book, sheet))?.some((each) => sameFormula(each, formula, sheet)) ?? false;
}

function cellOf(book: FileBook, { place }: ReplacedLine) {
  const at = evidencePlace(place);
  return { at, cell: at && book.sheets.find(({ name }) => name === at.sheet)?.cells.get(at.address) };
}

/** The cells that took the place of the add-in's formulas and show another value than Evidence gives. */
export function replacedValues(book: FileBook, { formulas }: Evidence): Finding[] {
  return formulas.flatMap((line) => {
    const { at, cell } = cellOf(book, line);
    if (!at || sameValue(cell?.value ?? null, line.value)) return [];
    return [
      changed(line.place, "the value is not the one on Evidence", readable(line.value), readable(cell?.value), "value"),
    ];
  });
}

/** What is wrong with the cells that Evidence says took the place of the add-in's formulas, but for their values. */
export function replacedFindings(book: FileBook, { formulas }: Evidence, own: ReadonlySet<string>): Finding[] {
  const filled = spills(formulas);
  return formulas.flatMap((line) => {
    const { at, cell } = cellOf(book, line);
    if (!at || (!cell && line.value !== null)) {
      return [saying("changed", "Evidence", `Evidence names ${line.place}, which is not there.`)];
    }
    if (own.has(at.sheet)) {
      const said = `Evidence says that ${line.place} had a formula of the add-in, and cells of the workbook's own have none.`;
      return [saying("changed", "Evidence", said, "", line.old)];
    }
    if (ourCalls(line.old).length === 0) {
      const said = `Evidence says that ${line.place} had a formula of the add-in, and the old formula there calls none.`;
      return [saying("changed", "Evidence", said, "", line.old)];
    }
    const spillOf: SpillOf = (reference) => {
      const area = areaOf(reference, at.sheet);
      const cells = area && filled.get(`${area.sheet}!${cellAt(area.top, area.left)}`);
      return cells ? (area.sheet === at.sheet ? cells : placeName(area.sheet, cells)) : null;
    };
    if (line.formula !== "" && !isTwin(book, at.sheet, line, spillOf)) {
      return [
        changed(line.place, "the new formula on Evidence is not what the old one is for", line.old, line.formula),
      ];
    }
    if (line.formula !== "" && !sameFormula(line.formula, cell?.formula ?? "", at.sheet)) {
      return [
        changed(line.place, "the formula is not the one that Evidence lists", line.formula, cell?.formula ?? "none"),
      ];
    }
    if (
      (cell?.fills ?? "") !== line.fills &&
      !(cell?.kind === undefined && line.fills === line.place.split("!").at(-1))
    ) {
      return [changed(line.place, "its formula fills other cells than Evidence says", line.fills, cell?.fills ?? "")];
    }
    return [];
  });
}

/** Cells that still call the add-in. */
export function remainingCalls(book: FileBook): Finding[] {
  const findings: Finding[] = [];
  for (const { name, cells } of book.sheets) {
    for (const [address, { formula }] of cells) {
      if (!formula || ourCalls(formula).length === 0) continue;
      findings.push(
        changed(placeName(name, address), "a function of the add-in, which a share copy does not need", "", formula),
      );
    }
  }
  return findings;
}

/** The keys of the cells that Evidence accounts for; none of the workbook's own sheets. */
export function replacedKeys({ formulas }: Evidence, own: ReadonlySet<string>): Set<string> {
  return new Set(
    formulas.flatMap(({ place }) => {
      const at = evidencePlace(place);
      return at && !own.has(at.sheet) ? at.key : [];
    }),
  );
}
