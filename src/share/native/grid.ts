/** Something for each cell of a sheet; rows and columns from 1. */
export class FormulaGrid<T> {
  private readonly rows: T[][] = [];

  at(row: number, column: number): T | undefined {
    return this.rows[row]?.[column];
  }

  set(row: number, column: number, what: T): void {
    this.rows[row] ??= [];
    this.rows[row]![column] = what;
  }
}
