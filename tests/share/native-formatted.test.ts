import { EDATE } from "@formulajs/formulajs";
import { describe, expect, it } from "vitest";
import { dayNumber } from "../../src/cells/day-number";
import { formatted, monthsLater } from "../../src/share/native/formatted";
import { Unsure } from "../../src/share/native/value";

describe("a day so many months later", () => {
  it.each([
    [2026, 10, 25, 12],
    [2026, 0, 31, 1],
    [2028, 1, 29, 12],
    [2026, 11, 31, -10],
    [1999, 4, 15, 0],
  ])("of %d-%d-%d, %d months, is that of a general library of spreadsheet functions", (year, month, day, months) => {
    const from = new Date(year, month, day);
    const expected = EDATE(from, months) as number | Date;
    const wanted = expected instanceof Date ? dayNumber(expected) : expected;
    expect(monthsLater(dayNumber(from), months)).toBe(wanted);
  });
});

// ECMA-376 part 1, 18.8.31: hh and mm are hours and minutes with two digits; 0.00 is two digits behind the point.
it.each([
  [0.25, "hh:mm", "06:00"],
  [1439 / 1440, "hh:mm", "23:59"],
  [1.5, "hh:mm", "12:00"],
  [1.2345, "0.00", "1.23"],
])("%d in %s is %s", (value, pattern, text) => {
  expect(formatted(value, pattern)).toBe(text);
});

it.each([
  [0.25, "d mmmm"],
  [0.2501, "hh:mm"],
  [-0.1, "hh:mm"],
])("%d in %s is not judged: programs show it in their own way", (value, pattern) => {
  expect(() => formatted(value, pattern)).toThrow(Unsure);
});
