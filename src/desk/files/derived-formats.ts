import { type ICellData, ICommandService, type IStyleData, type Nullable, type Workbook } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/preset-sheets-core";
import { bookOf, type Grid } from "../../hosts/desk/grid";

type Cells = Record<number, Record<number, Nullable<ICellData>> | undefined>;

const place = (book: string, sheet: string, row: number, column: number): string => `${book} ${sheet} ${row} ${column}`;

/** Remembers which number formats the grid took over from the cells that a formula reads: nobody gave them to its cell. */
export class DerivedFormats {
  private readonly found = new Map<string, string>();

  constructor(private readonly grid: Grid) {
    grid.injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
      if (id !== SetRangeValuesMutation.id || !options?.applyFormulaCalculationResult) return;
      const { unitId, subUnitId, cellValue } = params as { unitId: string; subUnitId: string; cellValue?: Cells };
      const book = bookOf(grid);
      if (book.getId() === unitId) this.note(book.getWorkbook(), subUnitId, cellValue ?? {});
    });
  }

  private note(book: Workbook, sheet: string, cells: Cells): void {
    const matrix = book.getSheetBySheetId(sheet)?.getCellMatrix();
    const styles = book.getStyles();
    for (const [row, line] of Object.entries(cells)) {
      for (const [column, cell] of Object.entries(line ?? {})) {
        const format = cell && styles.getStyleByCell(cell)?.n?.pattern;
        if (!format) continue;
        const at = place(book.getUnitId(), sheet, Number(row), Number(column));
        const own = styles.getStyleByCell(matrix?.getValue(Number(row), Number(column)))?.n?.pattern;
        if (!own || own === this.found.get(at)) this.found.set(at, format);
      }
    }
  }

  /** Tells whether the format of a cell of the sheet is one that the grid took over. */
  of(sheet: string): (row: number, column: number, style: Nullable<IStyleData>) => boolean {
    const book = bookOf(this.grid).getId();
    return (row, column, style) => {
      const format = style?.n?.pattern;
      return format !== undefined && format === this.found.get(place(book, sheet, row, column));
    };
  }
}
