import { IConfigService } from "@univerjs/core";
import { SHEETS_PLUGIN_CONFIG_KEY, SheetRenderController } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

/** The grid's own that draws what changed. */
interface Drawing {
  _sheetSkeletonManagerService: { getCurrentParam(): object | undefined };
  _rangeToBounds(ranges: object[]): object[];
}

const drawn = SheetRenderController.prototype as unknown as Drawing;

/** No sheet is drawn once the one in front is deleted, until another one is; no sheet is too large to come back. */
export const deletedSheets: Fix = {
  name: "deleted-sheets",
  wrong:
    "Where the sheet in front is deleted and others read it, the grid stops half-way: names still lead there and Undo does not bring it back. Of a sheet of 6,000 cells it forgets all that could be undone.",
  seen: "0.25.1",
  members: ({ injector }) => [
    ["SheetRenderController", drawn, "_rangeToBounds"],
    ["IConfigService", injector.get(IConfigService), "setConfig"],
  ],
  mend({ injector }) {
    const largeSheetOperation = { largeSheetCellCountThreshold: Number.POSITIVE_INFINITY };
    injector.get(IConfigService).setConfig(SHEETS_PLUGIN_CONFIG_KEY, { largeSheetOperation }, { merge: true });
    const { _rangeToBounds } = drawn;
    drawn._rangeToBounds = function (ranges) {
      return this._sheetSkeletonManagerService.getCurrentParam() ? _rangeToBounds.call(this, ranges) : [];
    };
  },
};
