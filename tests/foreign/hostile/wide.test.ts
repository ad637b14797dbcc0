import { zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { InputError } from "../../../src/core/errors";
import { XlsxFile } from "../../../src/xlsx/desk-file/desk-file";
import { foreignParts } from "../foreign-parts";
import { FAR } from "./far";
import { hostileFile } from "./generator";
import { WIDE } from "./wide";

it("a table over a whole column opens as the cells that it holds", async () => {
  const { wrong, file } = hostileFile(117);
  expect(wrong).toContain("a table out of the sheet");
  const [sheet] = (await XlsxFile.open(file)).book().sheets;
  expect(sheet).toMatchObject({ rows: 12, columns: 4 });
});

it("rows without a value are hidden, high and open to entries as the file says, with the look of their cells", async () => {
  const parts = foreignParts();
  const xml = new TextDecoder().decode(parts["xl/worksheets/sheet1.xml"]);
  const row = '<row r="14" ht="30" customHeight="1"><c r="A14" s="2"/><c r="B14" s="3"/></row></sheetData>';
  parts["xl/worksheets/sheet1.xml"] = new TextEncoder().encode(xml.replace("</sheetData>", row));
  const [sheet] = (await XlsxFile.open(zipSync(parts))).book().sheets;
  expect(sheet!.hiddenRows).toEqual([5, 6]);
  expect(sheet!.heights).toMatchObject({ 9: 30, 13: 40 }); // 22.5 and 30 pt at 4/3 px a point
  expect(sheet!.unlocked).toContain("13 0");
  expect(sheet!.cells).toContainEqual({ row: 13, column: 1, input: "", look: expect.objectContaining({ bold: true }) });
});

describe("a file that covers whole sheets or reaches far out opens, or is refused in one sentence:", () => {
  it.each([...WIDE, ...FAR])("%s %s", async (_, outcome, parts) => {
    const problem = await XlsxFile.open(zipSync(parts())).then(
      () => null,
      (reason: unknown) => reason,
    );
    if (outcome === "opens") expect(problem).toBeNull();
    else {
      expect(problem).toBeInstanceOf(InputError);
      expect((problem as InputError).message).toMatch(/^the file must [^\n]+, got [^\n]+ in ('Bed 7'!\w+|Bed 7)$/);
    }
  });
});
