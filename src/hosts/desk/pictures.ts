import { ImageSourceType } from "@univerjs/core";
import { type ISheetDrawing, ISheetDrawingService } from "@univerjs/preset-sheets-drawing";
import { fromBase64, toBase64 } from "../base64";
import type { Picture } from "../host";
import type { DeskDrawing } from "./drawing";
import { bookOf, type Grid, sheetOf } from "./grid";

const PNG = "data:image/png;base64,";

const named = (drawing: ISheetDrawing): drawing is DeskDrawing => "source" in drawing && "name" in drawing;

function drawings(grid: Grid, sheet: string): DeskDrawing[] {
  const service = grid.injector.get(ISheetDrawingService);
  const all = service.getDrawingData(bookOf(grid).getId(), sheetOf(grid, sheet).getSheetId());
  return Object.values(all).filter(named);
}

/** The pictures over a sheet of the grid that have a name, as those that a person pastes have not. */
export function pictures(grid: Grid, sheet: string): Picture[] {
  return drawings(grid, sheet)
    .filter(({ source }) => source.startsWith(PNG))
    .map(({ name, source, alternative, sheetTransform: { from }, transform }) => ({
      name,
      png: fromBase64(source.slice(PNG.length)),
      alternative,
      at: { sheet, address: sheetOf(grid, sheet).getRange(from.row, from.column).getA1Notation() },
      width: transform?.width ?? 0,
      height: transform?.height ?? 0,
    }));
}

export function removePicture(grid: Grid, sheet: string, name: string): void {
  const on = sheetOf(grid, sheet);
  for (const drawing of drawings(grid, sheet)) {
    const image = drawing.name === name && on.getImageById(drawing.drawingId);
    if (image) on.deleteImages([image]);
  }
}

/** Places a picture over its cell, in place of one of the same name. */
export async function placePicture(grid: Grid, { name, png, alternative, at, width, height }: Picture): Promise<void> {
  const sheet = sheetOf(grid, at.sheet);
  const { startRow, startColumn } = sheet.getRange(at.address).getRange();
  const image = await sheet
    .newOverGridImage()
    .setSource(`${PNG}${toBase64(png)}`, ImageSourceType.BASE64)
    .setRow(startRow)
    .setColumn(startColumn)
    .setWidth(width)
    .setHeight(height)
    .buildAsync();
  removePicture(grid, at.sheet, name);
  const drawing: DeskDrawing = { ...image, name, alternative };
  sheet.insertImages([drawing]);
}
