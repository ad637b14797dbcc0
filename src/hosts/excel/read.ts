import type { Cell, Input } from "../../cells/cell";
import { plainAddress } from "../../cells/letters";
import { typedNames } from "../../cells/stored-name";

/** Excel on the web refuses answers over 5 MB; a cell takes up to about 50 bytes with its type. */
const CELLS_A_REQUEST = 50_000;

function cell(value: unknown, type: string): Cell {
  if (type === "Empty") return null;
  if (type === "Error") return { error: String(value) };
  return value as Cell;
}

/** The values of a range, in as many requests as its size asks for. */
export async function values(range: Excel.Range): Promise<Cell[][]> {
  range.load("rowCount,columnCount");
  await range.context.sync();
  const { rowCount, columnCount } = range;
  const step = Math.max(1, Math.floor(CELLS_A_REQUEST / columnCount));
  const cells: Cell[][] = [];
  for (let row = 0; row < rowCount; row += step) {
    const height = Math.min(step, rowCount - row);
    const part = range.getCell(row, 0).getResizedRange(height - 1, columnCount - 1);
    part.load("values,valueTypes");
    await range.context.sync();
    part.values.forEach((line, i) => {
      cells.push(line.map((value, j) => cell(value, part.valueTypes[i]![j]!)));
    });
  }
  return cells;
}

interface Place {
  row: number;
  column: number;
  cell: Excel.Range;
  parent: Excel.Range;
}

/** What was typed into a range; Excel may show the anchor's formula in the body of a spill, so each such cell is asked. */
export async function typed(range: Excel.Range): Promise<Input[][]> {
  range.load("formulas,hasSpill");
  await range.context.sync();
  const inputs: Input[][] = range.formulas.map((line: Input[]) =>
    line.map((input) => (typeof input === "string" ? typedNames(input) : input)),
  );
  if (range.hasSpill === false) return inputs;
  const places: Place[] = [];
  inputs.forEach((line, row) => {
    line.forEach((input, column) => {
      if (input === "") return;
      const one = range.getCell(row, column);
      const parent = one.getSpillParentOrNullObject();
      one.load("address");
      parent.load("address");
      places.push({ row, column, cell: one, parent });
    });
  });
  await range.context.sync();
  for (const { row, column, cell: one, parent } of places) {
    const body = !parent.isNullObject && plainAddress(parent.address) !== plainAddress(one.address);
    if (body) inputs[row]![column] = "";
  }
  return inputs;
}
