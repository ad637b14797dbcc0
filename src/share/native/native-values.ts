import { cellAt } from "../../cells/places";
import { addressParts, type SheetArea } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import type { FileCell } from "../../xlsx/parts/file-cell";
import { type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import type { Cells } from "./arguments";
import { type Compiled, compiled } from "./compiled";
import { formulaGrid, namedAreas } from "./formula-cells";
import { FormulaGrid } from "./grid";
import { isArea, isMatrix, type Matrix, matrixOf, NativeError, type Scalar, Unsure, type Value } from "./value";

const MOST_CELLS = 20_000;

/** Stands for a value while it is being calculated. */
const DOING = Symbol();

/** One sheet of a file. */
interface SheetValues {
  formulas: FormulaGrid<Compiled>;
  /** What is in cells instead of the audit's own formulas; null where something is typed. */
  others: FormulaGrid<Compiled | null>;
  known: FormulaGrid<Scalar | typeof DOING | undefined>;
  file: ReadonlyMap<string, FileCell>;
}

function typed(cell: FileCell | undefined): Scalar {
  return cell?.error === undefined ? (cell?.value ?? null) : new NativeError(cell.error);
}

/**
 * What the audit's own formulas give from what was typed into a file. The formulas come from the audit's sheets as
 * Canfall describes them, never from the file, and figures that core calculates are taken from there.
 */
export class NativeValues implements Cells {
  private readonly sheets = new Map<string, SheetValues>();
  private readonly areas = new Map<string, SheetArea>();
  /** The values of whole areas, which many formulas read. */
  private readonly matrices = new Map<string, Matrix>();

  constructor(
    private readonly book: FileBook,
    private readonly specs: readonly SheetSpec[],
    /** Figures calculated otherwise, by their names. */
    figures: ReadonlyMap<string, Stated>,
  ) {
    for (const [name, figure] of figures) {
      const area = namedAreas(specs).get(name.toUpperCase());
      if (area && figure !== null) this.sheet(area.sheet).known.set(area.top, area.left, figure);
    }
  }

  /** Another formula than the audit's own in a cell, or null where something is typed. */
  standsAt(sheet: string, address: string, formula: string | null): void {
    const { row, column } = addressParts(address);
    const other = formula === null ? null : compiled(formula, sheet);
    this.sheet(sheet).others.set(row, column, other);
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
    const [rows, columns] = [bottom - top + 1, right - left + 1];
    if (rows * columns > MOST_CELLS) throw new Unsure();
    const key = `${sheet}!${top},${left},${bottom},${right}`;
    const known = this.matrices.get(key);
    if (known) return known;
    const values = this.sheet(sheet);
    const matrix = matrixOf(rows, columns, (i, j) => this.valueIn(values, top + i, left + j));
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
      formulas: spec ? formulaGrid(spec) : new FormulaGrid(),
      others: new FormulaGrid(),
      known: new FormulaGrid(),
      file: this.book.sheets.find((one) => one.name === name)?.cells ?? new Map(),
    };
    this.sheets.set(name, values);
    return values;
  }

  private valueIn({ known, others, formulas, file }: SheetValues, row: number, column: number): Scalar {
    const found = known.at(row, column);
    if (found === DOING) throw new Unsure();
    if (found !== undefined) return found;
    const other = others.at(row, column);
    const formula = other === undefined ? formulas.at(row, column) : other;
    known.set(row, column, DOING);
    let value: Scalar | undefined;
    try {
      value = formula ? this.worked(formula) : typed(file.get(cellAt(row, column)));
    } finally {
      known.set(row, column, value);
    }
    return value;
  }

  private worked({ evaluate, leaves }: Compiled): Scalar {
    try {
      return this.first(evaluate(this, leaves)) ?? 0;
    } catch (error) {
      if (error instanceof NativeError) return error;
      throw error;
    }
  }
}
