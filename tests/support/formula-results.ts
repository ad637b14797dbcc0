import { Workbook } from "@cj-tech-master/excelts";
import type { Results } from "../../src/workbook/build";

/** What each formula of a file gave when the file was saved, by `Sheet!A1`; errors by their name. */
export async function formulaResults(file: Uint8Array): Promise<Results> {
  const book = new Workbook();
  await book.xlsx.load(file);
  const results = new Map<string, string | number | boolean>();
  for (const sheet of book.worksheets) {
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        if (!cell.formula) return;
        const result = cell.result as string | number | boolean | { error: string } | undefined;
        results.set(`${sheet.name}!${cell.address}`, typeof result === "object" ? result.error : (result ?? ""));
      });
    });
  }
  return results;
}
