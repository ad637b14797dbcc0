import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import type { Results } from "../../src/workbook/build";

const DAY_ZERO = Date.UTC(1899, 11, 30);
const MS_A_DAY = 86_400_000;

/** What each formula of a file gave when the file was saved, by `Sheet!A1`; errors by their name. */
export async function formulaResults(file: Uint8Array): Promise<Results> {
  installChartSupport();
  const book = new Workbook();
  await book.xlsx.load(file);
  const results = new Map<string, string | number | boolean>();
  for (const sheet of book.worksheets) {
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        if (!cell.formula) return;
        const result = cell.result as string | number | boolean | Date | { error: string } | undefined;
        const place = `${sheet.name}!${cell.address}`;
        if (result instanceof Date) results.set(place, (result.getTime() - DAY_ZERO) / MS_A_DAY);
        else results.set(place, typeof result === "object" ? result.error : (result ?? ""));
      });
    });
  }
  return results;
}
