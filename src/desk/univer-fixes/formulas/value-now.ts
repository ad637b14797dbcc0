import type { Injector, IRange } from "@univerjs/core";
import {
  type ArrayValueObject,
  AstTreeBuilder,
  type BaseReferenceObject,
  type BaseValueObject,
  generateAstNode,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  Interpreter,
  Lexer,
} from "@univerjs/preset-sheets-core";
import { readAnew } from "./old-values";

interface Place {
  unit: string;
  sheet: string;
  row: number;
  column: number;
}

/** The cells that the last formula read, while they can't have changed since. */
let known: string | null = null;

function know(config: IFormulaCurrentConfigService, unit: string): void {
  if (known === unit) return;
  config.loadDataLite();
  known = unit;
  setTimeout(() => {
    known = null;
  });
}

type Corner = Pick<Place, "row" | "column">;

function answerNow(injector: Injector, formula: string, first: Corner, at: Place): BaseValueObject {
  const config = injector.get(IFormulaCurrentConfigService);
  know(config, at.unit);
  const { rowCount, columnCount } = config.getSheetRowColumnCount(at.unit, at.sheet);
  injector.get(IFormulaRuntimeService).setCurrent(at.row, at.column, rowCount, columnCount, at.sheet, at.unit);
  const node = generateAstNode(at.unit, formula, injector.get(Lexer), injector.get(AstTreeBuilder), config);
  const [refOffsetX, refOffsetY] = [at.column - first.column, at.row - first.row];
  const answer = readAnew(() => injector.get(Interpreter).execute({ node, refOffsetX, refOffsetY }));
  node.resetCalculationState();
  const isRange = answer.isReferenceObject();
  return isRange ? (answer as BaseReferenceObject).toArrayValueObject(false) : (answer as BaseValueObject);
}

/** What a formula that is written for the cell `first` gives for another cell, as the cells are now. */
export function valueNow(injector: Injector, formula: string, first: Corner, at: Place): unknown {
  const value = answerNow(injector, formula, first, at);
  return (value.isArray() ? (value as ArrayValueObject).getFirstCell() : value).getValue();
}

/** Every value of the range that a formula gives for its cell, as the cells are now. */
export function valuesNow(injector: Injector, formula: string, at: Place): unknown[] {
  const value = answerNow(injector, formula, at, at);
  const all = value.isArray() ? (value as ArrayValueObject).getArrayValue().flat() : [value];
  return all.flatMap((one) => (one && !one.isNull() && !one.isError() ? [one.getValue()] : []));
}

/** The cell that formulas over these ranges are written for. */
export function firstCell(ranges: IRange[]): Corner {
  const [first] = [...ranges].sort((a, b) => a.startRow - b.startRow || a.startColumn - b.startColumn);
  return { row: first?.startRow ?? 0, column: first?.startColumn ?? 0 };
}
