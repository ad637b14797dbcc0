import { FormulaRuntimeService, IFormulaRuntimeService } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

interface Cells {
  setValue(row: number, column: number, cell: { f?: unknown; si?: unknown } | null): void;
}

interface Running {
  currentUnitId: string;
  currentSubUnitId: string;
  _runtimeData: Record<string, Record<string, Cells | undefined> | undefined>;
  setRuntimeData(value: unknown): void;
}

const running = FormulaRuntimeService.prototype as unknown as Running;

/** Leaves the formulas in its way alone: they have figures of their own. */
export const spillErrors: Fix = {
  name: "spill-errors",
  wrong:
    "Where an array formula has no room, the grid puts what the formulas in its way gave before over what they have just given.",
  seen: "0.25.1",
  members: ({ injector }) => [
    ["FormulaRuntimeService", running, "setRuntimeData"],
    ["FormulaRuntimeService", injector.get(IFormulaRuntimeService), "_runtimeData"],
  ],
  mend() {
    const { setRuntimeData } = running;
    running.setRuntimeData = function (value) {
      const ofSheet = this._runtimeData[this.currentUnitId]?.[this.currentSubUnitId];
      if (!ofSheet) return setRuntimeData.call(this, value);
      const { setValue } = ofSheet;
      ofSheet.setValue = (row, column, cell) => {
        if (!cell?.f && !cell?.si) setValue.call(ofSheet, row, column, cell);
      };
      try {
        setRuntimeData.call(this, value);
      } finally {
        ofSheet.setValue = setValue;
      }
    };
  },
};
