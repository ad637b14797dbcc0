import type {} from "@univerjs/preset-sheets-core";
import { strFromU8, unzipSync, zipSync } from "fflate";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { beyondParts } from "../foreign/beyond-parts";
import { type Desks, desks, openFile, savedFile } from "./desk-page";

const SECRET = "xl/worksheets/sheet2.xml";

let all: Desks;
beforeAll(async () => {
  all = await desks();
});
afterAll(() => all?.close());

const values = (file: Uint8Array) => {
  const { cells } = openBook(file).sheets[1]!;
  return [...cells.values()].filter(({ formula }) => formula).map(({ value, error }) => error ?? value);
};
/** What the file says, line by line. */
const HELD = [2, 3, 2, 2, 9, 9, 4, 63, 5.5555, 5.5555, 10, 180, 8, 5, 22, 6];

test("kept-values: what the desk can't calculate keeps the file's value, and what reads it follows that, in words", async () => {
  const before = beyondParts();
  const desk = await all.open();
  await openFile(desk, zipSync(before), "beyond.xlsx");
  await desk.page
    .getByText("12 formulas can't be calculated here and keep the file's values, the first in Secret!A2")
    .waitFor();
  await desk.page.getByText("circle: Secret!A4, Secret!B4. They keep the file's values").waitFor();
  const untouched = await savedFile(desk);
  expect(strFromU8(unzipSync(untouched)[SECRET]!)).toBe(strFromU8(before[SECRET]!));
  await desk.write("A1", 6, "Secret");
  const changed = await savedFile(desk);
  expect(values(changed)).toEqual([...HELD.slice(0, 15), 7]); // A1 + 1; what has no figure here stays
  expect(strFromU8(unzipSync(changed)["xl/workbook.xml"]!)).toContain('fullCalcOnLoad="1"');
  await desk.page
    .getByText("beyond.xlsx: saved; the next program calculates what could not be calculated here")
    .waitFor();
});

test("brackets: a formula with a bracket that is not closed is an error of its cell, and others are calculated", async () => {
  const desk = await all.open();
  await openFile(desk, zipSync(beyondParts()), "open.xlsx");
  for (const [i, open] of ["=SUM(Heads[", "=Heads[[[", "=A1]", "=[@Flow", "='a[b"].entries()) {
    await desk.write("F1", open, "Secret");
    await desk.write("F2", `=A1+${i}`, "Secret");
    expect(await desk.read("F2", "Secret"), open).toEqual([[5 + i]]); // A1 is 5
  }
});

test("such formulas go along with rows and a sheet's new name as the file's own program would let them", async () => {
  const desk = await all.open();
  await openFile(desk, zipSync(beyondParts()), "moved.xlsx");
  await desk.page.evaluate(async () => {
    await window.desk.settled();
    const book = window.desk.grid.api.getActiveWorkbook()!;
    book.getSheetByName("Secret")!.insertRowsBefore(0, 1);
    book.getSheetByName("Bed 7")!.setName("Bed 8");
    await window.desk.settled();
  });
  const file = await savedFile(desk);
  expect(values(file)).toEqual(HELD);
  const text = strFromU8(unzipSync(file)[SECRET]!);
  expect(text).toContain("<f>SUM((A2,A2))</f>");
  expect(text).toContain('<f t="array" ref="D5">SUM(\'Bed 8\'!A2:A4*2)</f>');
  expect(text).toContain("<f>_xlfn.SINGLE(A2:A10)</f>");
  expect(text).toContain("<f>_xlfn.LET(_xlpm.n,A2,_xlpm.n+1)</f>");
  expect(text).toContain("GETPIVOTDATA(&quot;Sum&quot;,$C$4)");
});

test("a formula that is typed over one of the file's is calculated, and shown as the error that it is", async () => {
  const desk = await all.open();
  await openFile(desk, zipSync(beyondParts()), "typed.xlsx");
  await desk.read("A1", "Secret");
  await desk.write("A2", "=1/0", "Secret");
  await desk.write("B2", "=NOBODY(1)", "Secret");
  const [line] = await desk.read("A2:D2", "Secret");
  expect(line).toEqual([{ error: "#DIV/0!" }, { error: "#NAME?" }, -1, 0]);
});
