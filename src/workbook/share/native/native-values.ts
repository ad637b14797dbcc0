import { cellAt } from "../../places";
import type { SheetSpec } from "../../sheet-spec";
import { addressParts, type SheetArea } from "../area";
import { type FileBook, namedArea } from "../book";
import type { Stated } from "../copy-report";
import type { FileCell } from "../sheet-cells";
import { compiled, type Evaluate } from "./compiled";
import { cellNumber, type FormulaCell, formulaCells, namedAreas } from "./formula-cells";
import type { Cells } from "./given";
import { isArea, isMatrix, type Matrix, NativeError, type Scalar, Unsure, type Value } from "./value";

const MOST_CELLS = 20_000;

/** One sheet of a file; cells by their numbers. */
interface SheetValues {
  formulas: ReadonlyMap<number, FormulaCell>;
  /** What stands in cells instead of the audit's own formulas; null where something is typed. */
  others: Map<number, Evaluate | null>;
  /** undefined while a value is being worked out. */
  known: Map<number, Scalar | undefined>;
  file: ReadonlyMap<string, FileCell>;
}

function typed(cell: FileCell | undefined): Scalar {
  return cell?.error === undefined ? (cell?.value ?? null) : new NativeError(cell.error);
}

/**
 * What the audit's own formulas give from what was typed into a file. The formulas come from the audit's sheets as
 * Canfall describes them, never from the file, and figures that core works out are taken from there.
 */
export class NativeValues implements Cells {
  private readonly sheets = new Map<string, SheetValues>();
  private readonly areas = new Map<string, SheetArea>();
  /** The values of whole areas, which many formulas read. */
  private readonly matrices = new Map<string, Matrix>();

  constructor(
    private readonly book: FileBook,
    private readonly specs: readonly SheetSpec[],
    /** Figures worked out otherwise, by their names. */
    figures: ReadonlyMap<string, Stated>,
  ) {
    for (const [name, figure] of figures) {
      const area = namedAreas(specs).get(name.toUpperCase());
      if (area && figure !== null) this.sheet(area.sheet).known.set(cellNumber(area.top, area.left), figure);
    }
  }

  /** Another formula than the audit's own in a cell, or null where something is typed. */
  standsAt(sheet: string, address: string, formula: string | null): void {
    const { row, column } = addressParts(address);
    const other = formula === null ? null : compiled(formula, sheet);
    this.sheet(sheet).others.set(cellNumber(row, column), other);
  }

  /** What a cell should show; throws Unsure where that is not certain. */
  at(sheet: string, row: number, column: number): Scalar {
    return this.valueIn(this.sheet(sheet), row, column);
  }

  matrix(value: Value): Matrix {
    if (isMatrix(value)) return value;
    if (!isArea(value)) return [[value]];
    const { sheet, top, left, bottom, right } = value;
    if (top === bottom && left === right) return [[this.at(sheet, top, left)]];
    if ((bottom - top + 1) * (right - left + 1) > MOST_CELLS) throw new Unsure();
    const key = `${sheet}!${top},${left},${bottom},${right}`;
    const known = this.matrices.get(key);
    if (known) return known;
    const values = this.sheet(sheet);
    const matrix = Array.from({ length: bottom - top + 1 }, (_, i) =>
      Array.from({ length: right - left + 1 }, (_, j) => this.valueIn(values, top + i, left + j)),
    );
    this.matrices.set(key, matrix);
    return matrix;
  }

  first(value: Value): Scalar {
    if (isMatrix(value)) return value[0]?.[0] ?? null;
    return isArea(value) ? this.at(value.sheet, value.top, value.left) : value;
  }

  named(name: string): SheetArea {
    const known = this.areas.get(name);
    if (known) return known;
    const area = namedAreas(this.specs).get(name.toUpperCase()) ?? namedArea(this.book, name);
    if (!area) throw new Unsure();
    this.areas.set(name, area);
    return area;
  }

  private sheet(name: string): SheetValues {
    const known = this.sheets.get(name);
    if (known) return known;
    const spec = this.specs.find((one) => one.name === name);
    const values: SheetValues = {
      formulas: spec ? formulaCells(spec) : new Map(),
      others: new Map(),
      known: new Map(),
      file: this.book.sheets.find((one) => one.name === name)?.cells ?? new Map(),
    };
    this.sheets.set(name, values);
    return values;
  }

  private valueIn(values: SheetValues, row: number, column: number): Scalar {
    const { known, others, formulas } = values;
    const number = cellNumber(row, column);
    const found = known.get(number);
    if (found !== undefined) return found;
    const other = others.get(number);
    const evaluate = other === undefined ? formulas.get(number)?.evaluate : other;
    const value = evaluate ? this.worked(evaluate, known, number) : typed(values.file.get(cellAt(row, column)));
    known.set(number, value);
    return value;
  }

  private worked(evaluate: Evaluate, known: Map<number, Scalar | undefined>, number: number): Scalar {
    if (known.has(number)) throw new Unsure();
    known.set(number, undefined);
    try {
      return this.first(evaluate(this)) ?? 0;
    } catch (error) {
      known.delete(number);
      if (error instanceof NativeError) return error;
      throw error;
    }
  }
}
