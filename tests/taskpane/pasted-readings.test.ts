import { describe, expect, it } from "vitest";
import { pastedReadings } from "../../src/taskpane/pasted-readings";

describe("pasted readings", () => {
  it("are a row of cans in each line, whatever separates them", () => {
    const wanted = [
      [20, 25.5],
      ["x", 0],
    ];
    expect(pastedReadings("20\t25.5\r\nX\t0\r\n")).toEqual(wanted);
    expect(pastedReadings("20;25,5\nx;0")).toEqual(wanted);
    expect(pastedReadings(" 20  25.5\n\nx 0\n")).toEqual(wanted);
  });

  it("may leave places without a can, and rows may be short", () => {
    expect(pastedReadings("20\t\t30\n40")).toEqual([
      [20, "", 30],
      [40, "", ""],
    ]);
  });

  it.each([
    ["20 12ml", 'readings must be numbers, or x for a can that was not read, got "12ml" in row 1, column 2'],
    ["20\t-3", 'readings must be numbers, or x for a can that was not read, got "-3" in row 1, column 2'],
    ["20\n=1+1", 'readings must be numbers, or x for a can that was not read, got "=1+1" in row 2, column 1'],
    [
      "12,13 14,15",
      'readings must be separated by tabs, semicolons or spaces, not by commas, got "12,13" in row 1, column 1',
    ],
    [" \n", 'readings must be pasted or typed here, got ""'],
    ["5 2000000000", "readings must be at most 1e9 mL, got 2000000000 in row 1, column 2"],
  ])("such as %j are refused", (text, message) => {
    expect(() => pastedReadings(text)).toThrow(message);
  });
});
