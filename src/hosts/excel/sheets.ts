import { cellAt, reference } from "../../cells/box";
import { plainAddress } from "../../cells/letters";
import { toBase64 } from "../base64";
import { definedNames, elsewhere, lost, mendNames } from "./names";

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

/** Excel may refuse sheets and add them all the same; where only some came, those are taken out again. */
async function arrivedAllTheSame(context: Excel.RequestContext, wanted: string[], cause: Error): Promise<void> {
  const there = new Set(await sheetNames(context));
  const arrived = wanted.filter((sheet) => there.has(sheet));
  if (arrived.length === wanted.length) return;
  for (const sheet of arrived) context.workbook.worksheets.getItem(sheet).delete();
  await context.sync();
  const denied = cause instanceof OfficeExtension.Error && cause.code === "AccessDenied";
  const why = denied ? "its structure is protected (Review, Protect Workbook)." : cause.message;
  const way = "Open them as a workbook of their own instead";
  throw new Error(`Excel could not add the sheets to this workbook: ${why} ${way}`, { cause });
}

/** What is wrong with formulas that Excel has turned into links to another file; "" where it has not. */
async function leadsElsewhere(context: Excel.RequestContext, sheets: string[]): Promise<string> {
  const used = sheets.map((sheet) => {
    const range = context.workbook.worksheets.getItem(sheet).getUsedRangeOrNullObject();
    return { sheet, range: range.load("formulas,address") };
  });
  await context.sync();
  const found = used.flatMap(({ sheet, range }) => {
    if (range.isNullObject) return [];
    const area = { sheet, address: plainAddress(range.address) };
    return range.formulas.flatMap((line: unknown[], row) =>
      line.flatMap((input, column) => (elsewhere(String(input)) ? [reference(cellAt(area, row, column))] : [])),
    );
  });
  if (found.length === 0) return "";
  const formulas = found.length === 1 ? "1 formula leads" : `${found.length} formulas lead`;
  return `${formulas} to another file, first ${found[0]}: undo this and open them as a workbook of their own`;
}

/** What reads a file; the pane's first load goes without it. */
const fileTools = () =>
  Promise.all([import("../../xlsx/parts/book-contents"), import("../../xlsx/parts/without-charts")]);

/** Adds the sheets of a file at the end; names whose cells are gone don't block it. */
export async function insertSheets(context: Excel.RequestContext, file: Uint8Array): Promise<string> {
  const [{ bookContents, refuseTaken }, { withoutCharts }] = await fileTools();
  const contents = bookContents(file);
  const names = await definedNames(context);
  const live = names.filter((item) => !lost(item)).map(({ name }) => name);
  refuseTaken(contents, await sheetNames(context), live);
  const brought = new Set(contents.names.map(({ name }) => name.toLowerCase()));
  for (const { name } of names) if (brought.has(name.toLowerCase())) context.workbook.names.getItem(name).delete();
  const bare = Office.context.platform === Office.PlatformType.OfficeOnline ? withoutCharts(file) : null;
  context.workbook.insertWorksheetsFromBase64(toBase64(bare ?? file), { positionType: "End" });
  await context.sync().catch((cause: Error) => arrivedAllTheSame(context, contents.sheets, cause));
  await mendNames(context, contents.names, contents.sheets);
  return [bare ? WEB_CHARTS : "", await leadsElsewhere(context, contents.sheets)].filter(Boolean).join(". ");
}
