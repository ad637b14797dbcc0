import { strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { contractFile } from "../../src/hosts/contract/file";
import { bookContents, refuseTaken } from "../../src/xlsx/parts/book-contents";

const FILE = unzipSync(contractFile("Cans", "Results", "Cans_Readings"));
const file = (workbook: string): Uint8Array => zipSync({ ...FILE, "xl/workbook.xml": strToU8(workbook) });

const BOOK = `<?xml version="1.0"?>
<x:workbook xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"
  xmlns:q="http://schemas.openxmlformats.org/officeDocument/2006/relationships">
  <x:sheets><x:sheet name="Cans &amp; heads" sheetId="1" q:id="rId1"/><x:sheet name="Results" sheetId="2" q:id="rId2"/></x:sheets>
  <x:definedNames>
    <x:definedName name="Cans_Readings">'Cans &amp; heads'!$B$2:$B$26</x:definedName>
    <x:definedName name="_xlnm.Print_Area" localSheetId="0">Results!$A$1:$C$9</x:definedName>
    <x:definedName name="Here_only" localSheetId="1">Results!$A$1</x:definedName>
  </x:definedNames>
</x:workbook>`;

describe("the contents of a workbook file", () => {
  test("are its sheets in order and the names of the whole workbook, whatever the prefix of its tags", () => {
    expect(bookContents(file(BOOK))).toEqual({
      sheets: ["Cans & heads", "Results"],
      names: [{ name: "Cans_Readings", reference: "'Cans & heads'!$B$2:$B$26" }],
    });
  });

  test("of something else are refused in plain words", () => {
    expect(() => bookContents(strToU8("date;reading"))).toThrow(
      'the file must be an .xlsx workbook, got "a file of another kind"',
    );
    expect(() => bookContents(zipSync({ "readme.txt": strToU8("x") }))).toThrow(
      'the file must be an .xlsx workbook, got "an archive of another kind"',
    );
  });
});

describe("a name that is taken", () => {
  const contents = bookContents(file(BOOK));

  test("is refused for a sheet, in any case of letters", () => {
    expect(() => refuseTaken(contents, ["Sheet1", "RESULTS"], [])).toThrow(
      'There is already a sheet "Results" in this workbook. Rename or delete it, and start again',
    );
  });

  test("is refused for a defined name", () => {
    expect(() => refuseTaken(contents, ["Sheet1"], ["cans_readings"])).toThrow(
      "The name Cans_Readings is already defined in this workbook. Rename or delete it, and start again",
    );
  });

  test("is not in the way of others", () => {
    expect(() => refuseTaken(contents, ["Sheet1"], ["Here_only"])).not.toThrow();
  });
});
