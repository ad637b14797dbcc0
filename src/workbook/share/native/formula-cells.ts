import { namesOf } from "../../build";
import { firstCell } from "../../places";
import type { SheetSpec } from "../../sheet-spec";
import { addressParts, areaOf, type SheetArea } from "../area";
import { compiled, type Evaluate } from "./compiled";

const COLUMNS = 16_384;

/** One number for a row and a column, both from 1. */
export const cellNumber = (row: number, column: number) => row * COLUMNS + column;

/** A cell of the audit's sheets that holds a formula. */
export interface FormulaCell {
  address: string;
  row: number;
  column: number;
  name: string | undefined;
  evaluate: Evaluate;
}

const knownCells = new WeakMap<SheetSpec, ReadonlyMap<number, FormulaCell>>();
const knownAreas = new WeakMap<readonly SheetSpec[], ReadonlyMap<string, SheetArea>>();

/** The formulas of a sheet by the numbers of their cells. */
export function formulaCells(spec: SheetSpec): ReadonlyMap<number, FormulaCell> {
  const known = knownCells.get(spec);
  if (known) return known;
  const cells = new Map<number, FormulaCell>();
  for (const { at, formula, name } of spec.cells) {
    if (formula === undefined) continue;
    const address = firstCell(at);
    const { row, column } = addressParts(address);
    cells.set(cellNumber(row, column), { address, row, column, name, evaluate: compiled(formula, spec.name) });
  }
  knownCells.set(spec, cells);
  return cells;
}

/** What each name of the audit's sheets stands for, in capitals. */
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
