import { beforeAll, describe, expect, it } from "vitest";
import { cellAt } from "../../src/cells/places";
import { bedsDrawn, wholeBedOf } from "../../src/core/bed/interval/whole-bed";
import { readBed } from "../../src/core/bed/read-bed";
import { checkBook } from "../../src/share/check/check-copy";
import { keptFindings } from "../../src/share/check/kept-check";
import { namedValue } from "../../src/share/copy/evidence-rows";
import { shareCopy } from "../../src/share/copy/share-copy";
import { cellsOfFile } from "../../src/share/figures/cells-of-file";
import { keptAnswer } from "../../src/workbook/answer/kept-answer";
import { ratedBed } from "../../src/workbook/answer/test-summary";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { bedCans } from "../../src/workbook/bed/bed-cans";
import { bedOfWorkbook } from "../../src/workbook/bed/bed-of-workbook";
import { causesOf, verdictOf } from "../../src/workbook/bed/bed-verdict";
import { type FileBook, namedArea, openBook } from "../../src/xlsx/parts/workbook-file";
import { converted } from "../support/libreoffice";
import { calculated, nativeFile, typedInto, uncalculated } from "../support/native-file";

const FORGED: Record<string, string | number> = {
  Cause_Text: "nothing wrong found (99 %).",
  Ends_DU_High: 79,
  Ends_CU_Low: 86,
  Answer_Text: "block 7: set 40 min.",
};
/** Changes, and whether they leave cause and intervals, and the answer, true. */
const CHANGES: { more: Record<string, string | number>; bed: boolean; answer: boolean }[] = [
  { more: { Head_Throw_m: 4.5 }, bed: false, answer: false },
  { more: { Supply_Side: "left" }, bed: false, answer: false },
  { more: { Bed_Width_m: 12.5 }, bed: false, answer: false },
  { more: { Test_Minutes: 21 }, bed: false, answer: false },
  { more: { Take_Up_mm: 5 }, bed: true, answer: false },
  { more: { Auditor: "another" }, bed: true, answer: true },
];

describe("what the pane keeps in a workbook", () => {
  let kept: Record<string, string | number>;
  let file: Uint8Array;
  let fresh: FileBook;
  let forged: FileBook[];
  let changed: FileBook[];

  beforeAll(async () => {
    const book = calculated(await uncalculated(EXAMPLE_ENTRIES));
    const cells = cellsOfFile(book);
    const { input, measured, lack } = bedOfWorkbook(cells);
    expect(lack).toBe("");
    const { top, left } = namedArea(book, "Cans_Readings")!;
    const verdict = verdictOf(causesOf(bedCans(cells), { input: input!, measured }));
    const read = readBed(ratedBed(cells)!.input);
    const whole = wholeBedOf(read, bedsDrawn(read));
    kept = keptAnswer(cells, { verdict, whole }, (row, column) => cellAt(top + row, left + column));
    file = await nativeFile({ ...EXAMPLE_ENTRIES, ...kept });
    fresh = openBook(file);
    const withMore = (more: Record<string, string | number>) => calculated(typedInto(fresh, more));
    forged = Object.entries(FORGED).map(([name, value]) => withMore({ [name]: value }));
    changed = CHANGES.map(({ more }) => withMore(more));
  }, 120_000);

  it("is on the sheets: the answer opens Start and Report, the cause is on Coverage, Report and Actions", () => {
    const at = (sheet: string, place: string) =>
      String(fresh.sheets.find(({ name }) => name === sheet)!.cells.get(place)!.value);
    const answer = String(kept.Answer_Text);
    expect(answer).toMatch(
      /^block 7: move the outer heads to the edge first, then test again; until then set \d+ min \(\d+ × \d+\)\. The edges get \d+ % of the middle; cause: heads inside the edge, by 2 m: heads 1 to 4, 6, 7, 9 to 12 \(/,
    );
    expect([at("Start", "A4"), at("Report", "A3")]).toEqual([answer, answer]);
    for (const [sheet, place] of [
      ["Coverage", "A3"],
      ["Report", "A4"],
      ["Actions", "A3"],
    ] as const) {
      expect(at(sheet, place)).toContain(`What may be wrong: ${kept.Cause_Text}`);
    }
  });

  it("is calculated alike by LibreOffice", async () => {
    const [recalculated] = (await converted([file], "xlsx")).map(openBook);
    for (const name of [
      "Answer_Sentence",
      "Cause_Sentence",
      "Inputs_Stamp",
      "Answer_Inputs",
      "Verdict_MAR",
      "Verdict_DU",
    ]) {
      expect(namedValue(recalculated!, name), name).toBe(namedValue(fresh, name));
    }
    expect(namedValue(fresh, "Verdict_DU")).toBe("outside");
  }, 120_000);

  it("agrees in a share copy", async () => {
    const copy = await shareCopy(file, new Date(2026, 10, 25));
    const { findings, figures } = await checkBook(openBook(copy), AUDIT_SHEETS);
    expect(findings).toEqual([]);
    expect(figures.filter(({ agrees }) => !agrees)).toEqual([]);
  }, 120_000);

  it("is found when forged, one by one", () => {
    Object.entries(FORGED).forEach(([name, value], k) => {
      const found = keptFindings(forged[k]!);
      expect(
        found.map(({ where, is }) => [where, is]),
        name,
      ).toEqual([[name, String(value)]]);
      expect(found[0]!.was).toBe(String(kept[name]));
    });
  });

  it("is found where nothing was kept", async () => {
    const plain = calculated(await uncalculated(EXAMPLE_ENTRIES));
    expect(keptFindings(plain)).toEqual([]);
    const book = typedInto(plain, { Cause_Text: "Nothing is wrong with this bed.", Ends_DU_Low: 80 });
    expect(keptFindings(book).map(({ where, is }) => [where, is])).toEqual([
      ["Cause_Text", "Nothing is wrong with this bed."],
      ["Ends_DU_Low", "80"],
    ]);
  });

  it("says that it is out of date once what it is of is changed, and then accuses nobody", async () => {
    for (const [k, { more, bed, answer }] of CHANGES.entries()) {
      const book = changed[k]!;
      const said = (name: string) => String(namedValue(book, name));
      const what = JSON.stringify(more);
      expect(said("Cause_Sentence").includes("out of date"), what).toBe(!bed);
      expect(said("Verdict_DU") === "interval out of date", what).toBe(!bed);
      expect(said("Answer_Sentence").includes("out of date"), what).toBe(!answer);
      expect(keptFindings(book), what).toEqual([]);
    }
    const { figures } = await checkBook(changed[3]!, AUDIT_SHEETS);
    expect(figures.filter(({ agrees }) => !agrees)).toEqual([]);
  }, 120_000);
});
