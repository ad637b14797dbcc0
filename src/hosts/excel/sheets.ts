import { bookContents, refuseTaken } from "../../xlsx/parts/book-contents";
import { withoutCharts } from "../../xlsx/parts/without-charts";
import { toBase64 } from "../base64";
import { definedNames, lost, mendNames } from "./names";

/** Excel on the web adds no sheets from a file that holds charts. */
const WEB_CHARTS = "Excel on the web adds no charts: they come only with Open as a new workbook";

export async function sheetNames(context: Excel.RequestContext): Promise<string[]> {
  const sheets = context.workbook.worksheets.load("items/name");
  await context.sync();
  return sheets.items.map(({ name }) => name);
}

/** Removes a sheet, and the names that lead nowhere without it. */
export async function removeSheet(context: Excel.RequestContext, sheet: string): Promise<void> {
  const before = await definedNames(context);
  const alive = new Set(before.filter((item) => !lost(item)).map(({ name }) => name));
  context.workbook.worksheets.getItem(sheet).delete();
  for (const item of await definedNames(context)) {
    if (alive.has(item.name) && lost(item)) context.workbook.names.getItem(item.name).delete();
  }
  await context.sync();
}

/** Adds the sheets of a file at the end; names whose cells are gone don't block it. */
export async function insertSheets(context: Excel.RequestContext, file: Uint8Array): Promise<string> {
  const contents = bookContents(file);
  const names = await definedNames(context);
  const live = names.filter((item) => !lost(item)).map(({ name }) => name);
  refuseTaken(contents, await sheetNames(context), live);
  const brought = new Set(contents.names.map(({ name }) => name.toLowerCase()));
  for (const { name } of names) if (brought.has(name.toLowerCase())) context.workbook.names.getItem(name).delete();
  const bare = Office.context.platform === Office.PlatformType.OfficeOnline ? withoutCharts(file) : null;
  context.workbook.insertWorksheetsFromBase64(toBase64(bare ?? file), { positionType: "End" });
  await context.sync().catch((cause: Error) => {
    const way = "Open them as a workbook of their own instead";
    throw new Error(`Excel could not add the sheets to this workbook: ${cause.message} ${way}`, { cause });
  });
  await mendNames(context, contents.names, contents.sheets);
  return bare ? WEB_CHARTS : "";
}
