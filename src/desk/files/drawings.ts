import { fromBase64, toBase64 } from "../../hosts/base64";
import type { DeskDrawing } from "../../hosts/desk/drawing";
import type { BookPicture, BookSheet, Spot } from "../../xlsx/desk-file/book";

const IMAGE = 0;
const TYPES = { png: "image/png", jpeg: "image/jpeg", gif: "image/gif" } as const;
const DATA_URL = /^data:image\/(png|jpeg|gif);base64,(.*)$/s;

type GridSpot = DeskDrawing["sheetTransform"]["from"];

const gridSpot = ({ row, column, right, down }: Spot): GridSpot => ({
  row,
  column,
  rowOffset: down,
  columnOffset: right,
});

const spotOf = ({ row, column, rowOffset, columnOffset }: GridSpot): Spot => ({
  row,
  column,
  right: columnOffset,
  down: rowOffset,
});

/** Where a line of rows or columns is, measured from the first. */
class Scale {
  private readonly hidden: ReadonlySet<number>;

  constructor(
    private readonly sizes: Record<number, number>,
    private readonly usual: number,
    hidden: readonly number[],
  ) {
    this.hidden = new Set(hidden);
  }

  private size(place: number): number {
    return this.hidden.has(place) ? 0 : (this.sizes[place] ?? this.usual);
  }

  start(place: number): number {
    let sum = 0;
    for (let i = 0; i < place; i++) sum += this.size(i);
    return sum;
  }

  /** The row or column that lies `offset` behind the start of `place`, and how far into it. */
  after(place: number, offset: number): { place: number; rest: number } {
    let rest = offset;
    let at = place;
    while (rest > this.size(at)) rest -= this.size(at++);
    return { place: at, rest };
  }
}

function drawing(picture: BookPicture, sheet: BookSheet, unitId: string, drawingId: string): DeskDrawing {
  const across = new Scale(sheet.widths, sheet.usual.width, sheet.hiddenColumns);
  const along = new Scale(sheet.heights, sheet.usual.height, sheet.hiddenRows);
  const { from } = picture;
  let to: Spot;
  if ("width" in picture.to) {
    const column = across.after(from.column, from.right + picture.to.width);
    const row = along.after(from.row, from.down + picture.to.height);
    to = { row: row.place, column: column.place, right: column.rest, down: row.rest };
  } else to = picture.to;
  const left = across.start(from.column) + from.right;
  const top = along.start(from.row) + from.down;
  const position = { from: gridSpot(from), to: gridSpot(to) };
  return {
    unitId,
    subUnitId: sheet.key,
    drawingId,
    drawingType: IMAGE,
    imageSourceType: "BASE64" as DeskDrawing["imageSourceType"],
    source: `data:${TYPES[picture.extension]};base64,${toBase64(picture.bytes)}`,
    transform: {
      left,
      top,
      width: across.start(to.column) + to.right - left,
      height: along.start(to.row) + to.down - top,
      angle: 0,
    },
    sheetTransform: position,
    axisAlignSheetTransform: position,
    name: picture.name,
    alternative: picture.alternative,
    ...("width" in picture.to && { sized: true }),
  };
}

/** The pictures of sheets as the grid loads them. */
export function drawingsOf(sheets: BookSheet[], unitId: string): { name: string; data: string } {
  const entries = sheets.map((sheet) => {
    const order = sheet.pictures.map((_, i) => `${sheet.key}-picture-${i}`);
    const data = sheet.pictures.map((picture, i) => [order[i]!, drawing(picture, sheet, unitId, order[i]!)]);
    return [sheet.key, { data: Object.fromEntries(data), order }];
  });
  return { name: "SHEET_DRAWING_PLUGIN", data: JSON.stringify(Object.fromEntries(entries)) };
}

/** A picture in the grid as files hold it; null for what files cannot hold. */
export function pictureOf(drawing: DeskDrawing): BookPicture | null {
  const { name, alternative, source, sheetTransform, sized, transform } = drawing;
  const size = sized && transform && { width: transform.width ?? 0, height: transform.height ?? 0 };
  const parts = DATA_URL.exec(source);
  if (!parts) return null;
  return {
    name: name ?? "Picture",
    alternative: alternative ?? "",
    extension: parts[1] as BookPicture["extension"],
    bytes: fromBase64(parts[2]!),
    from: spotOf(sheetTransform.from),
    to: size ? { width: Math.round(size.width), height: Math.round(size.height) } : spotOf(sheetTransform.to),
  };
}
