import { beforeAll, describe, expect, it } from "vitest";
import { checkBook, checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import type { Entries } from "../../src/workbook/form/build";
import { type FileBook, openBook } from "../../src/xlsx/parts/workbook-file";
import { converted } from "../support/libreoffice";
import { plantedFile } from "../support/planted";
import { randomNumbers } from "../support/random";
import { calculatedAudits } from "../support/templates";
import { missedChanges } from "./missed-changes";

const NOW = new Date(2026, 10, 25);
/** `npm run proof:share` makes 500. */
const CHANGES = 100;
const readings = (rows: number, columns: number, random: () => number, odd: string | number) =>
  Array.from({ length: rows }, (_, i) =>
    Array.from({ length: columns }, (_, j) => (i === 1 && j === 1 ? odd : Math.round(200 + 200 * random()) / 10)),
  );

const random = randomNumbers(7);
const AUDITS: Entries[] = [
  EXAMPLE_ENTRIES,
  {
    ...EXAMPLE_ENTRIES,
    Cans_Readings: readings(5, 5, random, "x"),
    Cans_Across_m: [[0.5, 2, 6, 8.75, 11.5]],
    Pot_Shape: "square",
    Multiplier_Basis: "share of pots",
    Leaching_Rule: "both",
    In_Bed_Share: "",
  },
  {
    ...EXAMPLE_ENTRIES,
    Cans_Readings: readings(5, 5, random, 0),
    Limit_Set: "Queensland notes",
    Head_Layout: "border",
  },
];
/** Half-filled forms: nothing, readings without places, too few of them, a reading that is wrong, all dry. */
const HALF_FILLED: Entries[] = [
  {},
  { Cans_Readings: readings(4, 4, random, 30), Test_Minutes: 15, Can_Mouth_mm: 80, Share_Wanted: "" },
  { Cans_Readings: [[12, 15, 11]], Depth_Typed_mm: 5, Test_Minutes: 30, Can_Mouth_mm: "" },
  { ...EXAMPLE_ENTRIES, Cans_Readings: readings(5, 5, random, "12 mL") },
  {
    Cans_Readings: [
      [0, 0],
      [0, 0],
    ],
    Test_Minutes: 30,
    Can_Mouth_mm: 80,
  },
];

describe("share copies of whole audits", () => {
  let copies: Uint8Array[];
  let books: FileBook[];
  let recalculated: Uint8Array[];
  beforeAll(async () => {
    const files = await calculatedAudits([...AUDITS, ...HALF_FILLED]);
    copies = [];
    for (const file of files) copies.push(await shareCopy(file, NOW));
    books = copies.slice(0, AUDITS.length).map(openBook);
    recalculated = await converted(copies.map(plantedFile), "xlsx");
  });

  it("raise nothing untouched, filled or half-filled", async () => {
    for (const copy of copies) {
      const { findings, figures, agrees } = await checkCopy(copy);
      expect({ findings, wrong: figures.filter((figure) => !figure.agrees) }).toEqual({ findings: [], wrong: [] });
      expect(agrees).toBe(true);
    }
  });

  it("raise nothing after LibreOffice calculated them anew, all cached values having been wrong, and saved them", async () => {
    for (const copy of recalculated) {
      const { findings, figures } = await checkCopy(copy);
      expect({ findings, wrong: figures.filter((figure) => !figure.agrees) }).toEqual({ findings: [], wrong: [] });
    }
    expect((await checkCopy(plantedFile(copies[0]!))).agrees).toBe(false);
  });

  it(`are found changed, whichever of ${CHANGES} cells was changed`, async () => {
    expect(await missedChanges(books, CHANGES)).toEqual([]);
  }, 600_000);

  it("name the sheet that is missing and the figure that is wrong", async () => {
    const { sheets, ...rest } = books[0]!;
    const without = { ...rest, sheets: sheets.filter(({ name }) => name !== "Heads") };
    expect((await checkBook(without, AUDIT_SHEETS)).findings.map(({ text }) => text)).toContain(
      "The sheet Heads is missing.",
    );
  });
});
