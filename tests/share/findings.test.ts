import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { cellAt } from "../../src/cells/places";
import type { Stated } from "../../src/cells/stated";
import { checkBook } from "../../src/share/check/check-copy";
import { namedValue } from "../../src/share/copy/evidence-rows";
import { shareCopy } from "../../src/share/copy/share-copy";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { WORKBOOK_VERSION } from "../../src/workbook/version";
import { type FileBook, namedArea, openBook } from "../../src/xlsx/parts/workbook-file";

let copy: FileBook;

/** The book with other values in some cells, their formulas as they were. */
function withValues(book: FileBook, values: Readonly<Record<string, Stated>>): FileBook {
  const sheets = book.sheets.map((sheet) => {
    const cells = new Map(sheet.cells);
    for (const [place, value] of Object.entries(values)) {
      const [name, address = ""] = place.split("!");
      if (name === sheet.name) cells.set(address, { ...cells.get(address)!, value });
    }
    return { ...sheet, cells };
  });
  return { ...book, sheets };
}

function placeOf(book: FileBook, name: string): string {
  const { sheet, top, left } = namedArea(book, name)!;
  return `${sheet}!${cellAt(top, left)}`;
}

/** Where a data check of the sheet Cans says what it found. */
function checkPlace(label: string): string {
  const { cells } = AUDIT_SHEETS.find(({ name }) => name === "Cans")!;
  const [line] = cells.filter(({ kind, value }) => kind === "label" && value === label).slice(-1);
  const row = /\d+/.exec(line!.at)![0];
  return `Cans!B${row}`;
}

const findings = async (values: Readonly<Record<string, Stated>>) =>
  (await checkBook(withValues(copy, values), AUDIT_SHEETS)).findings.map(({ text }) => text);

beforeAll(async () => {
  const example = new Uint8Array(readFileSync("templates/example-audit.xlsx"));
  copy = openBook(await shareCopy(example, new Date(2026, 10, 25)));
});

describe("the sheet Evidence", () => {
  const rowOf = (label: string) => {
    const cells = copy.sheets.find(({ name }) => name === "Evidence")!.cells;
    const [at] = [...cells].find(([, { value }]) => value === label)!;
    return (column: string) => cells.get(column + at.slice(1))?.value;
  };

  it("states each figure once, as the report does; with equal weight only what is over 2 % apart", () => {
    const measure = rowOf("CU (Christiansen) [%]");
    expect([rowOf("Measure")("D"), measure("D")]).toEqual(["Value", namedValue(copy, "Used_CU")]);
    // CU of 63.3 beside 66.6 is 5 % apart, a rate of 8.56 beside 9.42 is 9 %
    expect(measure("F")).toBe(namedValue(copy, "Result_CU"));
    expect(rowOf("Mean application rate [mm/h]")("F")).toBe(namedValue(copy, "Result_MAR"));
    const report = copy.sheets.find(({ name }) => name === "Report")!.cells;
    expect([...report.values()].map(({ value }) => value)).toContain(measure("D"));
  });

  it("gives the day of the copy in signs too", () => {
    expect(rowOf("Day of the copy (day number)")("C")).toBe("2026-11-25");
  });
});

describe("the findings of a check", () => {
  it("are none for the example as it is", async () => {
    expect(await findings({})).toEqual([]);
  });

  it("name the cell of a changed reading, and its row and column among the cans", async () => {
    const { sheet, top, left } = namedArea(copy, "Cans_Readings")!;
    const found = await findings({ [`${sheet}!${cellAt(top + 4, left)}`]: 31.5 });
    expect(found.join("\n")).toContain("The reading in Cans!G10 (row 5, column 1 of the cans) was ");
  });

  it("are before what follows from them, and only where what was typed was changed", async () => {
    const { sheet, top, left } = namedArea(copy, "Cans_Readings")!;
    const reading = { [`${sheet}!${cellAt(top + 4, left)}`]: 31.5 };
    const changed = await checkBook(withValues(copy, reading), AUDIT_SHEETS);
    expect(changed.findings).toHaveLength(1);
    expect(changed.follows.length).toBeGreaterThan(0);
    expect(changed.sentence).toContain(
      `1 thing was changed or is not as it should be, from which ${changed.follows.length} more follow.`,
    );
    const painted = await checkBook(withValues(copy, { [checkPlace("Wind")]: "calm" }), AUDIT_SHEETS);
    expect(painted.findings).toHaveLength(1);
    expect(painted.follows).toEqual([]);
    expect(painted.sentence).toMatch(
      /^1 thing was changed or is not as it should be\. \d+ agree; 1 cannot be given, since entries are missing\./,
    );
  });

  it("leave each figure with the cell in which it is", async () => {
    const { figures } = await checkBook(withValues(copy, { [placeOf(copy, "Used_SC_Can")]: 1.45 }), AUDIT_SHEETS);
    const wrong = figures.filter(({ agrees }) => !agrees);
    expect(wrong.map(({ label, place }) => [label, place])).toEqual([
      ["SC (driest can)", placeOf(copy, "Used_SC_Can")],
    ]);
  });

  it.each([
    ["Result_CU", 104, "CU (Christiansen), equal weight must be at most 100 %, and the file states 104 %."],
    ["Weighted_DU_Quarter", -2, "DU (low quarter), by area must be 0 or more, and the file states -2 %."],
    [
      "Used_SC_Can",
      0.9,
      "SC (driest can) must be at least 1, since no can holds less than the driest, and the file states 0.9.",
    ],
    ["Result_Water_kL", -12, "Needed now must be 0 or more, and the file states -12 kL a year."],
  ])("say that %s cannot be %d", async (name, value, words) => {
    expect(await findings({ [placeOf(copy, name)]: value })).toContainEqual(
      expect.stringMatching(new RegExp(`: ${words.replace(/[()]/g, "\\$&")}$`)),
    );
  });

  it("name an impossible side of the bed even where all figures follow from it", async () => {
    const found = await findings({ [placeOf(copy, "Bed_Width_m")]: -12 });
    expect(found.filter((finding) => finding.includes("must be 0 or more"))).toHaveLength(1);
  });

  it("name a data check whose words were changed by hand, with what it should say", async () => {
    const place = checkPlace("Mean catch");
    // the example's cans hold 5 mm and more in the mean
    expect(await findings({ [place]: "Mean catch 1.9 mm, under 2.3: run the test longer; 5 mm is better." })).toEqual([
      `${place}: shows "Mean catch 1.9 mm, under 2.3: run the test longer; 5 mm is better."; what was typed gives "ok".`,
    ]);
  });

  it("take a decimal comma in a text for the same number", async () => {
    const said = [...copy.sheets.find(({ name }) => name === "Report")!.cells];
    const commas = said.flatMap(([address, { value, formula }]) =>
      formula && typeof value === "string" && /\d\.\d/.test(value)
        ? [[`Report!${address}`, value.replace(/(\d)\.(\d)/g, "$1,$2")] as const]
        : [],
    );
    expect(commas.length).toBeGreaterThan(0);
    expect(await findings(Object.fromEntries(commas))).toEqual([]);
  });

  it("name another version of the workbook first, as the likely cause", async () => {
    const found = await findings({ [placeOf(copy, "Workbook_Version")]: "0.9", [checkPlace("Wind")]: "calm" });
    expect(found[0]).toBe(
      `The file is of version 0.9 of the audit workbook, and this check knows version ${WORKBOOK_VERSION}: that is the likely cause where formulas, texts or figures differ. Check it with Canfall of its own version to be sure.`,
    );
    expect(found.length).toBeGreaterThan(1);
  });
});
