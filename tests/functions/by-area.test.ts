import { beforeAll, describe, expect, it } from "vitest";
import { canAreas } from "../../src/functions/areas";
import { cuChristiansen, duQuarter, scQuarter, scShare } from "../../src/functions/uniformity";
import { cell, fakeCustomFunctions } from "../support/custom-functions";
import fc from "../support/properties";
import { AREA_CALLS, byArea, COLUMN, exchanged } from "./calls";

const areaColumn = (area: unknown) => COLUMN.map(() => [area]);
const withArea = (index: number, value: unknown) => COLUMN.map((_, i) => [i === index ? value : 2]);

function refused(message: string) {
  return { error: "#VALUE!", message };
}

beforeAll(() => void fakeCustomFunctions());

it("eleven functions take the area of each can", () => {
  expect(AREA_CALLS).toHaveLength(11);
});

describe.each(AREA_CALLS)("$id with areas", (call) => {
  const at = call.names.indexOf("areas");
  const with_ = (areas: unknown) => cell(() => exchanged(call, at, areas));

  it("is as it was where they are left out", () => {
    const without = call.run(...call.names.slice(0, at).map((_, i) => call.good[i]));
    for (const left of [undefined, null, ""]) expect(with_(left)).toEqual(without);
  });

  it("does not depend on their unit", () => {
    expect(with_(areaColumn(1e-6))).toEqual(with_(areaColumn(1e-6)));
    const one = [with_(areaColumn(0.25)), with_(areaColumn(250))].flat(2);
    expect(one.every((value) => typeof value !== "object")).toBe(true);
    expect(with_(areaColumn(0.25))).toEqual(with_(areaColumn(0.25 * 2 ** 30)));
  });

  it("refuses areas that are not above 0, and names their cell", () => {
    const rule = (value: unknown, got: string) => {
      expect(with_(withArea(2, value))).toEqual(refused(`areas must be more than 0, got ${got} in row 3, column 1`));
    };
    rule(0, "0");
    rule(-1, "-1");
    rule("", "a blank cell");
    rule(null, "a blank cell");
    rule(Number.NaN, "NaN");
    rule(Number.POSITIVE_INFINITY, "Infinity");
  });

  it.each([
    ["x", '"x"'],
    ["4 m2", '"4 m2"'],
    [true, "TRUE"],
  ])("refuses areas that are no numbers: %s", (value, got) => {
    expect(with_(withArea(2, value))).toEqual(refused(`areas must be numbers, got ${got} in row 3, column 1`));
  });

  it("refuses areas out of all measure", () => {
    expect(with_(withArea(0, 1e-101))).toEqual(refused("areas must be at least 1e-100, got 1e-101 in row 1, column 1"));
    expect(with_(withArea(0, 1e101))).toEqual(refused("areas must be at most 1e100, got 1e+101 in row 1, column 1"));
  });

  it("refuses another shape, and names the first cell that has no partner", () => {
    const wanted = "areas must have the shape of the readings, 20 rows and 1 column";
    expect(with_([COLUMN.map(() => 1)])).toEqual(
      refused(`${wanted}, got 1 row and 20 columns, unlike from row 1, column 2 on`),
    );
    expect(with_(areaColumn(1).slice(1))).toEqual(
      refused(`${wanted}, got 19 rows and 1 column, unlike from row 20, column 1 on`),
    );
    expect(with_([...areaColumn(1), [1]])).toEqual(
      refused(`${wanted}, got 21 rows and 1 column, unlike from row 21, column 1 on`),
    );
    expect(with_(5)).toEqual(refused(`${wanted}, got 1 row and 1 column, unlike from row 2, column 1 on`));
  });

  it("does not look at the area of a can that was not read", () => {
    const unread = COLUMN.map(([x], i) => [i === 4 ? "x" : x]);
    const left = COLUMN.filter((_, i) => i !== 4);
    const alone = cell(() => byArea(call, left, areaColumn(2).slice(1)));
    for (const odd of [0, "", null, -3, "x", "none", true, { type: "Error", basicValue: "#REF!" }, 1e300]) {
      expect(cell(() => byArea(call, unread, withArea(4, odd)))).toEqual(alone);
    }
  });

  it("refuses an error in the area of a counted can", () => {
    const error = { type: "Error", basicValue: "#REF!" };
    expect(with_(withArea(0, error))).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/, got #REF! in row \d+, column \d+$/),
    });
  });

  it("answers or refuses with a message, whatever the areas", () => {
    const odd = fc.oneof(
      { weight: 30, arbitrary: fc.double({ min: 1e-6, max: 1e6, noNaN: true }) },
      { weight: 1, arbitrary: fc.constantFrom<unknown>(0, "", null, "x", 1e-100, 1e100, -1) },
    );
    const catches = fc.oneof(
      { weight: 20, arbitrary: fc.double({ min: 1, max: 100, noNaN: true }) },
      { weight: 1, arbitrary: fc.constantFrom<unknown>(0, "x", "") },
    );
    const cans = fc.array(fc.tuple(catches, odd), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(cans, (pairs) => {
        const found = cell(() =>
          byArea(
            call,
            pairs.map(([x]) => [x]),
            pairs.map(([, a]) => [a]),
          ),
        );
        if (typeof found === "object" && found !== null && "message" in found) {
          return / must .+, got /.test(found.message as string);
        }
        const values = Array.isArray(found) ? found.flat() : [found];
        return values.every((value) => typeof value === "string" || Number.isFinite(value));
      }),
      { numRuns: 300 },
    );
  });
});

