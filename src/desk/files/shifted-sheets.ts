import { ICommandService } from "@univerjs/core";
import type { Grid } from "../../hosts/desk/grid";

const SHIFTS = ["insert-row", "insert-col", "remove-rows", "remove-col", "move-rows", "move-columns"].map(
  (name) => `sheet.mutation.${name}`,
);

/** Remembers in which sheets rows or columns were inserted, deleted or moved. */
export class ShiftedSheets {
  private readonly keys = new Set<string>();

  constructor(grid: Grid) {
    grid.injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
      const { subUnitId } = (params ?? {}) as { subUnitId?: string };
      if (subUnitId !== undefined && SHIFTS.includes(id)) this.keys.add(subUnitId);
    });
  }

  all(): string[] {
    return [...this.keys];
  }

  forget(): void {
    this.keys.clear();
  }
}
