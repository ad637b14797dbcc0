import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { InputError } from "../../src/core/errors";
import { checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import { BLOCK } from "../../src/workbook/audit/block/block";
import { CANS } from "../../src/workbook/audit/cans/cans";
import { buildWorkbook } from "../../src/workbook/form/build";
import fc from "../support/properties";

const NOW = new Date(2026, 10, 25);
const RUNS = 300;

/** A report, or the plain refusal; anything else is a bug and thrown. */
async function outcome(file: Uint8Array): Promise<string> {
  try {
    return (await checkCopy(file)).sentence;
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
}

describe("hostile files", () => {
  let file: Uint8Array;
  let parts: Record<string, Uint8Array>;
  beforeAll(async () => {
    const entries = {
      Site_Name: "Example Nursery",
      Cans_Readings: [[10, 12, "x"]],
      Test_Minutes: 15,
      Can_Mouth_mm: 80,
    };
    file = await shareCopy(await buildWorkbook([BLOCK, CANS], entries), NOW);
    parts = unzipSync(file);
  });
  const withPart = (name: string, text: string) => zipSync({ ...parts, [name]: strToU8(text) });
  const textOf = (name: string) => strFromU8(parts[name]!);

  it("with any bytes changed give a report or a plain refusal", async () => {
    const change = fc.tuple(fc.nat(file.length - 1), fc.integer({ min: 0, max: 255 }));
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 6 }), async (changes) => {
        const copy = file.slice();
        for (const [at, byte] of changes) copy[at] = byte;
        expect(await outcome(copy)).not.toBe("");
      }),
      { numRuns: RUNS, seed: 1 },
    );
  });

  it("with any piece of a part cut, doubled or put elsewhere give a report or a plain refusal", async () => {
    const names = Object.keys(parts).filter((name) => name.startsWith("xl/") || name.includes("rels"));
    const piece = fc.tuple(
      fc.constantFrom(...names),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.nat(400),
      fc.nat(3),
    );
    const odd = ["", "<c/>", '"', "&#x110000;", "<c r='A1'>", "]]>", "-1e999", "A1:XFD1048576", "é\u0000"];
    await fc.assert(
      fc.asyncProperty(piece, fc.constantFrom(...odd), async ([name, where, length, way], other) => {
        const text = textOf(name);
        const at = Math.floor(where * text.length);
        const cut = text.slice(at, at + length);
        const middle = [other, cut + cut, other + cut, cut.toUpperCase()][way]!;
        const changed = text.slice(0, at) + middle + text.slice(at + length);
        expect(await outcome(withPart(name, changed))).not.toBe("");
      }),
      { numRuns: RUNS, seed: 2 },
    );
  }, 180_000);

  it.each([
    [
      "a document type with growing entities",
      "xl/workbook.xml",
      '<!DOCTYPE a [<!ENTITY b "cc">]><workbook/>',
      "a document type",
    ],
    ["tags nested without end", "xl/workbook.xml", "<a>".repeat(1000), "tags nested too deep"],
    ["an unknown entity", "xl/workbook.xml", "<workbook>&bomb;</workbook>", "an unknown entity"],
    ["a tag that is not closed", "xl/workbook.xml", "<workbook><sheets></workbook>", "a tag that is not closed"],
  ])("are refused for %s", async (_, name, text, why) => {
    expect(await outcome(withPart(name, text))).toBe(`the file must hold well-formed parts, got "${why}"`);
  });

  it("are read in no time when a name covers the whole sheet, leads nowhere or to another file", async () => {
    const book = textOf("xl/workbook.xml");
    for (const target of [
      "Cans!$A$1:$XFD$1048576",
      "#REF!",
      "[1]Other!$A$1",
      "'It''s'!A1",
      "A:A",
      "INDIRECT(&quot;A1&quot;)",
    ]) {
      const changed = book.replace(/(<definedName name="Cans_Readings">)[^<]*/, (_, tag: string) => tag + target);
      expect(changed).not.toBe(book);
      const { findings } = await checkCopy(withPart("xl/workbook.xml", changed));
      expect(findings.map(({ text }) => text).join("\n")).toMatch(
        /The name Cans_Readings (is missing or leads nowhere|leads to another place)/,
      );
    }
  });

  it("are refused when a cell is given twice or lies beyond the sheet", async () => {
    const sheet = Object.keys(parts).find((name) => name.endsWith("sheet2.xml"))!;
    const text = textOf(sheet);
    const doubled = text.replace("</sheetData>", '<row r="1"><c r="A1"><v>1</v></c></row></sheetData>');
    expect(await outcome(withPart(sheet, doubled))).toBe('the file must hold each cell once, got "A1"');
    const beyond = text.replace("</sheetData>", '<row r="1"><c r="XFE1"><v>1</v></c></row></sheetData>');
    expect(await outcome(withPart(sheet, beyond))).toBe('the file must hold cells with an address, got "XFE1"');
  });

  it("have no formula of theirs calculated: a wrong value stays the value", async () => {
    const sheet = Object.keys(parts).find((name) => name.endsWith("sheet1.xml"))!;
    const place = BLOCK.cells.find(({ name }) => name === "Licence")!.at;
    const planted = textOf(sheet).replace(new RegExp(`<c r="${place}"[^>]*/>`), (cell) =>
      cell.replace("/>", "><f>WEBSERVICE(&quot;https://example.invalid&quot;)</f><v>5</v></c>"),
    );
    const { findings } = await checkCopy(withPart(sheet, planted));
    expect(findings.map(({ text }) => text).join("\n")).toContain("a formula is where a value should be typed.");
  });
});
