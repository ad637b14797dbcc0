import { firstCell } from "../../cells/places";
import { addressParts, areaOf, type SheetArea } from "../../cells/sheet-area";
import { namesOf } from "../../workbook/form/build";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import { type Compiled, compiled } from "./compiled";
import { FormulaGrid } from "./grid";

/** A cell of the audit's sheets that holds a formula. */
export interface FormulaCell extends Compiled {
  address: string;
  /** `Sheet!A1`. */
  key: string;
  row: number;
  column: number;
  name: string | undefined;
}

/** The row of the cell that asks, which a formula alone does not tell. */
const OWN_ROW = "ROW()";

const knownCells = new WeakMap<SheetSpec, readonly FormulaCell[]>();
const knownGrids = new WeakMap<SheetSpec, FormulaGrid<Compiled>>();
const knownAreas = new WeakMap<readonly SheetSpec[], ReadonlyMap<string, SheetArea>>();

/** The formulas of a sheet in the order of its description. */
export function formulaCells(spec: SheetSpec): readonly FormulaCell[] {
  const cells =
    knownCells.get(spec) ??
    spec.cells.flatMap(({ at, formula, name }) => {
      if (formula === undefined) return [];
      const address = firstCell(at);
      const key = `${spec.name}!${address}`;
      const { row, column } = addressParts(address);
      const placed = formula.replaceAll(OWN_ROW, String(row));
      return [{ address, key, row, column, name, ...compiled(placed, spec.name) }];
    });
  knownCells.set(spec, cells);
  return cells;
}

/** The formulas of a sheet by their cells. */
export function formulaGrid(spec: SheetSpec): FormulaGrid<Compiled> {
  const known = knownGrids.get(spec);
  if (known) return known;
  const grid = new FormulaGrid<Compiled>();
  for (const cell of formulaCells(spec)) grid.set(cell.row, cell.column, cell);
  knownGrids.set(spec, grid);
  return grid;
}

/** What each name of the audit's sheets is for, in capitals. */
export function namedAreas(specs: readonly SheetSpec[]): ReadonlyMap<string, SheetArea> {
  const areas =
    knownAreas.get(specs) ??
    new Map(
      specs.flatMap((spec) =>
        [...namesOf(spec)].map(
          ([name, range]) => [name.toUpperCase(), areaOf(range, spec.name)!] as [string, SheetArea],
        ),
      ),
    );
  knownAreas.set(specs, areas);
  return areas;
}
