import { Workbook } from "@cj-tech-master/excelts";
import { describe, expect, test } from "vitest";
import type { BookPicture, BookSheet, SheetChange } from "../../src/xlsx/desk-file/book";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { formFile } from "./form-sample";
import { sampleFile, unseen } from "./xlsx-sample";

const unchanged = ({ key, name }: BookSheet): SheetChange => ({ key, name, widths: {}, cells: [] });

async function load(bytes: Uint8Array): Promise<Workbook> {
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  return workbook;
}

/** What a sheet's file holds beside the values of its cells. */
function parts(workbook: Workbook, name: string): unknown {
  const sheet = workbook.getWorksheet(name)!;
  const { id: _, media, drawing: __, ...model } = sheet.model;
  const images = media.map((image) => ("range" in image ? image.range : image.type));
  return { ...model, images, bytes: sheet.getImages().map(({ imageId }) => workbook.getImage(imageId!)?.buffer) };
}

describe("a file as a form", () => {
  test("its sheet opens with its shape, its checks and its protection", async () => {
    const [sheet] = (await XlsxFile.open(await formFile())).book().sheets;
    expect(sheet).toMatchObject({
      name: "Cans",
      tab: "#01665E",
      gridLines: false,
      frozen: { rows: 1, columns: 0 },
      merges: [{ startRow: 0, endRow: 0, startColumn: 0, endColumn: 3 }],
      heights: { 0: 48 }, // 36 pt at 4/3 px a point
      widths: { 0: 173 }, // 24 characters of 7 px and 5 px of padding
      notes: [{ row: 6, column: 1, text: "the sum of the readings" }],
      unlocked: ["2 1", "3 1", "4 1", "5 1", "9 0", "9 1", "9 2", "9 3"],
    });
  });

  test("checks are read as people would type them", async () => {
    const [sheet] = (await XlsxFile.open(await formFile())).book().sheets;
    const at = (row: number) =>
      sheet!.validations.find(({ places }) => places[0]!.startRow === row && places[0]!.startColumn === 1)!;
    const rules = [2, 3, 4, 5].map(at).map(({ type, operator, formulas }) => [type, operator, formulas]);
    expect(rules).toEqual([
      ["list", undefined, ["mains,bore,dam,recycled"]],
      ["list", undefined, ["=Lists!$A$1:$A$3"]],
      ["decimal", "between", ["1", "600"]],
      ["date", "greaterThan", ["36526"]], // 1 January 2000 as Excel counts days
    ]);
    expect(at(2)).toMatchObject({
      refusal: { style: "stop", title: "Water source", text: "Choose one from the list" },
      prompt: { title: "Water source", text: "Recycled water needs care" },
    });
  });

  test("conditional formats become formulas, the one that wins first", async () => {
    const [sheet] = (await XlsxFile.open(await formFile())).book().sheets;
    expect(sheet!.conditions.map(({ formula, look }) => [formula, look])).toEqual([
      ["=A10=MAX($A$10:$D$10)", { bold: true, colour: "#FFFFFF", fill: "#5AB4AC" }],
      ["=A10<25", { fill: "#D8B365" }],
    ]);
  });

  test("a hidden sheet stays hidden", async () => {
    const { sheets } = (await XlsxFile.open(await formFile())).book();
    expect(sheets.map(({ name, hidden }) => [name, hidden])).toEqual([
      ["Cans", false],
      ["Lists", true],
    ]);
  });
});

describe("inserted sheets", () => {
  test("are saved with all that their file held, behind what was there", async () => {
    const file = await XlsxFile.open(await sampleFile());
    const there = file.book().sheets;
    const { sheets, names } = file.insert(await XlsxFile.open(await formFile()));
    expect(names).toEqual([{ name: "Sum_Readings", reference: "Cans!$B$7" }]);
    const change = { sheets: [...there, ...sheets].map(unchanged), addedNames: [], removedNames: [] };
    const saved = await file.save(change);
    const workbook = await load(saved);
    const source = await load(await formFile());
    expect(workbook.worksheets.map(({ name }) => name)).toEqual(["Bed 7", "Hidden", "Cans", "Lists"]);
    for (const name of ["Cans", "Lists"]) expect(parts(workbook, name)).toEqual(parts(source, name));
    expect(await unseen(saved)).toEqual(await unseen(await sampleFile()));
    expect(workbook.definedNames.getRanges("Sum_Readings").ranges).toEqual(["Cans!$B$7"]);
  });

  test("keep their own pictures beside those that were there", async () => {
    const renamed = (sheet: BookSheet, said: string): SheetChange => ({
      ...unchanged(sheet),
      pictures: sheet.pictures.map((picture) => ({ ...picture, name: said, alternative: `${said} & "more" <here>` })),
    });
    const first = await XlsxFile.open(await formFile());
    first.insert(await XlsxFile.open(await formFile("More", "Sum_More")));
    const sheets = first.book().sheets.map((sheet) => renamed(sheet, sheet.name));
    const saved = await first.save({ sheets, addedNames: [], removedNames: [] });
    const words = (await XlsxFile.open(saved))
      .book()
      .sheets.map(({ name, pictures }) => [name, pictures.map(({ name: said, alternative }) => [said, alternative])]);
    expect(words.filter(([, pictures]) => pictures!.length > 0)).toEqual([
      ["Cans", [["Cans", 'Cans & "more" <here>']]],
      ["More", [["More", 'More & "more" <here>']]],
    ]);
  });
});

describe("pictures", () => {
  test("placed on a sheet are saved with their words and open again as they were", async () => {
    const file = await XlsxFile.open(await sampleFile());
    const source = (await XlsxFile.open(await formFile())).book().sheets[0]!.pictures[0]!;
    const picture: BookPicture = {
      ...source,
      name: "Coverage",
      alternative: "7 of 25 cans get less",
      from: { row: 2, column: 4, right: 3, down: 5 },
      to: { row: 9, column: 8, right: 7, down: 11 },
    };
    const sheets = file.book().sheets.map(unchanged);
    sheets[0]!.pictures = [picture];
    const saved = await file.save({ sheets, addedNames: [], removedNames: [] });
    const again = await XlsxFile.open(saved);
    expect(again.book().sheets[0]!.pictures).toEqual([picture]);
    const kept = await again.save({ sheets: again.book().sheets.map(unchanged), addedNames: [], removedNames: [] });
    expect((await XlsxFile.open(kept)).book().sheets[0]!.pictures).toEqual([picture]);
    expect(await unseen(kept)).toEqual(await unseen(await sampleFile()));
  });
});

test("a freeze made at the desk is saved, and one taken off is gone", async () => {
  const file = await XlsxFile.open(await sampleFile());
  const [bed, hidden] = file.book().sheets;
  const frozen = { rows: 0, columns: 0 };
  const change = [
    { ...unchanged(bed!), frozen },
    { ...unchanged(hidden!), frozen: { rows: 2, columns: 1 } },
  ];
  const again = await XlsxFile.open(await file.save({ sheets: change, addedNames: [], removedNames: [] }));
  expect(again.book().sheets.map((sheet) => sheet.frozen)).toEqual([frozen, { rows: 2, columns: 1 }]);
});
