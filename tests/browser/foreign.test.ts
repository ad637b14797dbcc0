import { unzipSync, zipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { foreignParts } from "../foreign/foreign-parts";
import { bytesOf, type Desk, type Desks, desks } from "./desk-page";

const SHEET = "xl/worksheets/sheet1.xml";

let all: Desks;
beforeAll(async () => {
  all = await desks();
});
afterAll(() => all?.close());

async function opened(bytes: Uint8Array): Promise<Desk> {
  const desk = await all.open();
  const [chooser] = await Promise.all([
    desk.page.waitForEvent("filechooser"),
    desk.page.getByRole("button", { name: "Open .xlsx" }).click(),
  ]);
  await chooser.setFiles({ name: "bed.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
  await desk.page.getByText("bed.xlsx", { exact: true }).waitFor();
  return desk;
}

async function saved(desk: Desk): Promise<Uint8Array> {
  const [download] = await Promise.all([
    desk.page.waitForEvent("download"),
    desk.page.getByRole("button", { name: "Save .xlsx" }).click(),
  ]);
  return bytesOf(download);
}

describe("a file of another program at the desk", () => {
  test("is saved with the changed cell and the figures that follow it, all else byte for byte", async () => {
    const before = foreignParts();
    const desk = await opened(zipSync(before));
    const untouched = unzipSync(await saved(desk));
    const differing = (after: Record<string, Uint8Array>) =>
      [...new Set([...Object.keys(before), ...Object.keys(after)])].filter(
        (part) => !before[part] || !after[part] || Buffer.compare(before[part], after[part]) !== 0,
      );
    // D4 came without a value: that is all that changes
    expect(differing(untouched)).toEqual([SHEET]);
    const [was, is] = [before, untouched].map((parts) => new TextDecoder().decode(parts[SHEET]));
    expect(is).toBe(was!.replace("<f>SUM(A2:A4)</f>", "<f>SUM(A2:A4)</f><v>90</v>"));
    await desk.write("A2", 25, "Bed 7");
    const file = await saved(desk);
    expect(differing(unzipSync(file))).toEqual([SHEET]);
    const { cells } = openBook(file).sheets[0]!;
    expect(["A2", "B2", "B3", "D4"].map((address) => cells.get(address)?.value)).toEqual([25, 50, 60, 95]);
    expect(desk.complaints).toEqual([]);
  });
});
