import type { Write } from "../host";
import { onSheet } from "./protection";

const put = (sheet: Excel.Worksheet, { area, inputs }: Write): void => {
  const range = sheet.getRange(area.address);
  range.formulas = inputs;
  range.untrack();
};

/** Writes into several areas with one request; sheet by sheet where a protected one refuses. */
export async function writeTogether(context: Excel.RequestContext, writes: readonly Write[]): Promise<void> {
  const sheets = [...new Set(writes.map(({ area }) => area.sheet))];
  if (sheets.length > 1) {
    try {
      for (const write of writes) put(context.workbook.worksheets.getItem(write.area.sheet), write);
      await context.sync();
      return;
    } catch {
      // what was refused is said by the sheet that refuses again
    }
  }
  for (const sheet of sheets) {
    await onSheet(context, sheet, (on) => {
      for (const write of writes) if (write.area.sheet === sheet) put(on, write);
    });
  }
}
