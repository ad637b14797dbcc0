import { beforeAll, describe, expect, it } from "vitest";
import { placesOf } from "../../src/cells/places";
import { checkBook, checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import { sourceBlocks } from "../../src/taskpane/map/coverage-inputs";
import { gridSource } from "../../src/taskpane/map/source";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { COVERAGE_ALONE } from "../../src/workbook/audit/coverage/alone";
import { COVERAGE } from "../../src/workbook/audit/coverage/coverage";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { buildWorkbook } from "../../src/workbook/form/build";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";
import { type FileBook, openBook } from "../../src/xlsx/parts/workbook-file";
import { converted } from "../support/libreoffice";
import { recalculated } from "../support/recalculated";

const BED = { sheet: "Bed 7", address: "B2:D4" };
const CATCHES = [
  [20, 25, 30],
  [22, "x", 28],
  [10, 24, 26],
];

/** A sheet of readings outside the audit. */
const READINGS: SheetSpec = {
  name: BED.sheet,
  widths: [10],
  cells: placesOf(BED.address).map((at, i) => ({
    at,
    kind: "reading",
    value: CATCHES[Math.floor(i / 3)]![i % 3]!,
  })),
};

/** The Coverage sheet as the pane paints it over the readings: a 15 minute test, cans of 100 mm. */
function painted(spec: SheetSpec): SheetSpec {
  const source = gridSource(CATCHES, BED, { minutes: 15, mouth: 100 }, [0, 2, 4], [0, 2, 4]);
  const given = (value: number) => ({ value, hint: "", problem: "" });
  const inputs = new Map(
    sourceBlocks(source, { minutes: given(15), mouth: given(100) } as never).flatMap(({ address, inputs }) =>
      placesOf(address).map((at, i) => [at, inputs.flat()[i]!] as const),
    ),
  );
  const cells = spec.cells.map(({ formula, value, ...cell }) => {
    const input = inputs.get(cell.at);
    if (input === undefined) return { ...cell, ...(formula && { formula }), ...(value !== undefined && { value }) };
    if (typeof input === "string" && input.startsWith("=")) return { ...cell, formula: input.slice(1) };
    return typeof input === "number" ? { ...cell, value: input } : cell;
  });
  return { ...spec, cells };
}

const inAudit = [...AUDIT_SHEETS.map((spec) => (spec === COVERAGE ? painted(COVERAGE) : spec)), READINGS];
const alone = [READINGS, painted(COVERAGE_ALONE)];

/** A book with one cell changed. */
function changed(book: FileBook, sheet: string, address: string, change: object): FileBook {
  const sheets = book.sheets.map((one) => {
    if (one.name !== sheet) return one;
    return { ...one, cells: new Map(one.cells).set(address, { ...one.cells.get(address)!, ...change }) };
  });
  return { ...book, sheets };
}

/** A sheet of one's own is named, and accuses nobody. */
const OWN_SHEET = "Bed 7: is a sheet that Canfall's own workbook does not have.";

describe("a Coverage sheet that was painted from other cells", () => {
  let copies: Uint8Array[];
  beforeAll(async () => {
    const entries = [EXAMPLE_ENTRIES, {}];
    const sheets = [inAudit, alone];
    const raw = await Promise.all(sheets.map((specs, i) => buildWorkbook(specs, entries[i]!)));
    const results = await recalculated(raw);
    copies = [];
    for (const [i, specs] of sheets.entries()) {
      copies.push(await shareCopy(await buildWorkbook(specs, entries[i]!, results[i]!), new Date(2026, 10, 25)));
    }
  });

  it("raises nothing untouched, in an audit or alone, nor once LibreOffice has saved it", async () => {
    for (const copy of [...copies, ...(await converted(copies, "xlsx"))]) {
      const { findings } = await checkCopy(copy);
      expect(findings.filter(({ text }) => text !== OWN_SHEET)).toEqual([]);
    }
  });

  it.each([
    ["a reading elsewhere", "Bed 7", "B2", { value: 21 }, /'Bed 7'!B2/],
    ["a rate", "Coverage", "Y14", { value: 12.5 }, /Coverage!Y14: shows "12.50"; what was typed gives "10.19"/],
    // another can's reading under this can's place
    ["a formula", "Coverage", "Y14", { formula: formulaOf("'Bed 7'!D2") }, /^What Coverage!Y14 draws on was/],
    [
      "a formula typed over",
      "Coverage",
      "Y14",
      { formula: undefined },
      /^What Coverage!Y14 draws on was "=IF.* and is "10.18/,
    ],
    ["a place", "Coverage", "Z13", { value: 2.5 }, /What Coverage!Z13 draws on was "2.00"/],
    [
      "what is seen",
      "Coverage",
      "A2",
      { value: "No can gets under three quarters of the mean." },
      /^Coverage!A2: shows/,
    ],
  ])("is found changed by %s", async (_, sheet, address, change, finding) => {
    for (const copy of copies) {
      const { findings } = await checkBook(changed(openBook(copy), sheet, address, change), AUDIT_SHEETS);
      expect(findings.map(({ text }) => text).join("\n")).toMatch(finding);
    }
  });
});

function formulaOf(can: string): string {
  return `IF(ISNUMBER(${can}),${can}*1000/(PI()*100^2/4)*60/15,IF(TRIM(${can})="x","x",""))`;
}
