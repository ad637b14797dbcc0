import { expect, it } from "vitest";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { hostileFile } from "./hostile-generator";

it("a table over a whole column opens as the cells that it holds", async () => {
  const { wrong, file } = hostileFile(117);
  expect(wrong).toContain("a table out of the sheet");
  const [sheet] = (await XlsxFile.open(file)).book().sheets;
  expect(sheet).toMatchObject({ rows: 12, columns: 4 });
});
