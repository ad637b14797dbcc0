import type { AddImageRange, Workbook, Worksheet } from "@cj-tech-master/excelts";
import type { BookPicture, Spot } from "./book";
import type { PictureWords } from "./drawing";

const EMU_A_PIXEL = 9525;
const EXTENSIONS = ["png", "jpeg", "gif"] as const;

type FileImage = ReturnType<Worksheet["getImages"]>[number];
type FileAnchor = NonNullable<FileImage["range"]>["tl"];

const spotOf = ({ nativeRow, nativeRowOff, nativeCol, nativeColOff }: FileAnchor): Spot => ({
  row: nativeRow,
  column: nativeCol,
  right: Math.round(nativeColOff / EMU_A_PIXEL),
  down: Math.round(nativeRowOff / EMU_A_PIXEL),
});

const anchor = ({ row, column, right, down }: Spot) => ({
  nativeRow: row,
  nativeCol: column,
  nativeRowOff: down * EMU_A_PIXEL,
  nativeColOff: right * EMU_A_PIXEL,
});

function bytesOf(
  workbook: Workbook,
  image: FileImage,
): { bytes: Uint8Array; extension: BookPicture["extension"] } | null {
  const media = workbook.getImage(image.imageId!);
  const extension = EXTENSIONS.find((one) => one === media?.extension);
  const bytes = media?.buffer as Uint8Array | undefined;
  return extension && bytes ? { bytes: new Uint8Array(bytes), extension } : null;
}

/** The pictures on a file's sheet that the desk can show. */
export function picturesOf(sheet: Worksheet, words: PictureWords[]): BookPicture[] {
  return sheet.getImages().flatMap((image, i) => {
    const content = bytesOf(sheet.workbook, image);
    const { tl, br, ext } = image.range ?? {};
    if (!content || !tl || !(br || ext)) return [];
    const said = words[i] ?? { name: `Picture ${i + 1}`, alternative: "" };
    const to = br ? spotOf(br) : { width: ext?.width ?? 0, height: ext?.height ?? 0 };
    return [{ ...said, ...content, from: spotOf(tl), to }];
  });
}

type NewImage = Parameters<Workbook["addImage"]>[0];

/** Puts these pictures in place of those that a file's sheet holds. */
export function setPictures(sheet: Worksheet, pictures: BookPicture[]): void {
  const held = sheet as unknown as { _media: FileImage[] };
  held._media = held._media.filter(({ type }) => type !== "image");
  for (const { bytes, extension, from, to } of pictures) {
    const id = sheet.workbook.addImage({ buffer: bytes, extension } as NewImage);
    const end = "width" in to ? { ext: to } : { br: anchor(to) };
    sheet.addImage(id, { tl: anchor(from), ...end, editAs: "oneCell" } as unknown as AddImageRange);
  }
}

/** Gives an imported sheet's pictures their bytes in its new workbook. */
export function adoptPictures(sheet: Worksheet, source: Workbook): void {
  for (const image of sheet.getImages()) {
    const content = bytesOf(source, image);
    if (!content) continue;
    const { bytes, extension } = content;
    image.imageId = String(sheet.workbook.addImage({ buffer: bytes, extension } as NewImage));
  }
}

/** Lets the file library name all drawings anew: it would give a new one the name of one that was read. */
export function unnameDrawings(workbook: Workbook): void {
  for (const sheet of workbook.worksheets) delete (sheet as unknown as { _drawing?: { name?: string } })._drawing?.name;
}
