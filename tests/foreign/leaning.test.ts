import { strFromU8, strToU8, zipSync } from "fflate";
import { expect, it } from "vitest";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { foreignParts } from "./foreign-parts";

const BOOK = "xl/_rels/workbook.xml.rels";
const CACHE = "xl/slicerCaches/slicerCache1.xml";
const MS = "http://schemas.microsoft.com/office";

/** The workbook with a slicer's cache on its table, which is on Bed 7, as its pivot table's source is. */
function parts(tableId: string): Record<string, Uint8Array> {
  const all = foreignParts();
  const relation = `<Relationship Id="rId90" Type="${MS}/2007/relationships/slicerCache" Target="slicerCaches/slicerCache1.xml"/>`;
  const cache = `<slicerCacheDefinition xmlns="${MS}/spreadsheetml/2009/9/main" name="Slicer_Head"><extLst><x:ext xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x15:tableSlicerCache xmlns:x15="${MS}/spreadsheetml/2010/11/main" tableId="${tableId}" column="1"/></x:ext></extLst></slicerCacheDefinition>`;
  return {
    ...all,
    [BOOK]: strToU8(strFromU8(all[BOOK]!).replace("</Relationships>", `${relation}</Relationships>`)),
    [CACHE]: strToU8(cache),
  };
}

it("slicers and pivot tables are known to lean on the sheet of their table or source, and on no other", async () => {
  const table = /<table [^>]*?\bid="(\d+)"/.exec(strFromU8(foreignParts()["xl/tables/table1.xml"]!))![1]!;
  const file = await XlsxFile.open(zipSync(parts(table)));
  const leaning = file.book().sheets.map(({ key, name }) => [name, file.leaningOn(key)]);
  expect(leaning).toEqual([
    ["Bed 7", ["slicers", "pivot tables"]],
    ["Secret", []],
  ]);
  const other = await XlsxFile.open(zipSync(parts("99")));
  expect(other.leaningOn(other.book().sheets[0]!.key)).toEqual(["pivot tables"]);
});
