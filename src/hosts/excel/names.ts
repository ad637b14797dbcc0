import type { BookName } from "../../xlsx/desk-file/book";

/** What is in a name whose cells are gone, or that Excel lost on the way. */
const LOST = "#REF!";

/** Whether a name leads nowhere any more. */
export const lost = ({ formula }: Excel.NamedItem): boolean => String(formula).includes(LOST);

/** Whether a formula leads to another file. */
export const elsewhere = (formula: string): boolean => formula.startsWith("=") && /\[|https:/i.test(formula);

/** The defined names of the whole workbook. */
export async function definedNames(context: Excel.RequestContext): Promise<Excel.NamedItem[]> {
  const names = context.workbook.names.load("items/name,items/formula");
  await context.sync();
  return [...names.items];
}

/**
 * Makes the names that should have come with inserted sheets what they were in their file: Excel may drop them,
 * keep them for one sheet only, or lose what they refer to.
 */
export async function mendNames(context: Excel.RequestContext, wanted: BookName[], sheets: string[]): Promise<void> {
  const { names, worksheets } = context.workbook;
  const own = sheets.map((sheet) => worksheets.getItem(sheet).names.load("items/name"));
  const arrived = new Map((await definedNames(context)).map((item) => [item.name.toLowerCase(), item]));
  const known = new Set(wanted.map(({ name }) => name.toLowerCase()));
  for (const local of own) {
    for (const { name } of local.items) if (known.has(name.toLowerCase())) local.getItem(name).delete();
  }
  for (const { name, reference } of wanted) {
    const item = arrived.get(name.toLowerCase());
    if (!item) names.add(name, `=${reference}`);
    else if (lost(item) || elsewhere(String(item.formula))) names.getItem(name).formula = `=${reference}`;
  }
  await context.sync();
}
