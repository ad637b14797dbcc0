import { FormulaDependencyGenerator, IDefinedNamesService } from "@univerjs/preset-sheets-core";
import { bookOf, type Grid } from "../../../hosts/desk/grid";
import { WHOLE_BOOK } from "../../../hosts/desk/names";
import { OwnNames } from "../../files/own-names";
import type { Fix } from "../fix";

interface Given {
  f?: string;
}

/** The grid's own service that takes formulas in. */
interface Taking {
  _createFDtree(unit: string, sheet: string, row: number, column: number, units: object, given: Given): object;
}

const taking = FormulaDependencyGenerator.prototype as unknown as Taking;

/** The names of single sheets that the open workbook has; null where it has none. */
function ownNames(grid: Grid): OwnNames | null {
  const all = grid.injector.get(IDefinedNamesService).getDefinedNameMap(bookOf(grid).getId()) ?? {};
  const own = Object.values(all).flatMap(({ name: inGrid, localSheetId: key }) => {
    const end = key && key !== WHOLE_BOOK ? `_${key.replaceAll("-", "_")}` : "";
    return key && end && inGrid.endsWith(end) ? [{ key, inGrid, name: inGrid.slice(0, -end.length) }] : [];
  });
  if (own.length === 0) return null;
  const sheets = bookOf(grid)
    .getSheets()
    .map((sheet) => ({ key: sheet.getSheetId(), name: sheet.getSheetName() }));
  return new OwnNames(own, sheets);
}

/** Calculates with the name of the formula's own sheet. */
export const ownNamesFix: Fix = {
  name: "own-names",
  wrong: "The grid takes a name that is defined for one sheet for one of the whole workbook, where it knows it at all.",
  seen: "0.25.1",
  members: () => [["FormulaDependencyGenerator", taking, "_createFDtree"]],
  mend(grid) {
    const { _createFDtree } = taking;
    let known: { own: OwnNames | null } | null = null;
    taking._createFDtree = function (unit, sheet, row, column, units, given) {
      if (!known) {
        known = { own: ownNames(grid) };
        setTimeout(() => {
          known = null;
        });
      }
      const { own } = known;
      const asked = own && given.f ? { ...given, f: own.translated(given.f, sheet) } : given;
      return _createFDtree.call(this, unit, sheet, row, column, units, asked);
    };
  },
};
