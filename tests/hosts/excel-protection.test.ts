// @vitest-environment jsdom
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { fromBase64 } from "../../src/hosts/base64";
import { excelHost } from "../../src/hosts/excel/excel";
import { FakeExcel } from "../support/fake-excel";
import type { Sheet } from "../support/fake-excel-sheet";

const OPTIONS = { allowFormatCells: true, selectionMode: "Unlocked" };
const at = { sheet: "Sheet1", address: "A1:B1" };
const host = excelHost();
let sheet: Sheet;

beforeAll(() => {
  sheet = new FakeExcel().workbook.sheet("Sheet1")!;
});

beforeEach(() => {
  sheet.cells.clear();
  sheet.shapes = [];
  sheet.protection = { options: OPTIONS };
});

describe("a protected sheet", () => {
  test("is written to and protected again with the same options", async () => {
    await host.write(at, [[1, 2]]);
    expect(await host.read(at)).toEqual([[1, 2]]);
    expect(sheet.protection).toEqual({ options: OPTIONS });
  });

  test("is protected again when the write fails", async () => {
    await expect(host.write(at, [[1]])).rejects.toThrow("The argument is invalid or missing");
    expect(sheet.protection).toEqual({ options: OPTIONS });
  });

  test("with a password refuses in plain words and stays as it is", async () => {
    sheet.protection = { options: OPTIONS, password: "secret" };
    await expect(host.write(at, [[1, 2]])).rejects.toThrow(
      'The sheet "Sheet1" has a password. Take its protection off, and start again',
    );
    expect(await host.read(at)).toEqual([[null, null]]);
    expect(sheet.protection).toEqual({ options: OPTIONS, password: "secret" });
  });

  test("takes a picture and lets it go", async () => {
    const picture = { name: "Map", png: fromBase64("iVBORw=="), alternative: "A map.", at, width: 64, height: 20 };
    await host.placePicture(picture);
    expect(sheet.shapes.map(({ name, left, top, width, height }) => [name, left, top, width, height])).toEqual([
      ["Map", 0, 0, 48, 15], // 64 px and 20 px at 96 px and 72 pt an inch
    ]);
    await host.removePicture("Sheet1", "Map");
    expect(sheet.shapes).toEqual([]);
    expect(sheet.protection).toEqual({ options: OPTIONS });
  });
});

describe("a picture far down a sheet", () => {
  test("is found at its cell in a few questions", async () => {
    sheet.protection = null;
    const far = { sheet: "Sheet1", address: "XFC1048575" };
    const png = new TextEncoder().encode("picture,");
    await host.placePicture({ name: "Far", png, alternative: "", at: far, width: 10, height: 10 });
    const found = await host.pictures("Sheet1");
    expect(found.map(({ at, png }) => [at, new TextDecoder().decode(png)])).toEqual([[far, "picture, drawn anew"]]);
  });

  test("that somebody moved into a cell counts as there, and other shapes are no pictures", async () => {
    sheet.protection = null;
    await host.placePicture({
      name: "Moved",
      png: new Uint8Array([1]),
      alternative: "",
      at: { sheet: "Sheet1", address: "C7" },
      width: 10,
      height: 10,
    });
    sheet.shapes[0]!.left += 20;
    sheet.shapes[0]!.top += 14;
    sheet.shapes.push({ ...sheet.shapes[0]!, id: "box", name: "Box", type: "GeometricShape" });
    expect((await host.pictures("Sheet1")).map(({ name, at }) => [name, at.address])).toEqual([["Moved", "C7"]]);
  });
});
