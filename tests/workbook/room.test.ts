import { Workbook } from "@cj-tech-master/excelts";
import { describe, expect, it } from "vitest";
import { columnNumber } from "../../src/cells/letters";
import { placesOf } from "../../src/cells/places";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { buildWorkbook } from "../../src/workbook/form/build";
import { lookOfKind } from "../../src/workbook/form/cell-looks";
import { heightsWithRoom, linesOf, saidIn } from "../../src/workbook/form/row-heights";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";
import { NURSERY_SHEETS } from "../../src/workbook/nursery/nursery-plan";

/** Calibri bold: about half its size a letter, on the average; common practice, no source. */
const LETTER_PX = 0.5 * 11 * (4 / 3);
const LINE_PT = 13;

/** Cells whose own "needs …" texts do not fit into their width and height, by plain counting of letters. */
async function tooSmall(sheets: readonly SheetSpec[]): Promise<string[]> {
  const book = new Workbook();
  await book.xlsx.load(await buildWorkbook(sheets, {}));
  return sheets.flatMap((spec) => {
    const sheet = book.getWorksheet(spec.name)!;
    if (!spec.roomy) return [];
    return spec.cells.flatMap(({ at, kind, formula = "" }) => {
      if (kind !== "answer") return [];
      const cells = placesOf(at).map((place) => sheet.getCell(place));
      const columns = new Set(cells.map(({ col }) => Number(col)));
      const width = [...columns].reduce((sum, column) => sum + 7 * (sheet.getColumn(column).width ?? 8), 0);
      const height = sheet.getRow(Number(cells[0]!.row)).height ?? 15;
      return [...formula.matchAll(/"(needs [^"]*)"/g)].flatMap(([, text]) => {
        const lines = Math.ceil((text!.length * LETTER_PX) / width);
        return lines * LINE_PT > height + 2 ? [`${spec.name}!${at}: ${text}`] : [];
      });
    });
  });
}

describe("room for words", () => {
  it("is wide and high enough for what an answer may still need", async () => {
    expect(await tooSmall(AUDIT_SHEETS)).toEqual([]);
    expect(await tooSmall(NURSERY_SHEETS)).toEqual([]);
  }, 60_000);

  it("is high enough for a long cause that is kept with what was measured", () => {
    const coverage =
      "The edges get 48 % of the middle. 18 of 30 cans get under three quarters of the mean, all on the edges.";
    const cause = [
      "What may be wrong: Cannot tell: no cause reaches 60 %; the cans differ from every fit by more than reading error.",
      "Leading: pressure falls along the line, towards the left (50 %).",
      "Next: read the pressure at the first and the last head of the line.",
      "Used beside the cans: bucket at 5 heads: 97 to 104 % of their mean; pressure at 5 heads: 95 to 108 % of their mean;",
      "mean pressure: 99 % of the maker's; mean wind: 0.9 m/s, towards the top left; supply: top side.",
    ].join(" ");
    const handing = AUDIT_SHEETS.flatMap((spec) =>
      spec.cells.filter(({ formula }) => formula?.includes("Cause_Sentence")).map((cell) => ({ spec, cell })),
    ).filter(({ spec, cell }) => spec.name !== "Working" && cell.kind !== "working");
    expect(handing.map(({ spec }) => spec.name)).toEqual(["Coverage", "Actions", "Report"]);
    for (const { spec, cell } of handing) {
      const text = cell.formula!.includes("Coverage_Sentence") ? `${coverage} ${cause}` : cause;
      const [first, last] = cell.at.split(":").map((place) => columnNumber(place.replace(/\d/g, "")));
      const width = spec.widths.slice(first! - 1, last).reduce((sum, letters) => sum + 7 * letters, 0);
      const share = (lookOfKind(cell.kind).font?.size ?? 11) / 11;
      const lines = linesOf(text, width / (share * LETTER_PX));
      const row = Number(/\d+/.exec(cell.at)![0]);
      expect(spec.heights?.[row], `${spec.name}: ${lines} lines`).toBeGreaterThanOrEqual(lines * share * LINE_PT);
    }
  });

  it("breaks lines between words, and words that are longer than a line", () => {
    expect(linesOf("needs watering days", 20)).toBe(1);
    expect(linesOf("needs watering days", 14)).toBe(2); // needs watering | days
    expect(linesOf("needs watering days", 10)).toBe(3);
    expect(linesOf("abcdefghij", 4)).toBe(3); // abcd | efgh | ij
  });

  it("is given for words that a cell hands on from another sheet", () => {
    const far = "needs minutes and mouth: see Cans";
    const sheets: SheetSpec[] = [
      { name: "Far", widths: [60], cells: [{ at: "A1", kind: "answer", name: "Far_Rate", formula: `"${far}"` }] },
      {
        name: "Near",
        widths: [20],
        cells: [{ at: "A1", kind: "answer", formula: "IF(ISNUMBER(Far_Rate),2*Far_Rate,Far_Rate)" }],
      },
    ];
    const said = saidIn(sheets);
    expect(said(sheets[1]!.cells[0]!)).toEqual([far]);
    expect(heightsWithRoom(sheets[1]!, said)[1]).toBeGreaterThanOrEqual(2 * LINE_PT); // 33 letters at 20 a line
  });
});
