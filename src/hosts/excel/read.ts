import type { Area } from "../../cells/area";
import { type Box, boxAddress, boxOf, cellAt } from "../../cells/box";
import type { Cell, Input } from "../../cells/cell";
import { plainAddress } from "../../cells/letters";
import { typedNames } from "../../cells/stored-name";
import type { Filled } from "../snapshot";

/** Excel on the web refuses answers over 5 MB; a cell takes up to about 50 bytes with its type. */
const CELLS_A_REQUEST = 50_000;

/** An area to read, and whether what was typed there is wanted too. */
export interface Asked {
  area: Area;
  typed: boolean;
}

/** Some rows of an area, as one range. */
interface Part {
  of: Filled;
  /** Its first row in the area, from 0. */
  from: number;
  range: Excel.Range;
}

interface Place {
  inputs: Input[][];
  row: number;
  column: number;
  address: string;
  parent: Excel.Range;
}

function cell(value: unknown, type: string): Cell {
  if (type === "Empty") return null;
  if (type === "Error") return { error: String(value) };
  return value as Cell;
}

const plainInput = (input: Input): Input => (typeof input === "string" ? typedNames(input) : input);

/** Excel may show the anchor's formula in the body of a spill, so each such cell is asked where its spill begins. */
function spillPlaces(context: Excel.RequestContext, parts: readonly Part[]): Place[] {
  return parts
    .filter(({ of, range }) => of.inputs && range.hasSpill !== false)
    .flatMap(({ of: { area, inputs }, from, range }) => {
      const sheet = context.workbook.worksheets.getItem(area.sheet);
      return range.formulas.flatMap((line: Input[], i) =>
        line.flatMap((input, column) => {
          if (input === "") return [];
          const row = from + i;
          const { address } = cellAt(area, row, column);
          const cell = sheet.getRange(address).untrack();
          return [
            {
              inputs: inputs!,
              row,
              column,
              address,
              parent: cell.getSpillParentOrNullObject().load("address").untrack(),
            },
          ];
        }),
      );
    });
}

/** Boxes of so many rows that each is one request. */
function slices(box: Box): Box[] {
  const step = Math.max(1, Math.floor(CELLS_A_REQUEST / box.columns));
  return Array.from({ length: Math.ceil(box.rows / step) }, (_, index) => ({
    ...box,
    row: box.row + index * step,
    rows: Math.min(step, box.rows - index * step),
  }));
}

/** What areas hold, ranges untracked so that no request follows to let go of them: as few requests as their size asks for, and one more where a spill is among what was typed. */
export async function readAreas(context: Excel.RequestContext, asked: readonly Asked[]): Promise<Filled[]> {
  const all = asked.map(({ area, typed }): Filled => ({ area, cells: [], inputs: typed ? [] : null }));
  const parts: Part[] = [];
  let pending = 0;
  for (const filled of all) {
    const sheet = context.workbook.worksheets.getItem(filled.area.sheet);
    const whole = boxOf(filled.area);
    for (const box of slices(whole)) {
      const cells = box.rows * box.columns * (filled.inputs ? 2 : 1);
      if (pending > 0 && pending + cells > CELLS_A_REQUEST) {
        await context.sync();
        pending = 0;
      }
      const range = sheet.getRange(boxAddress(box));
      range.load(filled.inputs ? "values,valueTypes,formulas,hasSpill" : "values,valueTypes").untrack();
      parts.push({ of: filled, from: box.row - whole.row, range });
      pending += cells;
    }
  }
  if (pending > 0) await context.sync();
  for (const { of, range } of parts) {
    range.values.forEach((line, i) => {
      of.cells.push(line.map((value, j) => cell(value, range.valueTypes[i]![j]!)));
    });
    if (of.inputs) for (const line of range.formulas as Input[][]) of.inputs.push(line.map(plainInput));
  }
  const places = spillPlaces(context, parts);
  if (places.length > 0) await context.sync();
  for (const { inputs, row, column, address, parent } of places) {
    const body = !parent.isNullObject && plainAddress(parent.address) !== address;
    if (body) inputs[row]![column] = "";
  }
  return all;
}
