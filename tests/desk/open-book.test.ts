import { strFromU8, strToU8, zipSync } from "fflate";
import { expect, it } from "vitest";
import { gridWorkbook } from "../../src/desk/files/open-book";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { foreignParts } from "../foreign/foreign-parts";

const SHEET = "xl/worksheets/sheet1.xml";

it("texts of a file stay texts at the desk, also those that would be numbers if they were typed", async () => {
  const parts = foreignParts();
  const texts = ["12", "TRUE", "'quoted"];
  const cells = texts.map((text, i) => `<c r="${"ABC"[i]}13" t="inlineStr"><is><t>${text}</t></is></c>`).join("");
  const sheet = strFromU8(parts[SHEET]!).replace("</sheetData>", `<row r="13">${cells}</row></sheetData>`);
  const file = await XlsxFile.open(zipSync({ ...parts, [SHEET]: strToU8(sheet) }));
  const { sheets = {} } = gridWorkbook(file.book(), "book", "bed.xlsx");
  const row = Object.values(sheets)[0]!.cellData![12]!;
  expect([0, 1, 2].map((column) => [row[column]?.v, row[column]?.t])).toEqual(texts.map((text) => [text, 1]));
});
