import { placeName } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { InputError } from "../../core/errors";
import type { FileBook } from "../../xlsx/parts/workbook-file";

const FEWEST_FORMULAS = 20;

/** A file whose formulas have no values yet. */
export class NotCalculated extends InputError {
  constructor() {
    super("the file", "be calculated", "not calculated yet");
    this.message = "not calculated yet: open it in a spreadsheet program and save";
  }
}

/** @throws NotCalculated if a program saved the file without the values of its formulas */
export function mustBeCalculated({ sheets }: FileBook): void {
  const formulas = sheets.flatMap(({ cells }) => [...cells.values()].filter(({ formula }) => formula !== undefined));
  const none = formulas.every(({ value, error }) => error === undefined && value === null);
  if (formulas.length >= FEWEST_FORMULAS && none) throw new NotCalculated();
}

const isX = (value: Stated) => typeof value === "string" && ["", "X"].includes(value.trim().toUpperCase());

/** Why readings cannot give figures: the first that is no reading; "" where each is one. */
export function wrongReading(readings: readonly { address: string; value: Stated }[], sheet: string): string {
  const wrong = readings.find(({ value }) => (typeof value === "number" ? value < 0 : !isX(value)));
  if (!wrong) return "";
  const what = typeof wrong.value === "number" ? "below 0" : typeof wrong.value === "string" ? "text" : "no number";
  return `the reading in ${placeName(sheet, wrong.address)} is ${what}`;
}
