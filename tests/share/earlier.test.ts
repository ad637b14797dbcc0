import { readFileSync } from "node:fs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { checkCopy } from "../../src/share/check/check-copy";
import { namedValue } from "../../src/share/copy/evidence-rows";
import { shareCopy } from "../../src/share/copy/share-copy";
import type { CopyReport } from "../../src/share/copy-report";
import { EARLIER_VERSIONS, newsSince, planNewsSince } from "../../src/workbook/earlier/earlier-sheets";
import { PLAN_VERSION, WORKBOOK_VERSION } from "../../src/workbook/version";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { openBook } from "../../src/xlsx/parts/workbook-file";

import { formulaResults } from "../support/formula-results";
import { converted } from "../support/libreoffice";
import { plantedFile } from "../support/planted";

/** The example audit as Canfall handed it out with version 1.1 of the workbook. */
const example = new Uint8Array(readFileSync(new URL("example-audit-1.1.xlsx", import.meta.url)));

it("the present version is none of the earlier ones", () => {
  expect(EARLIER_VERSIONS).not.toContain(WORKBOOK_VERSION);
  expect(namedValue(openBook(example), "Workbook_Version")).toBe("1.1");
});

/** A file whose cached values are all wrong, calculated by LibreOffice: which cells differ from what the file had. */
async function recalculated(file: Uint8Array) {
  const [calculated] = await converted([plantedFile(file)], "xlsx");
  const [before, after] = [formulaResults(file), formulaResults(calculated!)];
  const same = (one: unknown, other: unknown) =>
    typeof one === "number" && typeof other === "number"
      ? Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one))
      : (one ?? "") === (other ?? "");
  const wrong = [...before].filter(([place, value]) => !same(value, after.get(place)));
  return { cells: before.size, wrong };
}

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

  it("calculates as before in a spreadsheet program", async () => {
    const found = await recalculated(example);
    expect(found.wrong).toEqual([]);
    expect(found.cells).toBeGreaterThan(2000);
  }, 120_000);

  it("says all that is new since", () => {
    for (const what of [
      "by area as soon as places and bed are typed",
      "the share of the water that drains is summed over the cans",
      "between the pots",
      "up to four pot sizes",
      "every bed on the valve",
      "staggered heads",
      "walk-through",
      "no leaching is advised where the water may be salty",
      "limits from memory say so",
    ]) {
      expect(newsSince("1.1")).toContain(what);
    }
  });

  it("says it in the check of a copy", () => {
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
    expect((await checkCopy(other)).findings.map(({ text }) => text).join("\n")).toContain("the formula was changed");
  });
});

it("a workbook of the present version says nothing of news", async () => {
  const now = new Uint8Array(readFileSync("templates/example-audit.xlsx"));
  expect((await checkCopy(now)).news).toBe("");
});

describe("a nursery plan of version 1.0", () => {
  const plan = new Uint8Array(readFileSync(new URL("example-nursery-1.0.xlsx", import.meta.url)));

  it("opens with all its sheets, calculates as before, and keeps its leaching test", async () => {
    expect(namedValue(openBook(plan), "Plan_Version")).toBe("1.0");
    const opened = await XlsxFile.open(plan);
    expect(opened.book().sheets.map(({ name }) => name)).toEqual(openBook(plan).sheets.map(({ name }) => name));
    const found = await recalculated(plan);
    expect(found.wrong).toEqual([]);
    expect(found.cells).toBeGreaterThan(2000);
  }, 120_000);

  it("has the run time of the old test: 95 min · (1 - 130/520) / (1 - 0.10)", () => {
    expect(namedValue(openBook(plan), "Leaching_Run_Time_min")).toBeCloseTo((95 * (1 - 130 / 520)) / 0.9, 9);
  });

  it("says what is new since; one of the present version says nothing", () => {
    expect(planNewsSince("1.0")).toMatch(
      /^This nursery plan is of version 1\.0 and keeps the rules of that version\. New since: the leaching test weighs .*FAO-56/,
    );
    expect(planNewsSince(PLAN_VERSION)).toBeNull();
  });
});
