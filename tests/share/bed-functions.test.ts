import { Workbook } from "@cj-tech-master/excelts";
import { beforeAll, expect, it } from "vitest";
import { bedCauses, bedInterval } from "../../src/functions/bed";
import { checkCopy } from "../../src/share/check/check-copy";
import { howComputed } from "../../src/share/copy/how-computed";
import { shareCopy } from "../../src/share/copy/share-copy";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { clearBed } from "../core/bed/made-beds";
import { fakeCustomFunctions } from "../support/custom-functions";

const { grid, across, along, radius, heads } = clearBed("one weak head");
const PLACES = 'B1:H1,A2:A10,9,12,3,3.2,"border"';
const CAUSES = `CANFALL.BED.CAUSES(B2:H10,${PLACES},,,J2:K21)`;
const INTERVAL = `CANFALL.BED.INTERVAL(B2:H10,${PLACES},"DU.QUARTER",,,J2:K21)`;
const values = {} as Record<"causes" | "interval", (string | number)[][]>;
let copy: Uint8Array;

beforeAll(async () => {
  fakeCustomFunctions();
  const rows = grid.map((row) => row.map((caught) => caught!));
  const [columns, lines] = [[[...across]], along.map((y) => [y])];
  const size = [9, 12, 3, radius, "border"] as const;
  const places = heads!.map(({ x, y }) => [x, y]);
  values.causes = bedCauses(rows, columns, lines, ...size, undefined, undefined, places) as (string | number)[][];
  values.interval = bedInterval(rows, columns, lines, ...size, "DU.QUARTER", undefined, undefined, places);
  const workbook = new Workbook();
  const sheet = workbook.addWorksheet("Bed");
  const put = (row: number, column: number, value: number | string) => {
    sheet.getCell(row, column).value = value;
  };
  const putAll = (row: number, column: number, table: readonly (readonly (number | string)[])[]) => {
    for (const [r, line] of table.entries()) for (const [c, value] of line.entries()) put(row + r, column + c, value);
  };
  putAll(1, 2, [across]);
  putAll(
    2,
    1,
    along.map((y) => [y]),
  );
  putAll(2, 2, rows);
  putAll(2, 10, places);
  const spill = (row: number, formula: string, table: (string | number)[][]) => {
    putAll(row, 13, table);
    const ref = `M${row}:${String.fromCharCode(76 + table[0]!.length)}${row + table.length - 1}`;
    sheet.getCell(row, 13).value = { formula, result: table[0]![0]!, shareType: "array", ref, isDynamicArray: true };
  };
  spill(1, CAUSES, values.causes);
  spill(20, INTERVAL, values.interval);
  copy = await shareCopy(new Uint8Array(await workbook.xlsx.writeBuffer()), new Date(2026, 10, 25));
});

it("a share copy keeps each value of BED.CAUSES and BED.INTERVAL, and no formula of the add-in", () => {
  const { cells } = openBook(copy).sheets.find(({ name }) => name === "Bed")!;
  for (const [row, table] of [
    [1, values.causes],
    [20, values.interval],
  ] as const) {
    table.forEach((line, r) => {
      line.forEach((value, c) => {
        const at = `${String.fromCharCode(77 + c)}${row + r}`;
        expect(cells.get(at)?.value ?? "", at).toBe(value);
        expect(cells.get(at)?.formula, at).toBeUndefined();
      });
    });
  }
});

it("its Evidence says how both were computed, and the copy agrees", async () => {
  const { cells } = openBook(copy).sheets.find(({ name }) => name === "Evidence")!;
  const said = [...cells.values()].map(({ value }) => String(value)).join("\n");
  for (const id of ["BED.CAUSES", "BED.INTERVAL"]) expect(said).toContain(howComputed([id]));
  expect((await checkCopy(copy)).findings).toEqual([]);
});
