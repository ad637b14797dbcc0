import { getViewportByCell, IRenderManagerService, SheetsScrollRenderController } from "@univerjs/preset-sheets-core";
import { bookOf, type Grid, sheetOf } from "../hosts/desk/grid";

/** A part of the page, in its pixels. */
export interface Rectangle {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Where a cell is on the page, with those that it is merged with; brings its sheet to the front and the cell into sight. */
export function cellRectangle(grid: Grid, sheetName: string, address: string): Rectangle {
  const sheet = sheetOf(grid, sheetName);
  const before = bookOf(grid).getActiveSheet().getSheetId();
  if (before !== sheet.getSheetId()) bookOf(grid).setActiveSheet(sheet); // even the same sheet would end an open entry
  const range = sheet.getRange(address);
  const render = grid.injector.get(IRenderManagerService).getRenderById(bookOf(grid).getId());
  if (!render) throw new Error("the grid must be drawn before a cell has a place");
  render.with(SheetsScrollRenderController).scrollToRange(range.getRange());
  const { isMergedMainCell, mergeInfo, ...alone } = range.getCell();
  const { startX, startY, endX, endY } = isMergedMainCell ? mergeInfo : alone;
  const viewport = getViewportByCell(range.getRow(), range.getColumn(), render.scene, sheet.getSheet());
  if (!viewport) throw new Error(`cell ${address} must be in a part of the grid that is drawn`);
  const { scaleX, scaleY } = render.scene.getAncestorScale();
  const canvas = render.engine.getCanvasElement().getBoundingClientRect();
  return {
    x: canvas.left + (startX - viewport.viewportScrollX) * scaleX,
    y: canvas.top + (startY - viewport.viewportScrollY) * scaleY,
    width: (endX - startX) * scaleX,
    height: (endY - startY) * scaleY,
  };
}
