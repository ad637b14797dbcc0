import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { cellAt } from "../../src/cells/places";
import { fitNight } from "../../src/core/program/fit-night";
import { checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import type { CopyReport } from "../../src/share/copy-report";
import { programSheet } from "../../src/share/plan/program-answers";
import { NURSERY_EXAMPLE } from "../../src/workbook/nursery/examples/nursery";
import { NURSERY_SHEETS } from "../../src/workbook/nursery/nursery-plan";
import { programOf } from "../../src/workbook/nursery/program/entries";
import { cellsIn, namedArea, openBook } from "../../src/xlsx/parts/workbook-file";
import { converted } from "../support/libreoffice";
import { calculatedBooks } from "../support/templates";
import { ForgedFile } from "./forged/forged-file";

const DAY = new Date(2026, 10, 25);
let plan: Uint8Array;
let copy: Uint8Array;
let report: CopyReport;
beforeAll(async () => {
  const blank = openBook(new Uint8Array(readFileSync("templates/example-nursery.xlsx")));
  const { schedule } = fitNight(programOf(programSheet(blank)!).program!, 2000);
  const times = schedule.map(({ block, pulse, start, minutes }) => [block, pulse, start / 1440, minutes]);
  const entries = { ...NURSERY_EXAMPLE, Start_Times: times };
  [plan] = (await calculatedBooks([{ sheets: NURSERY_SHEETS, entries }])) as [Uint8Array];
  copy = await shareCopy(plan, DAY);
  report = await checkCopy(copy);
}, 180_000);

/** Sheet and address of the first cell of a name that holds a number above 0. */
function numberIn(file: Uint8Array, name: string): [sheet: string, address: string] {
  const book = openBook(file);
  const area = namedArea(book, name)!;
  const found = cellsIn(book, area).find(({ cell }) => typeof cell.value === "number" && cell.value > 0)!;
  return [area.sheet, found.address];
}

/** A file with the first number behind a name, or the place given, made another one. */
function forgedAt(file: Uint8Array, name: string, factor: number): Uint8Array {
  const forged = new ForgedFile(file);
  const [sheet, address] = numberIn(file, name);
  const value = Number(/<v>([^<]*)/.exec(forged.tag(sheet, address))![1]);
  forged.value(sheet, address, value * factor);
  return forged.bytes();
}

const textsOf = ({ figures, findings }: CopyReport) => [
  ...figures.filter(({ agrees }) => !agrees).map(({ label, place }) => `${label} in ${place}`),
  ...findings.filter((one) => one.class !== "added").map(({ text }) => text),
];

describe("a nursery plan is shared and checked like an audit", () => {
  it("an honest copy agrees, each figure of weather, weighings, demand, Program and leaching recomputed by core", () => {
    expect(textsOf(report)).toEqual([]);
    expect(report.agrees).toBe(true);
    expect(report.facts).toMatchObject({
      site: "Example Nursery (invented)",
      date: "2026-11-25",
      kind: "share copy of 2026-11-25, nursery plan",
    });
    expect(report.code).toMatch(/^[0-9a-f]{4}( [0-9a-f]{4}){3}$/);
    const labels = report.figures.map(({ label }) => label);
    expect(labels).toEqual(
      expect.arrayContaining([
        "ET0, January",
        "Useful rain, March",
        "Use of the pot in line 1",
        "Net depth, herbs 140, July",
        "Run time corrected",
      ]),
    );
    expect(labels.filter((label) => label.startsWith("Pulses, "))).not.toHaveLength(0);
  });

  it.each([["xlsx"], ["ods"]] as const)(
    "saved again by LibreOffice as .%s it accuses nobody, and keeps its code",
    async (kind) => {
      const saved = await converted([copy], kind);
      const again = await checkCopy(kind === "xlsx" ? saved[0]! : (await converted(saved, "xlsx"))[0]!);
      expect(textsOf(again)).toEqual([]);
      expect([again.agrees, again.code]).toEqual([true, report.code]);
    },
    180_000,
  );

  it.each([
    ["Weather_ET0", 1.1, "ET0, January in Weather!"],
    ["Weather_Rain", 0.9, "Useful rain, January in Weather!"],
    ["Weighings_Use", 1.01, "Use of the pot in line 1 in Weighings!"],
    ["Weighed_Mean_mL", 1.01, "Mean use of the pots weighed, "],
    ["Demand_Use_mL", 1.000001, "Use of a pot, tubes 50, January in Demand!"],
    ["Demand_Depths", 0.9, "Net depth, tubes 50, January in Demand!"],
    ["Program_Answers", 0.5, "Depth, "],
    ["Leaching_Run_Time_min", 0.5, "Run time corrected in 'Leaching test'!"],
  ])("a figure behind %s times %d is found", async (name, factor, said) => {
    const forged = await checkCopy(forgedAt(copy, name, factor));
    expect(textsOf(forged).some((text) => text.startsWith(said))).toBe(true);
    expect(forged.agrees).toBe(false);
  });

  it("start times that break a rule are found by separate code, though the sheet says ok and the list and hash fit", async () => {
    const forged = new ForgedFile(plan);
    const { sheet, top, left } = namedArea(openBook(plan), "Start_Times")!;
    const minutes = cellAt(top, left + 3);
    forged.value(sheet, minutes, 1);
    const found = await checkCopy(await shareCopy(forged.bytes(), DAY));
    expect(textsOf(found).find((text) => text.startsWith("Start times: block"))).toMatch(
      /runs 1 min, needs [\d.]+, and the sheet says that all rules are kept\.$/,
    );
  });

  it("start times changed after the copy was made are found by the list of what was typed", async () => {
    const found = await checkCopy(forgedAt(copy, "Start_Times", 2));
    expect(textsOf(found).some((text) => /when the copy was made and is/.test(text))).toBe(true);
  });
});
