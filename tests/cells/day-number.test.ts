import { expect, test } from "vitest";
import { isoDay, writtenDay } from "../../src/cells/day-number";

const read = (text: string) => {
  const day = writtenDay(text);
  return day === null ? null : isoDay(day);
};

test("29 November 2026 is day 46355, as spreadsheets count from 1899-12-30", () => {
  // 126 years of 365 days, 31 leap days from 1904 to 2024, day 333 of 2026, and day 1 is 1899-12-31
  expect(writtenDay("2026-11-29")).toBe(126 * 365 + 31 + 333 + 1);
});

test.each([
  ["2026-11-29", "2026-11-29"],
  ["29/11/2026", "2026-11-29"],
  ["11/29/2026", "2026-11-29"],
  ["5/5/2026", "2026-05-05"],
  ["29.11.2026", "2026-11-29"],
  ["3.11.2026", "2026-11-03"],
  ["29.2.2028", "2028-02-29"],
])("%s is the day %s", (text, day) => {
  expect(read(text)).toBe(day);
});

test.each(["3/11/2026", "31/2/2026", "2026-02-30", "29.2.2026", "29/11/26", "46355", "1/2", ""])(
  "%s is no day that is sure",
  (text) => {
    expect(writtenDay(text)).toBeNull();
  },
);
