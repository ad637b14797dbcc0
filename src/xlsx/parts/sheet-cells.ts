import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import { cellAt } from "../../cells/places";
import { addressParts } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { InputError } from "../../core/errors";
import { attributesOf } from "./attributes";
import { XmlScanner } from "./xml";

/** What is in a cell of a file. */
export interface FileCell {
  value: Stated;
  /** Name of the error that it shows, such as `#NAME?`. */
  error?: string;
  /** As the file holds it, without `=`. */
  formula?: string;
  /** The cells that an array formula fills. */
  fills?: string;
  /** Attributes of the cell's tag, such as its style. */
  given: ReadonlyMap<string, string>;
  /** Where the cell's tag lies in the part. */
  start: number;
  end: number;
}

const MOST_CELLS = 1_000_000;
const LONGEST_FORMULA = 8192;
const ESCAPED_SIGN = /_x([0-9A-F]{4})_/gi;

/** A text of a file, in which `_x000D_` is for a sign that xml cannot hold. */
export function plainText(text: string): string {
  return !text.includes("_x")
    ? text
    : text.replace(ESCAPED_SIGN, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

function read(cell: FileCell, type: string, text: string, shared: readonly string[]): void {
  if (type === "s") cell.value = shared[Number(text)] ?? null;
  else if (type === "b") cell.value = text.trim() === "1";
  else if (type === "e") cell.error = text.trim();
  else if (type !== "n") cell.value = plainText(text);
  else if (text.trim() !== "") {
    const number = Number(text);
    if (!Number.isFinite(number)) throw new InputError("the file", "hold numbers as numbers", text);
    cell.value = number;
  }
}

interface Master {
  text: string;
  at: string;
}

/** The formula at a cell that shares it with another one further up. */
function sharedFormula({ text, at }: Master, here: string): string {
  return translateFormulaToA1(translateFormulaToR1C1(text, at), here);
}

/** The cells of a sheet that hold something or have a style, by address, in the order of the file. */
export function sheetCells(xml: string, shared: readonly string[]): Map<string, FileCell> {
  const cells = new Map<string, FileCell>();
  const masters = new Map<string, Master>();
  let row = 0;
  let column = 0;
  let address = "";
  let start = 0;
  let given = new Map<string, string>();
  let formula: Map<string, string> | null = null;
  let formulaText = "";
  let text: string | null = null;
  let inside = "";
  const close = (end: number) => {
    const cell: FileCell = { value: null, given, start, end };
    if (text !== null) read(cell, given.get("t") ?? "n", text, shared);
    if (formula) {
      const index = formula.get("si");
      const master = formula.get("t") === "shared" && index !== undefined ? masters.get(index) : undefined;
      if (formulaText === "" && master) formulaText = sharedFormula(master, address);
      else if (index !== undefined) masters.set(index, { text: formulaText, at: address });
      if (formulaText.length > LONGEST_FORMULA)
        throw new InputError("the file", "hold no formula without end", address);
      cell.formula = formulaText;
      const fills = formula.get("ref");
      if (formula.get("t") === "array" && fills) cell.fills = fills;
    }
    cells.set(address, cell);
    if (cells.size > MOST_CELLS) throw new InputError("the file", `hold at most ${MOST_CELLS} cells a sheet`, "more");
  };
  const scanner = new XmlScanner(xml);
  while (scanner.next()) {
    const { kind, name } = scanner;
    if (kind === "text") {
      if (inside === "f") formulaText += scanner.text();
      else if (inside === "v" || inside === "t") text = (text ?? "") + scanner.text();
    } else if (kind === "close") {
      if (name === "c") close(scanner.end);
      else if (name === "sheetData") return cells;
      inside = "";
    } else if (name === "row") {
      row = Number(attributesOf(scanner.source()).get("r") ?? row + 1);
      column = 0;
    } else if (name === "c") {
      given = attributesOf(scanner.source());
      address = given.get("r") ?? cellAt(row, column + 1);
      column = addressParts(address).column;
      if (cells.has(address)) throw new InputError("the file", "hold each cell once", address);
      [start, text, formula, formulaText] = [scanner.start, null, null, ""];
      if (kind === "empty") close(scanner.end);
    } else {
      if (name === "v") text ??= "";
      if (name === "f") formula = attributesOf(scanner.source());
      inside = kind === "open" ? name : "";
    }
  }
  return cells;
}
