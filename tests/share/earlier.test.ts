import { readFileSync } from "node:fs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { checkCopy } from "../../src/share/check/check-copy";
import { namedValue } from "../../src/share/copy/evidence-rows";
import { shareCopy } from "../../src/share/copy/share-copy";
import type { CopyReport } from "../../src/share/copy-report";
import { EARLIER_VERSIONS } from "../../src/workbook/earlier/earlier-sheets";
import { WORKBOOK_VERSION } from "../../src/workbook/version";
import { openBook } from "../../src/xlsx/parts/workbook-file";

/** The example audit as Canfall handed it out with version 1.1 of the workbook. */
const example = new Uint8Array(readFileSync(new URL("example-audit-1.1.xlsx", import.meta.url)));

it("the present version is none of the earlier ones", () => {
  expect(EARLIER_VERSIONS).not.toContain(WORKBOOK_VERSION);
  expect(namedValue(openBook(example), "Workbook_Version")).toBe("1.1");
});

describe("a workbook of version 1.1", () => {
  let copy: Uint8Array;
  let report: CopyReport;
  beforeAll(async () => {
    copy = await shareCopy(example, new Date(2026, 10, 25));
    report = await checkCopy(copy);
  });
  const figure = (name: string) => report.figures.find((one) => one.name === name)!;

  it("is checked by its own rules: a copy of it raises nothing", () => {
    expect(report.findings).toEqual([]);
    expect(report.figures.filter(({ agrees }) => !agrees)).toEqual([]);
    expect(report.agrees).toBe(true);
    expect(report.figures.length).toBeGreaterThan(100);
  });

  it("has the figures that it stated then", () => {
    // its share of pots was one of the cans, weighted by the means: 1.4267 · 11.6009 / 10.8989
    expect(figure("Used_SC_Share").recomputed).toBeCloseTo((1.42666666666667 * 11.6008922213811) / 10.898930502933, 9);
    expect(figure("Positions_Uneven").recomputed).toBe(true);
    expect(report.line?.grid).toBe("5 × 5, by area");
  });

  it("says what is new since", () => {
    expect(report.news).toMatch(
      /^This workbook is of version 1\.1 and keeps the rules of that version\. New since: by area/,
    );
  });

  it("is found changed all the same, in a figure, a formula and a reading", async () => {
    const sheet = openBook(copy).sheets.find(({ name }) => name === "Results")!;
    const xml = strFromU8(unzipSync(copy)[sheet.part]!);
    const stated = String(namedValue(openBook(copy), "Used_DU"));
    expect(xml).toContain(`<v>${stated}</v>`);
    const forged = zipSync({
      ...unzipSync(copy),
      [sheet.part]: strToU8(xml.replaceAll(`<v>${stated}</v>`, "<v>88</v>")),
    });
    const found = await checkCopy(forged);
    expect(found.agrees).toBe(false);
    expect(found.figures.find(({ name }) => name === "Used_DU")).toMatchObject({ stated: 88, agrees: false });
    const other = zipSync({
      ...unzipSync(copy),
      [sheet.part]: strToU8(
        xml.replace("IF(Positions_Uneven,Weighted_DU_Quarter", "IF(Positions_Uneven,99+Weighted_DU_Quarter"),
      ),
    });
    expect((await checkCopy(other)).findings.join("\n")).toContain("the formula was changed");
  });
});

it("a workbook of the present version says nothing of news", async () => {
  const now = new Uint8Array(readFileSync("templates/example-audit.xlsx"));
  expect((await checkCopy(now)).news).toBe("");
});
