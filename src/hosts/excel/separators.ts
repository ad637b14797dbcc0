import type { Separators } from "../host";

/** A cell of the audit workbook whose formula has arguments, and no number before the second one. */
const KNOWN = "Cause_Sentence";

const outsideTexts = (formula: string) => formula.replace(/"(?:[^"]|"")*"/g, "");

/**
 * The signs that formulas are typed with in this Excel. It tells its decimal sign, but the sign between arguments only
 * through a formula; without a known one it is taken to be that which goes with the decimal sign.
 */
export async function separators(context: Excel.RequestContext): Promise<Separators> {
  const { application, names } = context.workbook;
  const format = application.cultureInfo.numberFormat.load("numberDecimalSeparator");
  const known = names.getItemOrNullObject(KNOWN).getRangeOrNullObject().load("formulasLocal").untrack();
  await context.sync();
  const decimal = format.numberDecimalSeparator;
  const formula = known.isNullObject ? "" : String(known.formulasLocal[0]![0]);
  const [found] = /[;,]/.exec(outsideTexts(formula)) ?? [];
  return { decimal, list: found ?? (decimal === "," ? ";" : ",") };
}
