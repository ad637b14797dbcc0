import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { expect, it } from "vitest";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { foreignParts } from "./foreign-parts";

/** What the strict form of the standard calls otherwise (ISO/IEC 29500-1, annex A). */
const STRICT: [string, string][] = [
  ["spreadsheetml/2006/main", "spreadsheetml/main"],
  ["officeDocument/2006/relationships", "officeDocument/relationships"],
  ["drawingml/2006/main", "drawingml/main"],
  ["drawingml/2006/spreadsheetDrawing", "drawingml/spreadsheetDrawing"],
  ["drawingml/2006/chart", "drawingml/chart"],
];
const USUAL = "http://schemas.openxmlformats.org/";

function strictParts(): Record<string, Uint8Array> {
  const strict = (text: string) =>
    STRICT.reduce((all, [from, to]) => all.replaceAll(USUAL + from, `http://purl.oclc.org/ooxml/${to}`), text);
  return Object.fromEntries(
    Object.entries(foreignParts()).map(([part, bytes]) => [
      part,
      /\.(xml|rels)$/.test(part) ? strToU8(strict(strFromU8(bytes))) : bytes,
    ]),
  );
}

it("what is written into a file of the strict form has that form too: new sheets, pictures and their links", async () => {
  const before = strictParts();
  const file = await XlsxFile.open(zipSync(before));
  const held = file.book().sheets.map(({ key, name }) => ({ key, name, widths: {}, cells: [] }));
  const picture = {
    name: "Bed",
    alternative: "",
    extension: "png" as const,
    bytes: strToU8("no picture, but other bytes"),
    from: { row: 1, column: 1, right: 0, down: 0 },
    to: { width: 20, height: 20 },
  };
  const added = { key: "new", name: "New", widths: {}, cells: [{ row: 0, column: 0, input: 5 }], pictures: [picture] };
  const after = unzipSync(await file.save({ sheets: [...held, added], addedNames: [], removedNames: [] }));
  const fresh = Object.keys(after).filter((part) => !before[part] && /\.(xml|rels)$/.test(part));
  expect(fresh.length).toBeGreaterThan(2);
  const mixed = Object.entries(after).filter(([part, bytes]) => {
    const text = /\.(xml|rels)$/.test(part) ? strFromU8(bytes) : "";
    return STRICT.some(([usual]) => text.includes(USUAL + usual));
  });
  expect(mixed.map(([part]) => part)).toEqual([]);
  expect((await XlsxFile.open(zipSync(after))).book().sheets.map(({ name }) => name)).toEqual([
    "Bed 7",
    "Secret",
    "New",
  ]);
});
