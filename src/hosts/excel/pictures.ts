import type { Area } from "../../cells/area";
import { LAST_COLUMN, LAST_ROW } from "../../cells/box";
import { plainAddress } from "../../cells/letters";
import { fromBase64, toBase64 } from "../base64";
import type { Picture } from "../host";
import { onSheet } from "./protection";

const POINTS_A_PIXEL = 0.75;
/** How many cells are asked for their place at once. */
const CANDIDATES = 32;

async function images(sheet: Excel.Worksheet): Promise<Excel.Shape[]> {
  const shapes = sheet.shapes.load(
    "items/id,items/name,items/type,items/altTextDescription,items/left,items/top,items/width,items/height",
  );
  await sheet.context.sync();
  return shapes.items.filter(({ type }) => type === "Image");
}

const remove = (shapes: Excel.Shape[], name: string): void => {
  for (const shape of shapes) if (shape.name === name) shape.delete();
};

/** Places a picture over its cell, in place of one of the same name. */
export const placePicture = (context: Excel.RequestContext, picture: Picture): Promise<void> =>
  onSheet(context, picture.at.sheet, async (sheet) => {
    const cell = sheet.getRange(picture.at.address).getCell(0, 0).load("left,top");
    remove(await images(sheet), picture.name);
    const shape = sheet.shapes.addImage(toBase64(picture.png));
    shape.name = picture.name;
    shape.altTextDescription = picture.alternative;
    shape.lockAspectRatio = false;
    shape.left = cell.left;
    shape.top = cell.top;
    shape.width = picture.width * POINTS_A_PIXEL;
    shape.height = picture.height * POINTS_A_PIXEL;
  });

export const removePicture = (context: Excel.RequestContext, sheet: string, name: string): Promise<void> =>
  onSheet(context, sheet, async (on) => remove(await images(on), name));

/** The last of `count` cells in a line that begins at or before a place [pt]. */
async function cellBefore(
  line: (index: number) => Excel.Range,
  edge: "left" | "top",
  count: number,
  place: number,
): Promise<number> {
  let [first, end] = [0, count];
  while (end - first > 1) {
    const step = Math.ceil((end - first) / CANDIDATES);
    const cells: Excel.Range[] = [];
    for (let index = first; index < end; index += step) cells.push(line(index).load(edge));
    await cells[0]!.context.sync();
    const after = cells.findIndex((cell) => cell[edge] > place + POINTS_A_PIXEL / 2);
    const found = first + step * ((after < 0 ? cells.length : after) - 1);
    [first, end] = [Math.max(found, 0), Math.min(found + step, end)];
  }
  return first;
}

async function cellUnder(sheet: Excel.Worksheet, { left, top }: Excel.Shape): Promise<string> {
  const all = sheet.getRange();
  const row = await cellBefore((index) => all.getCell(index, 0), "top", LAST_ROW, top);
  const column = await cellBefore((index) => all.getCell(0, index), "left", LAST_COLUMN, left);
  const cell = all.getCell(row, column).load("address");
  await sheet.context.sync();
  return plainAddress(cell.address);
}

/** The pictures on a sheet, as Excel draws them. */
export async function pictures(context: Excel.RequestContext, name: string): Promise<Picture[]> {
  const sheet = context.workbook.worksheets.getItem(name);
  const found: Picture[] = [];
  for (const shape of await images(sheet)) {
    const png = shape.getAsImage("PNG");
    const at: Area = { sheet: name, address: await cellUnder(sheet, shape) };
    found.push({
      name: shape.name,
      png: fromBase64(png.value),
      alternative: shape.altTextDescription,
      at,
      width: shape.width / POINTS_A_PIXEL,
      height: shape.height / POINTS_A_PIXEL,
    });
  }
  return found;
}
