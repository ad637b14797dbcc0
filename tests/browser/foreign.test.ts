import type {} from "@univerjs/preset-sheets-core";
import { unzipSync, zipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { foreignParts } from "../foreign/foreign-parts";
import { signedParts } from "../foreign/signed-parts";
import { startAt } from "./by-hand";
import { bytesOf, type Desk, type Desks, desks, openFile, savedFile } from "./desk-page";

const BOOK = "xl/workbook.xml";
const SHEET = "xl/worksheets/sheet1.xml";

let all: Desks;
beforeAll(async () => {
  all = await desks();
});
afterAll(() => all?.close());

const SECOND = "xl/worksheets/sheet2.xml";

/** The desk changes no rows or columns of a protected sheet: here the second is one, with a formula on the first. */
function unprotected(): Record<string, Uint8Array> {
  const parts = foreignParts();
  const [first, second] = [SHEET, SECOND].map((part) => new TextDecoder().decode(parts[part]));
  const sum =
    '<c r="B1"><f>SUM(\'Bed 7\'!A2:A4)</f><v>90</v></c><c r="C1"><f>SUM(Readings)*Price</f><v>210.6</v></c><c r="D1"><f>Here*2</f><v>0</v></c><c r="E1"><f>\'Bed 7\'!Here*2</f><v>0</v></c></row></sheetData><sheetProtection sheet="1"/>';
  const book = new TextDecoder().decode(parts[BOOK]);
  const here = '<definedName name="Here" localSheetId="0">\'Bed 7\'!$A$3</definedName></definedNames>';
  return {
    ...parts,
    [BOOK]: new TextEncoder().encode(book.replace("</definedNames>", here)),
    [SHEET]: new TextEncoder().encode(first!.replace(/<sheetProtection [^>]*>/, "")),
    [SECOND]: new TextEncoder().encode(second!.replace("</row></sheetData>", sum)),
  };
}

/** Whether the page would ask before it is closed. */
const unsaved = ({ page }: Desk) =>
  page.evaluate(() => !dispatchEvent(new Event("beforeunload", { cancelable: true })));

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
    expect(await unsaved(desk)).toBe(false);
    // D4 came without a value: that is all that changes
    expect(differing(untouched)).toEqual([SHEET]);
    const [was, is] = [before, untouched].map((parts) => new TextDecoder().decode(parts[SHEET]));
    expect(is).toBe(was!.replace("<f>SUM(A2:A4)</f>", "<f>SUM(A2:A4)</f><v>90</v>"));
    await desk.write("A2", 25, "Bed 7");
    const file = await savedFile(desk);
    await desk.page.getByText(/^bed\.xlsx: saved at \d\d:\d\d$/).waitFor();
    expect(differing(unzipSync(file))).toEqual([SHEET]);
    const { cells } = openBook(file).sheets[0]!;
    expect(["A2", "B2", "B3", "D4"].map((address) => cells.get(address)?.value)).toEqual([25, 50, 60, 95]);
    expect(await unsaved(desk)).toBe(false);
    expect(desk.complaints).toEqual([]);
  });

  test("is saved with rows that were inserted, and what lies on them goes along, sheets' own names too", async () => {
    const desk = await all.open();
    await openFile(desk, zipSync(unprotected()), "rows.xlsx");
    await desk.page.evaluate(() => {
      const cell = window.desk.grid.api.getActiveWorkbook()!.getSheetByName("Bed 7")!.getRange("A2");
      cell.setFontWeight("bold").setFontLine("line-through");
    });
    expect(await unsaved(desk)).toBe(true); // looks are work too
    await desk.page.evaluate(() => {
      const sheet = window.desk.grid.api.getActiveWorkbook()!.getSheetByName("Bed 7")!;
      sheet.insertRowsBefore(2, 2);
      sheet.setRowHeightsForced(3, 1, 40);
      sheet.hideRows(12);
    });
    const file = await savedFile(desk);
    const parts = unzipSync(file);
    const text = (part: string) => new TextDecoder().decode(parts[part]);
    expect(text(SHEET)).toContain('<conditionalFormatting sqref="A2:A6">');
    expect(text(SHEET)).toContain('<row r="4" ht="30" customHeight="1"'); // 40 px are 30 points
    expect(text(SHEET)).toMatch(/<row r="13" hidden="1"/);
    expect(text("xl/charts/chart1.xml")).toContain("<c:f>'Bed 7'!$A$2:$A$6</c:f>");
    expect(text("xl/styles.xml")).toContain("<b/><strike/>");
    // a conditional format fills A2; the new cells below it have its bold letters, not that fill
    expect(text("xl/styles.xml")).not.toMatch(/<fgColor rgb="FFFFC7CE"/i);
    const { cells } = openBook(file).sheets[0]!;
    expect(["B2", "B5", "D6"].map((address) => cells.get(address)?.formula)).toEqual(["A2*2", "A5*2", "SUM(A2:A6)"]);
    expect(["A5", "D6"].map((address) => cells.get(address)?.value)).toEqual([30, 90]);
    const sum = openBook(file).sheets[1]!.cells.get("B1");
    expect([sum?.formula, sum?.value]).toEqual(["SUM('Bed 7'!A2:A6)", 90]);
    expect(openBook(file).sheets[1]!.cells.get("C1")?.value).toBeCloseTo(210.6, 9); // Readings went along: 90 · 2.34
    // Here is A1 of Secret, 5, on that sheet and A3 of Bed 7, 30, on the other; A3 went down
    expect(["D1", "E1"].map((address) => openBook(file).sheets[1]!.cells.get(address)?.value)).toEqual([10, 60]);
    expect(text(BOOK)).toContain(">'Bed 7'!$A$5<");
    // the style of a locked cell with turned text is not among the looks of the desk: it went along
    expect(cells.get("C2")?.given.get("s")).toBe("5");
    await openFile(desk, file, "again.xlsx");
    const struck = await desk.page.evaluate(() => {
      const sheet = window.desk.grid.api.getActiveWorkbook()!.getSheetByName("Bed 7")!;
      return ["A2", "B2"].map((address) => sheet.getRange(address).getCellStyleData()?.st?.s);
    });
    expect(struck).toEqual([1, undefined]);
  });

  test("what was undone leaves the file as if it had never been, also after a save", async () => {
    const desk = await all.open();
    await openFile(desk, zipSync(unprotected()), "undone.xlsx");
    const texts = (file: Uint8Array) =>
      Object.entries(unzipSync(file)).map(([part, bytes]) => [part, new TextDecoder("latin1").decode(bytes)]);
    const before = texts(await savedFile(desk));
    const change = (work: "rows" | "columns" | "insert" | "undo" | "redo", at = 0, count = 1) =>
      desk.page.evaluate(
        async ([asked, from, many]) => {
          const { api } = window.desk.grid;
          const sheet = api.getActiveWorkbook()!.getSheetByName("Bed 7")!;
          if (asked === "rows") sheet.deleteRows(from, many);
          else if (asked === "columns") sheet.deleteColumns(from, many);
          else if (asked === "insert") sheet.insertRowsBefore(from, many);
          else for (let i = 0; i < many; i++) await (asked === "undo" ? api.undo() : api.redo());
          await window.desk.settled();
        },
        [work, at, count] as const,
      );
    // the note, a table's header, a chart's cells and print titles go with these
    await change("rows", 2);
    await desk.page.evaluate(() => window.desk.host.bytes()); // as the journal takes the file meanwhile
    await startAt(desk, "Bed 7", "B2");
    await desk.page.keyboard.press("Control+z");
    expect(texts(await savedFile(desk))).toEqual(before);
    await change("rows", 0, 2);
    await change("columns", 1);
    await change("insert", 3, 2);
    expect(texts(await savedFile(desk, "Save under this name"))).not.toEqual(before);
    await change("undo", 0, 3);
    expect(texts(await savedFile(desk))).toEqual(before);
    await change("redo", 0, 3);
    await change("undo", 0, 3);
    expect(texts(await savedFile(desk))).toEqual(before);
    await change("redo");
    const deleted = new TextDecoder().decode(unzipSync(await savedFile(desk, "Save under this name"))[SHEET]);
    expect(deleted).toContain('<row r="1"><c r="A1"><v>30</v>');
    // rows that come by hand are new ones
    await change("undo");
    await change("rows", 2);
    await change("insert", 2);
    const note = unzipSync(await savedFile(desk))["xl/comments1.xml"];
    expect(new TextDecoder().decode(note)).not.toContain("<comment ");
  });

  test("asks before it saves what can't go along, and takes another name first", async () => {
    const desk = await all.open();
    await openFile(desk, zipSync(unprotected()), "columns.xlsx");
    await desk.page.evaluate(() => {
      window.desk.grid.api.getActiveWorkbook()!.getSheetByName("Bed 7")!.deleteColumns(0, 1);
    });
    await desk.page.evaluate(() => window.desk.host.bytes()); // as the journal and a share copy take the file meanwhile
    const save = desk.page.getByRole("button", { name: "Save .xlsx" });
    const sentence = "In the file these stay at their old place: in Bed 7: tables.";
    await save.click();
    await desk.page.getByText(sentence).waitFor();
    await desk.page.getByRole("button", { name: "Cancel" }).click();
    await desk.page.getByText("columns.xlsx: not saved").waitFor();
    await save.click();
    await expect
      .poll(() => desk.page.evaluate(() => document.activeElement?.textContent))
      .toBe("Save under another name");
    const [download] = await Promise.all([desk.page.waitForEvent("download"), desk.page.keyboard.press("Enter")]);
    expect(download.suggestedFilename()).toBe("columns (2).xlsx");
  });

  test("says that a signature is lost before it saves a signed file that changed", async () => {
    const desk = await all.open();
    await openFile(desk, zipSync(signedParts()), "signed.xlsx");
    await desk.write("A2", 25, "Bed 7");
    await desk.page.evaluate(() => window.desk.host.bytes()); // as the journal takes the file meanwhile
    await desk.page.getByRole("button", { name: "Save .xlsx" }).click();
    await desk.page.getByText("so the signature is left out: sign the file again").waitFor();
    const button = desk.page.getByRole("button", { name: "Save under this name" });
    const [download] = await Promise.all([desk.page.waitForEvent("download"), button.click()]);
    expect(Object.keys(unzipSync(await bytesOf(download))).join()).not.toContain("_xmlsignatures");
    await savedFile(desk); // which asks nothing any more
  });
});
