import { beforeAll, describe, expect, it } from "vitest";
import { cell, fakeCustomFunctions } from "../support/custom-functions";
import { BED, COLUMN, exchanged, RANGE_CALLS } from "./calls";

const VALUE = "#VALUE!";

/** What is in one cell, and what every function says about it after `readings must`. */
const WRONG: [string, unknown, string][] = [
  ["text", "12 ml", 'be numbers, got "12 ml"'],
  ["a number stored as text", "12", 'be numbers, got "12"'],
  ["a space", " ", 'be numbers, got " "'],
  ["long text", "y".repeat(60), `be numbers, got "${"y".repeat(40)}…"`],
  ["TRUE", true, "be numbers, got TRUE"],
  ["FALSE", false, "be numbers, got FALSE"],
  ["NaN", Number.NaN, "be numbers, got NaN"],
  ["Infinity", Number.POSITIVE_INFINITY, "be numbers, got Infinity"],
  ["a negative number", -1, "be 0 or more, got -1"],
  ["a number that is too large", 1e10, "be at most 1e9, got 10000000000"],
  ["a number that is too small", 1e-200, "be 0 or at least 1e-100, got 1e-200"],
  ["a list", [1], "be numbers, got a list"],
  [
    "a linked value",
    { type: "Entity", text: "Can 4", basicType: "Error", basicValue: "#VALUE!" },
    "be numbers, got a linked value",
  ],
  ["text as a data type", { type: "String", basicValue: "wet" }, 'be numbers, got "wet"'],
  ["TRUE as a data type", { type: "Boolean", basicValue: true }, "be numbers, got TRUE"],
  ["a negative data type", { type: "FormattedNumber", basicValue: -2, numberFormat: "0" }, "be 0 or more, got -2"],
];

/** Good catches with the one in row 4, column 1 exchanged. */
function spoiled(name: string, value: unknown): unknown[][] {
  return (name === "grid" ? BED : COLUMN).map((row, r) => (r === 3 ? [value, ...row.slice(1)] : row));
}

beforeAll(() => void fakeCustomFunctions());

describe.each(RANGE_CALLS)("$id", (call) => {
  const name = call.names[0]!;

  it.each(WRONG)("refuses %s among the readings and names its place", (_, value, rule) => {
    const message = `${name} must ${rule} in row 4, column 1`;
    expect(cell(() => exchanged(call, 0, spoiled(name, value)))).toEqual({ error: VALUE, message });
  });

  it("names the column too", () => {
    const side =
      name === "grid"
        ? [
            [1, 2, "wet"],
            [1, 2, 3],
          ]
        : [[1, 2, "wet"]];
    const message = `${name} must be numbers, got "wet" in row 1, column 3`;
    expect(cell(() => exchanged(call, 0, side))).toEqual({ error: VALUE, message });
  });

  it.each<[string, unknown, string]>([
    ["uneven rows", [[1, 2], [3]], "be a rectangular range with 2 cells in each row, got 1 in row 2"],
    ["a row that is no row", [[1, 2], 3], "be a rectangular range, got 3 in row 2"],
    ["no rows", [], "be a rectangular range of at least one cell, got a list"],
    ["an empty row", [[]], "be a rectangular range of at least one cell, got a list"],
    ["a plain list", [1, 2, 3], "be a rectangular range of at least one cell, got a list"],
  ])("refuses %s", (_, range, rule) => {
    expect(cell(() => exchanged(call, 0, range))).toEqual({ error: VALUE, message: `${name} must ${rule}` });
  });

  it.each(["#DIV/0!", "#N/A", "#VALUE!", "#NUM!", "#NULL!", "#NAME?", "#REF!"])(
    "refuses the error %s among the readings and names its place",
    (code) => {
      const object = new CustomFunctions.Error(code as CustomFunctions.ErrorCode, "from another cell");
      const entity = { type: "Error", basicType: "Error", basicValue: code };
      const message = `${name} must be numbers, got ${code} in row 4, column 1`;
      for (const error of [object, entity]) {
        expect(cell(() => exchanged(call, 0, spoiled(name, error)))).toEqual({ error: VALUE, message });
      }
    },
  );

  it("takes numbers held as data types", () => {
    const plain = exchanged(call, 0, spoiled(name, 9));
    for (const type of ["FormattedNumber", "Double"]) {
      expect(exchanged(call, 0, spoiled(name, { type, basicValue: 9 }))).toEqual(plain);
    }
  });
});

describe("a can that was not read", () => {
  const UNREAD = [
    null,
    undefined,
    "",
    "x",
    "X",
    " x ",
    "\tX\n",
    { type: "Empty" },
    { type: "String", basicValue: "x" },
  ];
  const counted = RANGE_CALLS.filter(
    ({ id }) => !["SC.PATCH", "DEPTH.CAUGHT", "RATE.CAUGHT", "BED.CAUSES", "BED.INTERVAL"].includes(id),
  );

  it.each(counted)("is skipped by $id however Excel hands it over", (call) => {
    const without = exchanged(
      call,
      0,
      COLUMN.filter((_, row) => row !== 3),
    );
    for (const unread of UNREAD) expect(exchanged(call, 0, spoiled("readings", unread))).toEqual(without);
  });

  it("stays blank in the spill of depths and rates", () => {
    for (const call of RANGE_CALLS.filter(({ id }) => id.endsWith(".CAUGHT"))) {
      const whole = exchanged(call, 0, COLUMN) as unknown[][];
      for (const unread of UNREAD) {
        expect(exchanged(call, 0, spoiled("readings", unread))).toEqual(whole.map((row, r) => (r === 3 ? [""] : row)));
      }
    }
  });

  it("is refused in a bed for SC.PATCH, with its place", () => {
    const call = RANGE_CALLS.find(({ id }) => id === "SC.PATCH")!;
    const refusal = (shown: string) => ({
      error: VALUE,
      message: `grid must hold a reading in every cell, got ${shown} in row 4, column 1`,
    });
    expect(cell(() => exchanged(call, 0, spoiled("grid", null)))).toEqual(refusal("a blank cell"));
    expect(cell(() => exchanged(call, 0, spoiled("grid", { type: "Empty" })))).toEqual(refusal("a blank cell"));
    expect(cell(() => exchanged(call, 0, spoiled("grid", " X ")))).toEqual(refusal('" X "'));
  });
});
