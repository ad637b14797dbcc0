import { isReference } from "@borgar/fx/xlsx";
import { firstCell } from "../places";
import type { SheetSpec } from "../sheet-spec";
import { sameValue } from "./agreement";
import { areaOf, placeName, type SheetArea } from "./area";
import { cellsIn, type FileBook, namedArea } from "./book";
import { tokensOf } from "./calls";
import type { Stated } from "./copy-report";

interface Shown {
  address: string;
  /** The name or the address of the one cell that it repeats. */
  of: string;
}

const shownCells = new WeakMap<SheetSpec, readonly Shown[]>();

/** The cells of a sheet whose formula only repeats another cell, worked out once. */
function shownOf(spec: SheetSpec): readonly Shown[] {
  const known =
    shownCells.get(spec) ??
    spec.cells.flatMap(({ at, formula }) => {
      const [token, ...rest] = formula === undefined ? [] : tokensOf(formula);
      if (!token || rest.length > 0 || !(isReference(token) || token.type === "unknown")) return [];
      return [{ address: firstCell(at), of: token.value }];
    });
  shownCells.set(spec, known);
  return known;
}

function firstValue(book: FileBook, area: SheetArea): Stated {
  const cell = cellsIn(book, { ...area, bottom: area.top, right: area.left })[0]?.cell;
  return cell?.error ?? cell?.value ?? null;
}

/** Cells of the audit that should repeat another cell and state something else. */
export function shownFindings(book: FileBook, specs: readonly SheetSpec[]): string[] {
  return specs.flatMap((spec) =>
    shownOf(spec).flatMap(({ address, of }) => {
      const [here, there] = [areaOf(address, spec.name), areaOf(of, spec.name) ?? namedArea(book, of)];
      if (!here || !there) return [];
      const [shown, original] = [firstValue(book, here), firstValue(book, there)];
      if (sameValue(shown, original) || (original === null && shown === 0)) return [];
      return [`${placeName(spec.name, address)}: states something else than ${of}, which it should repeat.`];
    }),
  );
}
