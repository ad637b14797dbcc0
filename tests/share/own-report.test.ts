import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import type { CopyReport } from "../../src/share/copy-report";
import { plainFormat, plainNumber, shownText } from "../../src/share/looks/cells/shown";
import { filledIn } from "../../src/share/report/filled-in";
import { shortened } from "../../src/share/shortened";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { REPORT } from "../../src/workbook/audit/report/report";
import { buildWorkbook } from "../../src/workbook/form/build";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { ForgedFile } from "./forged/forged-file";

const WORDS =
  "An approved bed, with more words than any line of a report has room for, so that they have to be cut somewhere, between two of them.";
const HERE = { file: "from-the-nursery.xlsx", day: "2026-11-29", other: "" };

let copy: Uint8Array;
let clean: CopyReport;

const texts = ({ own }: CopyReport, here = HERE) => filledIn(own!, here).cells.map(({ value = "" }) => String(value));
async function changed(change: (file: ForgedFile) => void): Promise<CopyReport> {
  const file = new ForgedFile(copy);
  change(file);
  return checkCopy(file.bytes());
}

beforeAll(async () => {
  copy = await shareCopy(new Uint8Array(readFileSync("templates/example-audit.xlsx")), new Date(2026, 10, 25));
  clean = await checkCopy(copy);
});