describe("dry ground", () => {
  it("stops SC.SHARE where less than that share of the area is wet", () => {
    // 3 of 10 m² are dry
    const areas = [[3, 1, 2, 4]];
    expect(cell(() => scShare([[0, 10, 12, 10]], 0.8, areas))).toEqual({
      error: "#N/A",
      message: "readings must have a catch above 0 on 0.8 of the area, got 0",
    });
    // mean (10 + 24 + 40) / 10 over the 10 that 7 m² reach
    expect(scShare([[0, 10, 12, 10]], 0.7, areas)).toBeCloseTo(0.74, 12);
  });

  it("stops SC.QUARTER where the driest quarter of the area is dry", () => {
    expect(cell(() => scQuarter([[0, 10, 12, 10]], [[0.1, 0.1, 0.1, 0.1]]))).toEqual({
      error: "#N/A",
      message: "readings must have a low quarter above 0, got 0",
    });
  });
});

describe("equal areas", () => {
  it("cut the quarter through a can, where k is rounded without them", () => {
    // six cans: 1.5 of them are a quarter, (4 + 0.5 * 6) / 1.5; without areas k = 2, (4 + 6) / 2; mean 9
    const cans = [[4, 6, 8, 10, 12, 14]];
    expect(duQuarter(cans, [[7, 7, 7, 7, 7, 7]])).toBeCloseTo((100 * (7 / 1.5)) / 9, 10);
    expect(duQuarter(cans)).toBeCloseTo((100 * 5) / 9, 10);
    expect(cuChristiansen(cans, [[7, 7, 7, 7, 7, 7]])).toBeCloseTo(cuChristiansen(cans), 10);
  });
});

describe("CAN.AREAS", () => {
  const areas = (...given: unknown[]) => cell(() => canAreas(...(given as Parameters<typeof canAreas>)));

  it("spills rows along and columns across, whichever way the places lie", () => {
    // columns 0 to 1.5 and 1.5 to 4; rows 0 to 2, 2 to 5 and 5 to 10
    const spilled = [
      [3, 5],
      [4.5, 7.5],
      [7.5, 12.5],
    ];
    expect(areas([[0.5, 2.5]], [[1, 3, 7]], 4, 10)).toEqual(spilled);
    expect(areas([[0.5], [2.5]], [[1], [3], [7]], 4, 10)).toEqual(spilled);
    expect(areas(2, 1, 4, 10)).toEqual([[40]]);
  });

  it("names the place that does not ascend, lies outside or is no number", () => {
    const along = [[1], [3]];
    const message = (across: unknown, rows: unknown = along) =>
      (areas(across, rows, 4, 10) as { message: string }).message;
    expect(message([[1, 1]])).toBe("across must ascend from place to place, got 1 in row 1, column 2");
    expect(message([[3, 1]])).toBe("across must ascend from place to place, got 1 in row 1, column 2");
    expect(message([[1, 4.5]])).toBe("across must lie within the bed, from 0 to 4 m, got 4.5 in row 1, column 2");
    expect(message([[-1, 1]])).toBe("across must lie within the bed, from 0 to 4 m, got -1 in row 1, column 1");
    expect(message([[1, "x"]])).toBe('across must be numbers, got "x" in row 1, column 2');
    expect(message([[1, ""]])).toBe("across must be numbers, got a blank cell in row 1, column 2");
    expect(message(null)).toBe("across must be numbers, got a blank cell in row 1, column 1");
    expect(message([[1, 2]], [[3], [11]])).toBe(
      "along must lie within the bed, from 0 to 10 m, got 11 in row 2, column 1",
    );
    expect(
      message([
        [1, 2],
        [3, 4],
      ]),
    ).toBe('across must be one row or one column of places, got "2 rows and 2 columns"');
  });
});
