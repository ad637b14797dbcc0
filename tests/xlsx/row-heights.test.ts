import { describe, expect, it } from "vitest";
import { fittedHeights } from "../../src/desk/files/row-heights";
import type { BookCell, BookSheet } from "../../src/xlsx/desk-file/book";

function sheet(cells: BookCell[], changed: Partial<BookSheet> = {}): BookSheet {
  return {
    key: "a",
    name: "A",
    hidden: false,
    rows: 9,
    columns: 3,
    widths: { 0: 100 },
    heights: {},
    usual: { width: 70, height: 20 },
    hiddenRows: [],
    hiddenColumns: [],
    frozen: { rows: 0, columns: 0 },
    gridLines: true,
    merges: [],
    validations: [],
    conditions: [],
    notes: [],
    pictures: [],
    unlocked: null,
    ownNames: [],
    cells,
    ...changed,
  };
}
const words = "a sentence of thirty letters ab";

describe("rows whose file says no height", () => {
  it("get room for large letters and for the lines of wrapped text", () => {
    const heights = fittedHeights(
      sheet([
        { row: 0, column: 0, input: "Title", look: { size: 16 } },
        { row: 1, column: 0, input: words, look: { wrap: true } },
        { row: 2, column: 0, input: words },
      ]),
    );
    expect(heights[0]).toBeGreaterThan(16 * (4 / 3)); // letters of 16 points are 21.3 px high
    expect(heights[1]).toBeGreaterThan(2 * 11 * (4 / 3)); // more than two lines of 11 points
    expect(heights[2] ?? 20).toBeLessThan(2 * 11 * (4 / 3)); // not wrapped: one line
  });

  it("measure what a formula gave, and over merged cells", () => {
    const cell = { column: 0, input: "=B1", cached: words, look: { wrap: true } } as const;
    const merges = [{ startRow: 1, endRow: 1, startColumn: 0, endColumn: 9 }];
    const heights = fittedHeights(
      sheet(
        [
          { row: 0, ...cell },
          { row: 1, ...cell },
        ],
        { merges },
      ),
    );
    expect(heights[0]).toBeGreaterThan(2 * 11 * (4 / 3));
    expect(heights[1] ?? 20).toBeLessThan(2 * 11 * (4 / 3));
  });

  it("leave a row alone whose file says its height, and numbers in one line", () => {
    const long = { row: 0, column: 0, input: words, look: { wrap: true } } as const;
    expect(fittedHeights(sheet([long], { heights: { 0: 20 } }))).toEqual({});
    expect(fittedHeights(sheet([{ row: 0, column: 0, input: 1 / 3, look: { wrap: true, size: 9 } }]))).toEqual({});
  });
});
