import type { Area } from "../../src/cells/area";
import { boxOf } from "../../src/cells/box";
import type { Input } from "../../src/cells/cell";
import { columnLetters, plainAddress } from "../../src/cells/letters";

/** Loaded on demand: most tests of the pane need no files. */
const files = () => import("../../src/xlsx/desk-file/desk-file");

/** What the memory host keeps: inputs by sheet and address, and defined names. */
export interface MemoryBook {
  sheets: Map<string, Map<string, Input>>;
  names: Map<string, Area>;
}

function areaOf(reference: string): Area {
  const [, sheet] = /^'?(.*?)'?!/.exec(reference)!;
  return { sheet: sheet!.replaceAll("''", "'"), address: plainAddress(reference) };
}

/** The inputs and names of a workbook file. */
export async function bookOfFile(file: Uint8Array): Promise<MemoryBook> {
  const { XlsxFile } = await files();
  const { sheets, names } = (await XlsxFile.open(file)).book();
  return {
    sheets: new Map(
      sheets.map(({ name, cells }) => [
        name,
        new Map(
          cells
            .filter(({ input }) => input !== "")
            .map(({ row, column, input }) => [`${columnLetters(column + 1)}${row + 1}`, input]),
        ),
      ]),
    ),
    names: new Map(names.map(({ name, reference }) => [name, areaOf(reference)])),
  };
}

/** A workbook file with these inputs and names. */
export async function fileOfBook({ sheets, names }: MemoryBook): Promise<Uint8Array> {
  const cell = (sheet: string, address: string, input: Input) => {
    const { row, column } = boxOf({ sheet, address });
    return { row: row - 1, column: column - 1, input: typeof input === "string" ? input.replace(/^'/, "") : input };
  };
  const { XlsxFile } = await files();
  return XlsxFile.blank().save({
    sheets: [...sheets].map(([name, inputs]) => ({
      key: name,
      name,
      widths: {},
      cells: [...inputs].map(([address, input]) => cell(name, address, input)),
    })),
    addedNames: [...names].map(([name, { sheet, address }]) => ({
      name,
      reference: `'${sheet.replaceAll("'", "''")}'!${address.replaceAll(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`,
    })),
    removedNames: [],
  });
}
