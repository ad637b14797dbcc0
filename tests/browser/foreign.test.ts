import { unzipSync, zipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { foreignParts } from "../foreign/foreign-parts";
import { type Desks, desks, openFile, savedFile } from "./desk-page";

const SHEET = "xl/worksheets/sheet1.xml";

let all: Desks;
beforeAll(async () => {
  all = await desks();
});
afterAll(() => all?.close());

describe("a file of another program at the desk", () => {
  test("is saved with the changed cell and the figures that follow it, all else byte for byte", async () => {
    const before = foreignParts();
    const desk = await all.open();
    await openFile(desk, zipSync(before), "bed.xlsx");
    const untouched = unzipSync(await savedFile(desk));
    const differing = (after: Record<string, Uint8Array>) =>
      [...new Set([...Object.keys(before), ...Object.keys(after)])].filter(
        (part) => !before[part] || !after[part] || Buffer.compare(before[part], after[part]) !== 0,
      );
    // D4 came without a value: that is all that changes
    expect(differing(untouched)).toEqual([SHEET]);
    const [was, is] = [before, untouched].map((parts) => new TextDecoder().decode(parts[SHEET]));
    expect(is).toBe(was!.replace("<f>SUM(A2:A4)</f>", "<f>SUM(A2:A4)</f><v>90</v>"));
    await desk.write("A2", 25, "Bed 7");
    const file = await savedFile(desk);
    expect(differing(unzipSync(file))).toEqual([SHEET]);
    const { cells } = openBook(file).sheets[0]!;
    expect(["A2", "B2", "B3", "D4"].map((address) => cells.get(address)?.value)).toEqual([25, 50, 60, 95]);
    expect(desk.complaints).toEqual([]);
  });
});
