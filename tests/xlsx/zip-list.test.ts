import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8 } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { unzipped } from "../../src/xlsx/parts/safe-file";

const FILE = "templates/block-audit.xlsx";
/** Python's zipfile as if all sizes, places and counts were too long for the short fields (APPNOTE 4.3.14, 4.5.3). */
const LONG = [
  "import sys, zipfile",
  "zipfile.ZIP64_LIMIT, zipfile.ZIP_FILECOUNT_LIMIT = 100, 1",
  "with zipfile.ZipFile(sys.argv[1]) as old, zipfile.ZipFile(sys.argv[2], 'w', zipfile.ZIP_DEFLATED) as new:",
  "    for name in old.namelist(): new.writestr(name, old.read(name))",
].join("\n");
const LONG_END = 0x06064b50;

let folder: string;
let made: Uint8Array;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "canfall-"));
  execFileSync("/usr/bin/python3", ["-c", LONG, FILE, join(folder, "long.xlsx")]);
  made = new Uint8Array(readFileSync(join(folder, "long.xlsx")));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** The archive with its short end all ones, and with another number at a place of its longer end. */
function withEnd(at?: number, number = 0n): Uint8Array {
  const copy = made.slice();
  const view = new DataView(copy.buffer);
  const short = copy.length - 22; // the end of an archive without a comment
  view.setUint16(short + 10, 0xffff, true);
  view.setUint32(short + 12, 0xffffffff, true);
  view.setUint32(short + 16, 0xffffffff, true);
  let end = short;
  while (view.getUint32(end, true) !== LONG_END) end -= 1;
  if (at !== undefined) view.setBigUint64(end + at, number, true);
  return copy;
}

/** Each part as one text, which compares faster than bytes. */
const texts = (archive: Uint8Array) =>
  new Map([...unzipped(archive)].map(([name, part]) => [name, strFromU8(part, true)]));

describe("an archive with the longer fields", () => {
  it("has the parts that the short form has, and is opened and saved at the desk", async () => {
    const parts = texts(new Uint8Array(readFileSync(FILE)));
    expect(texts(made)).toEqual(parts);
    expect(texts(withEnd())).toEqual(parts);
    const file = await XlsxFile.open(withEnd());
    expect(file.book().sheets.map(({ name }) => name)).toContain("Cans");
    const sheets = file.book().sheets.map(({ key, name }) => ({ key, name, widths: {}, cells: [] }));
    const saved = await file.save({ sheets, addedNames: [], removedNames: [] });
    expect([...unzipped(saved).keys()].sort()).toEqual([...parts.keys()].sort());
  });

  it.each([
    ["a list that starts elsewhere", 48, 1n, "a list of parts in another place"],
    ["more parts than there are", 32, 900n, "a damaged list of parts"],
    ["fewer parts than there are", 32, 3n, "parts that its list does not count"],
  ])("is refused in plain words: %s", (_, at, number, why) => {
    expect(() => unzipped(withEnd(at, number))).toThrow(`the file must be an unbroken .xlsx workbook, got "${why}"`);
  });

  it("is refused when its two ends differ", () => {
    const copy = made.slice();
    new DataView(copy.buffer).setUint16(copy.length - 12, 3, true);
    expect(() => unzipped(copy)).toThrow('got "an archive whose two ends differ"');
  });

  it("is refused when it has more parts than a workbook may", () => {
    expect(() => unzipped(withEnd(32, 5_000n))).toThrow("the file must hold at most 1000 parts, got 5000");
  });
});