describe("the authority's own report", () => {
  it("begins with what the check says, what was found, and the file, day and code", () => {
    expect(texts(clean).slice(0, 4)).toEqual([
      "Report of the authority on a block audit",
      `✓ ${clean.sentence}`,
      "Nothing was found changed, hidden or misleading. Against the limits that the file sets: ✗ outside: CU (Christiansen), DU (low quarter), SC (driest can), SC (low quarter); ✓ within: MAR.",
      `File: from-the-nursery.xlsx. Checked on 2026-11-29. Code of the copy: ${clean.code}.`,
    ]);
    expect(texts(clean).at(-1)).toMatch(/^Checked on 2026-11-29 for: _+ {3}by: _+ {3}Signature: _+$/);
  });

  it("has the set of limits with the years of its sources, every reading in its row, and the pressures", () => {
    const said = texts(clean);
    const readings = EXAMPLE_ENTRIES.Cans_Readings as readonly (readonly (number | string)[])[];
    const typed = readings.flatMap((row) => row.filter((one) => one !== "").join(", ") || []);
    const rows = said.filter((text) => /^Row \d+, /.test(text)).map((text) => text.split(": ")[1]);
    expect(rows).toEqual(typed);
    expect(typed.length).toBe(6); // the example has 5 by 6 cans
    expect(said.find((text) => text.startsWith("Limits: "))).toMatch(
      /^Limits: set "General"; .*DU \(low quarter\) 1998/,
    );
    const before = (EXAMPLE_ENTRIES.Pressure_Before_kPa as readonly (readonly (number | string)[])[]).flat();
    const heads = before.flatMap((one, index) => (one === "" ? [] : [`head ${index + 1}: ${one}`]));
    expect(said).toContain(`Pressure before the test [kPa]: ${heads.join("; ")}`);
  });

  it("may take a second page where more than 12 lines of readings are listed", async () => {
    expect(clean.own!.pages).toBe(1);
    const report = await changed((file) => {
      const [sheet, first] = file.place("Cans_Readings");
      const [, letters, row] = /^([A-Z]+)(\d+)$/.exec(first)!;
      for (let below = 6; below < 12; below += 1) file.value(sheet, `${letters}${Number(row) + below}`, 20);
    });
    expect(texts(report).filter((text) => /^Row \d+/.test(text))).toHaveLength(12); // and one of places
    expect(report.own!.pages).toBe(2);
  });

  it("names the figures that cannot be given", () => {
    expect(clean.sentence).toContain("1 cannot be given");
    expect(texts(clean)).toContain("Not given, since entries are missing: Between the pots.");
  });

  it("says of the audit's own words that they are of the file, and nothing of what does not come with it", () => {
    const said = texts(clean).join("\n");
    expect(said).toContain("on the file's sheet Coverage");
    expect(said).not.toMatch(/on the sheet Coverage|Photos and the raw readings/);
  });

  it("marks a cell of the report that was typed over, and says what figure that is", async () => {
    const place = REPORT.cells.find(({ formula }) => formula === "Used_CU")!.at;
    const report = await changed((file) => file.value("Report", place, 86.6));
    expect(report.own!.cells.find(({ at }) => at === place)).toMatchObject({
      kind: "caution",
      value: "✗ 66.6 (the file shows: 86.6)", // the example's CU is 66.6 %
    });
    expect(report.findings.map(({ text }) => text)).toContain(
      `Report!${place}: shows "86.6" for CU (Christiansen); what was typed gives "66.6".`,
    );
  });

  it("counts the findings that it has no line for", async () => {
    const report = await changed((file) => file.value(...file.place("Cans_Readings"), 21));
    const said = texts(report);
    const from = said.indexOf("Findings") + 1;
    const listed = said.slice(from).findIndex((text) => /^And \d+ more, which the check on screen lists\.$/.test(text));
    expect(listed).toBe(6);
    const left = Number(/\d+/.exec(said[from + listed]!)![0]);
    expect(said[2]).toContain(` And ${listed + left - 1} more: see Findings below. Against the limits`);
  });

  it("does not tell the officer what to press in the add-in", () => {
    expect(texts(clean).join("\n")).not.toMatch(/\bpane\b|the step |add-in/);
  });

  it("names another code than the first of the block beside the verdict, and what was found first", async () => {
    const { own, code } = await changed((file) => file.value(...file.place("Cans_Readings"), 21));
    const other = "Of the same site, block and date as first.xlsx, whose code is 1.";
    const [, verdict, against, file] = filledIn(own!, { ...HERE, other }).cells.map(({ value }) => String(value));
    expect(verdict).toMatch(/^✗ /);
    expect(against).not.toContain("Nothing was found");
    expect(against).toMatch(/^✗ Of the same site, block and date as first\.xlsx.* changed: The reading in Cans!/);
    expect(file).toContain(`Code of what is typed in it now: ${code}. Its pages have the code ${clean.code}.`);
  });

  it("names a figure that does not agree though nothing else was found", async () => {
    const report = await changed((file) => file.value(...file.place("Used_CU"), 92));
    expect(report.agrees).toBe(false);
    expect(texts(report)[2]).toContain("is stated as 92 %, and the readings give");
  });

  it("cuts what the file shows between words only", async () => {
    const counting = clean.own!.cells.find(({ value }) => String(value).startsWith("Each can "))!.at.split(":")[0]!;
    const report = await changed((file) => file.text("Report", counting, WORDS));
    expect(texts(report).join("\n")).toContain(
      "(the file shows: An approved bed, with more words than any line of a report has room for, so that they have to be cut somewhere, between …)",
    );
    expect(shortened("one two", 7)).toBe("one two");
    expect(shortened("one two three", 8)).toBe("one two …");
  });

  it("has room for each finding in the saved file: its letters of 9 points take 11 points a line, those of widths have 11 points", async () => {
    const report = await changed((file) => file.text("Report", "A3", WORDS));
    const { sheets } = openBook(await buildWorkbook([filledIn(report.own!, HERE)], {}));
    const rows = new Map(sheets[0]!.rows.map(({ number, given }) => [number, Number(given.get("ht") ?? 15)]));
    const letters = (11 / 9) * report.own!.widths.slice(0, 24).reduce((sum, width) => sum + width, 0);
    const found = report.own!.cells.filter(({ value }) => /^changed: .{150}/.test(String(value)));
    expect(found.length).toBeGreaterThan(1);
    for (const { at, value } of found) {
      const lines = Math.ceil(String(value).length / letters);
      expect(rows.get(Number(/\d+/.exec(at)![0])), String(value)).toBeGreaterThanOrEqual(11 * lines);
    }
  });

  it("shows a number in one form wherever it is", () => {
    expect([2500, 2501, 2500.5, 12345.678, 0.25, 1 / 3].map((value) => plainNumber(value))).toEqual([
      "2,500",
      "2,501",
      "2,500.5",
      "12,345.7",
      "0.25",
      "0.333333",
    ]);
    expect([2500, 2500.5, 0.25].map((value) => shownText(value, plainFormat(value)))).toEqual([
      "2,500",
      "2,500.5",
      "0.25",
    ]);
    expect([123456789, 2500.5].map((value) => plainNumber(value, 3))).toEqual(["123,456,789", "2,501"]);
  });

  it("says of the foot of pages that it has the code of another copy", async () => {
    const { findings } = await changed((file) => file.onSheet("Results", clean.code, "0123 4567 89ab cdef"));
    expect(findings.map(({ text }) => text)).toContain(
      "Results: the footer of its pages has the code 0123 4567 89ab cdef of another copy.",
    );
  });
});
