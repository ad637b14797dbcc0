import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { formulaResults } from "../support/formula-results";
import { converted } from "../support/libreoffice";
import { sampleFile } from "../xlsx/xlsx-sample";

const NOW = new Date(2026, 10, 25, 14, 30);
const SHEET = "xl/worksheets/sheet1.xml";
const SOUND =
  'IF(SUMPRODUCT(ISTEXT(A2:A4)*(TRIM(A2:A4)<>"x")*(TRIM(A2:A4)<>"")+ISLOGICAL(A2:A4)+ISNUMBER(A2:A4)*(A2:A4<0))=0,AVERAGE(A2:A4)/MIN(A2:A4),"readings must be numbers of 0 or more, or x")';

const cellOf = (file: Uint8Array, sheet: string, address: string) =>
  openBook(file)
    .sheets.find(({ name }) => name === sheet)!
    .cells.get(address);

/** The file with one piece of the text of a part replaced, which has to be there. */
function changed(file: Uint8Array, part: string, from: string, to: string): Uint8Array {
  const parts = unzipSync(file);
  const text = strFromU8(parts[part]!);
  expect(text).toContain(from);
  return zipSync({ ...parts, [part]: strToU8(text.replace(from, to)) });
}

describe("a share copy of a workbook with functions of the add-in", () => {
  let original: Uint8Array;
  let kept: Uint8Array;
  let copy: Uint8Array;
  let recalculated: Uint8Array;
  let saved: Uint8Array;
  beforeAll(async () => {
    original = await sampleFile();
    kept = original.slice();
    copy = await shareCopy(original, NOW);
    const planted = strFromU8(unzipSync(copy)[SHEET]!).replace(/(<\/f>)<v>[^<]*<\/v>/g, "$1<v>-1</v>");
    const wrong = zipSync({ ...unzipSync(copy), [SHEET]: strToU8(planted) });
    [recalculated, saved] = (await converted([wrong, copy], "xlsx")) as [Uint8Array, Uint8Array];
  });

  it("leaves the original's bytes as they are", () => {
    expect(original).toEqual(kept);
  });

  it("holds native formulas with the same values, one a cell for a spill", () => {
    expect(cellOf(copy, "Bed 7", "B2")).toMatchObject({ formula: SOUND, value: 1.5 });
    expect(cellOf(copy, "Bed 7", "D2")).toMatchObject({ formula: 'IF(ISNUMBER(A3),A3*1,"")', value: 30 });
    expect(strFromU8(unzipSync(copy)[SHEET]!)).not.toContain("cm=");
    for (const { cells } of openBook(copy).sheets.slice(0, 2)) {
      for (const { formula } of cells.values()) expect(formula ?? "").not.toMatch(/canfall/i);
    }
  });

  it("keeps styles, notes, validation, conditional formats, page set-up, names and hidden sheets", () => {
    const [before, after] = [unzipSync(original), unzipSync(copy)];
    for (const part of ["xl/comments1.xml", "xl/drawings/vmlDrawing1.vml", "xl/theme/theme1.xml"]) {
      expect(after[part]).toEqual(before[part]);
    }
    const beyondCells = (parts: typeof before) =>
      strFromU8(parts[SHEET]!)
        .split("</sheetData>")[1]!
        .replace(/<headerFooter>.*<\/headerFooter>/, "");
    expect(beyondCells(after)).toBe(beyondCells(before));
    expect(openBook(copy).names.get("Cans_Readings")).toBe("'Bed 7'!$A$2:$A$4");
    expect(cellOf(copy, "Bed 7", "A1")?.given.get("s")).toBe(cellOf(original, "Bed 7", "A1")?.given.get("s"));
  });

  it("gives the same in LibreOffice when all its cached values are wrong", () => {
    const results = formulaResults(recalculated);
    expect(["B2", "B3", "B4", "D1", "D2", "D3"].map((address) => results.get(`Bed 7!${address}`))).toEqual([
      1.5, 1.5, 90, 20, 30, 40,
    ]);
  });

  it("is found untouched, also after LibreOffice has saved it", async () => {
    for (const file of [copy, saved]) {
      const { findings, facts } = await checkCopy(file);
      expect(findings.map(({ text }) => text)).toEqual([
        "Hidden: is a hidden sheet that Canfall's own workbook does not have.",
      ]);
      expect(facts.kind).toBe("share copy of 2026-11-25, workbook without the audit's sheets");
    }
  });

  it("has its figures recomputed from the readings that the old formulas named", async () => {
    const { figures, sentence } = await checkCopy(copy);
    expect(figures).toEqual([
      // mean of 20, 30, 40 over 20; the low quarter needs four cans and cannot be recomputed
      {
        name: "'Bed 7'!B2",
        place: "'Bed 7'!B2",
        label: "CANFALL.SC.CAN(A2:A4)",
        unit: "",
        stated: 1.5,
        recomputed: 1.5,
        shown: "1.5",
        format: "General",
        agrees: true,
      },
    ]);
    expect(sentence).toContain("not that the readings are true");
  });

  it.each([
    [
      "a reading",
      '<v>40</v></c><c r="B4"',
      '<v>41</v></c><c r="B4"',
      `The reading in 'Bed 7'!A4 (row 3, column 1 of the cans) was "40" when the copy was made and is "41".`,
    ],
    [
      "a formula",
      "AVERAGE(A2:A4)/MIN",
      "AVERAGE(A2:A4)/MAX",
      "'Bed 7'!B2: the formula is not the one that Evidence lists.",
    ],
    ["a value", "</f><v>30</v>", "</f><v>31</v>", "'Bed 7'!D2: the value is not the one on Evidence."],
  ])("is found changed by %s", async (_, from, to, finding) => {
    const { findings, follows, agrees } = await checkCopy(changed(copy, SHEET, from, to));
    expect([...findings.map(({ text }) => text), ...follows].join("\n")).toContain(finding);
    expect(agrees).toBe(false);
  });

  it("is not made twice", async () => {
    await expect(shareCopy(copy, NOW)).rejects.toThrow(
      'the workbook must have no sheet named Evidence, as share copies have, got "Evidence"',
    );
  });

  it("is refused while a replaced cell shows an error, with its place", async () => {
    const sheet = strFromU8(unzipSync(original)[SHEET]!);
    const broken = sheet.replace(/<c r="B2"[^>]*>(<f.*?<\/f>)<v>1.5<\/v>/, '<c r="B2" t="e">$1<v>#NAME?</v>');
    expect(broken).not.toBe(sheet);
    const file = zipSync({ ...unzipSync(original), [SHEET]: strToU8(broken) });
    await expect(shareCopy(file, NOW)).rejects.toThrow(
      "add-in functions must all give values before a copy is made, got \"#NAME?\" in 'Bed 7'!B2",
    );
  });
});
