import { beforeAll, describe, expect, it } from "vitest";
import { placesOf } from "../../src/cells/places";
import { addressParts } from "../../src/cells/sheet-area";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { buildWorkbook, type Entries } from "../../src/workbook/form/build";
import { hiddenColumns } from "../../src/workbook/form/hidden-columns";
import { rowHeights } from "../../src/workbook/form/row-heights";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";
import { NURSERY_EXAMPLE } from "../../src/workbook/nursery/examples/nursery";
import { NURSERY_SHEETS } from "../../src/workbook/nursery/nursery-plan";
import { converted } from "../support/libreoffice";

const upTo = (count: number) => Array.from({ length: count }, (_, index) => index);
/** As many cans as the sheet takes. */
const FULL_AUDIT: Entries = {
  ...EXAMPLE_ENTRIES,
  Bed_Width_m: 40,
  Bed_Length_m: 60,
  Cans_Across_m: [upTo(20).map((column) => 1 + 2 * column)],
  Cans_Along_m: upTo(30).map((row) => [1 + 2 * row]),
  Cans_Readings: upTo(30).map((row) => upTo(20).map((column) => 12 + ((row * column) % 9))),
};
/** As many blocks and start times as the sheets take, of the longest names. */
const FULL_PLAN: Entries = {
  ...NURSERY_EXAMPLE,
  Program_Blocks: upTo(60).map((index) => [
    `House ${10 + index}, the long bench on the north`,
    "",
    400,
    12,
    1.4,
    6,
    2,
    30,
    "",
  ]),
  Start_Times: upTo(240).map((index) => [
    `House ${10 + (index % 60)}, the long bench on the north`,
    1 + Math.floor(index / 60),
    (index < 200 ? 1200 + index : index) / 1440,
    11,
  ]),
};
/** The pages of each sheet of a PDF by LibreOffice, which lists where each sheet begins: ISO 32000-1, 7.7.3.2 and 12.3.3. */
function pagesOf(pdf: Uint8Array): Record<string, number> {
  const text = Buffer.from(pdf).toString("latin1");
  const pages = /\/Kids\[([^\]]*)\]/.exec(text)![1]!.match(/\d+(?= 0 R)/g)!;
  const begins = [...text.matchAll(/\/Title<FEFF([0-9A-F]*)>\s*\/Dest\[(\d+) 0 R/g)].map(
    ([, title, page]): [string, number] => [
      Buffer.from(title!, "hex").swap16().toString("utf16le"),
      pages.indexOf(page!),
    ],
  );
  return Object.fromEntries(
    begins.map(([sheet, page], index) => [sheet, (begins[index + 1]?.[1] ?? pages.length) - page]),
  );
}
const pagesWanted = (sheets: readonly SheetSpec[], more: Record<string, number>) =>
  Object.fromEntries(sheets.map(({ name }) => [name, more[name] ?? 1]));

describe("full-size workbooks, printed by LibreOffice with the font that is there", () => {
  let pages: Record<string, number>[];
  beforeAll(async () => {
    const files = await Promise.all([
      buildWorkbook(AUDIT_SHEETS, FULL_AUDIT),
      buildWorkbook(AUDIT_SHEETS, {}),
      buildWorkbook(NURSERY_SHEETS, FULL_PLAN),
      buildWorkbook(NURSERY_SHEETS, {}),
    ]);
    pages = (await converted(files, "pdf")).map(pagesOf);
  }, 300_000);

  it("take as many pages of the audit as the blank form: one a sheet, two or four for long ones", () => {
    const wanted = pagesWanted(AUDIT_SHEETS, { Heads: 2, Cost: 4, Report: 2, Working: 2 });
    expect(pages.slice(0, 2)).toEqual([wanted, wanted]);
  });

  it("take as many pages of the plan as the blank form: one a sheet, two to six for long ones", () => {
    const wanted = pagesWanted(NURSERY_SHEETS, { Demand: 4, Weighings: 2, Register: 6, Program: 2 });
    expect(pages.slice(2)).toEqual([wanted, wanted]);
  });
});

describe("sheets whose pages end where a part ends", () => {
  const A4_PT = { width: 595.3, height: 841.9 };
  /** Left and right; above and below, as build.ts sets them. */
  const MARGINS_PT = { across: 2 * 36, up: 36 + 50.4 };
  const USUAL_PT = 15;
  /** Of a character of a column: Calibri 11 has digits of 7 pixels at 96 a inch (ECMA-376 part 1, 18.3.1.13). */
  const CHARACTER_PT = (7 * 72) / 96;

  const book = (sheets: readonly SheetSpec[]) =>
    sheets
      .filter(({ pageEnds }) => pageEnds)
      .map((spec): [string, SheetSpec, Readonly<Record<number, number>>] => [
        spec.name,
        spec,
        rowHeights(sheets).get(spec)!,
      ]);
  const rowsOf = (range: string) => range.match(/\d+/g)!.map(Number) as [number, number];

  it.each([...book(AUDIT_SHEETS), ...book(NURSERY_SHEETS)])(
    "%s: has room for each part on its page, in the widths of Calibri",
    (_, spec, heights) => {
      const { printed, widths, pageEnds = [], frozenRows = 0 } = spec;
      const charts = (spec.charts ?? []).map(({ over }) => over);
      const rows = printed ? [printed] : [...spec.cells.map(({ at }) => at), ...charts];
      const last = Math.max(...rows.map((range) => rowsOf(range).at(-1)!));
      const hidden = new Set(hiddenColumns(spec));
      const onPaper = new Set(
        printed ? placesOf(printed.replace(/\d+/g, "1")).map((at) => addressParts(at).column) : [],
      );
      const shown = widths.filter((_, i) => !hidden.has(i + 1) && (!printed || onPaper.has(i + 1)));
      const [paperAcross, paperUp] = spec.landscape ? [A4_PT.height, A4_PT.width] : [A4_PT.width, A4_PT.height];
      const across = (spec.pagesAcross ?? 1) * (paperAcross - MARGINS_PT.across);
      const scale = Math.min(1, across / (CHARACTER_PT * shown.reduce((sum, one) => sum + one, 0)));
      const tall = (from: number, to: number) =>
        Array.from({ length: to - from + 1 }, (_, i) => heights[from + i] ?? USUAL_PT).reduce(
          (sum, one) => sum + one,
          0,
        );
      const again = spec.repeated ? tall(...rowsOf(spec.repeated)) : tall(1, frozenRows);
      const ends = [...pageEnds, last];
      const parts = ends.map((end, i) => tall((ends[i - 1] ?? 0) + 1, end) + (i > 0 ? again : 0));
      expect(Math.max(...parts) * scale).toBeLessThan(paperUp - MARGINS_PT.up);
      expect(Math.min(...parts) * scale).toBeGreaterThan((paperUp - MARGINS_PT.up) / 2);
    },
  );
});

describe("names of blocks", () => {
  it("stay on one line where lines are alike, smaller where they are too long", () => {
    const cells = NURSERY_SHEETS.flatMap(({ name, cells }) =>
      cells.map((cell) => ({ ...cell, at: `${name}!${cell.at}` })),
    );
    const shrunk = new Set(cells.flatMap(({ at, shrink }) => (shrink ? [at] : [])));
    for (const at of [
      "Program!A27",
      "Program!A86",
      "Program!P5",
      "Start times!B6",
      "Start times!B245",
      "Start times!Z7",
      "Start times!AG46",
    ])
      expect(shrunk.has(at), at).toBe(true);
  });
});
