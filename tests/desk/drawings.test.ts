import { expect, it } from "vitest";
import { drawingsOf, pictureOf } from "../../src/desk/files/drawings";
import type { BookPicture, BookSheet } from "../../src/xlsx/desk-file/book";

const picture = (to: BookPicture["to"]): BookPicture => ({
  name: "Bed",
  alternative: "the bed",
  extension: "png",
  bytes: new Uint8Array([1, 2, 3]),
  from: { row: 1, column: 1, right: 10, down: 5 },
  to,
});

it.each<[string, BookPicture["to"]]>([
  ["a size keeps it", { width: 150, height: 70 }],
  ["an end among cells keeps that", { row: 4, column: 3, right: 2, down: 1 }],
])("a picture with %s at the desk", (_, to) => {
  const sheet = {
    key: "bed",
    usual: { width: 64, height: 20 },
    widths: { 2: 30 },
    heights: {},
    hiddenRows: [3],
    hiddenColumns: [],
    pictures: [picture(to)],
  } as unknown as BookSheet;
  const { bed } = JSON.parse(drawingsOf([sheet], "book").data);
  expect(pictureOf(bed.data[bed.order[0]])).toEqual(picture(to));
});
