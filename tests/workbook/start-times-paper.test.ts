import { describe, expect, it } from "vitest";
import { START_TIMES } from "../../src/workbook/sheets/start-times";

describe("the lines of Start times that are printed", () => {
  it("have neither fill nor edges until something stands in them", () => {
    const printed = START_TIMES.cells.filter(({ at }) => /^[A-I]\d+$/.test(at) && Number(at.slice(1)) > 5);
    expect(printed).toHaveLength(9 * 240);
    expect(printed.filter(({ bare }) => !bare)).toEqual([]);
    expect(START_TIMES.shades!.filter(({ range }) => range === "A6:I245").map(({ formula }) => formula)).toEqual([
      'AND($I6<>"",$I6<>"ok")',
      "COUNTA($B6:$E6)>0",
    ]);
  });
});
