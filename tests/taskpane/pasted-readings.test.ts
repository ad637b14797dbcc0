import { describe, expect, it } from "vitest";
import { pastedReadings } from "../../src/taskpane/readings/pasted-readings";

describe("pasted readings", () => {
  it("are a row of cans in each line, whatever separates them", () => {
    const wanted = [
      [20, 25.5],
      ["x", 0],
    ];
    expect(pastedReadings("20\t25.5\r\nX\t0\r\n")).toEqual({ readings: wanted, places: null });
    expect(pastedReadings("20;25,5\nx;0").readings).toEqual(wanted);
    expect(pastedReadings(" 20  25.5\n\nx 0\n").readings).toEqual(wanted);
  });

  it("may leave places without a can, and rows may be short", () => {
    expect(pastedReadings("20\t\t30\n40").readings).toEqual([
      [20, "", 30],
      [40, "", ""],
    ]);
  });

  it("come with their places where the first cell says m", () => {
    expect(pastedReadings("m\t0.5\t2\n1\t20\tx\n2,5\t22\t0")).toEqual({
      readings: [
        [20, "x"],
        [22, 0],
      ],
      places: { across: [0.5, 2], along: [1, 2.5] },
    });
  });

  it.each([
    ["20 12ml", 'readings must be numbers, got "12ml" in row 1, column 2'],
    ["20\t-3", "readings must be 0 mL or more, got -3 in row 1, column 2"],
    ["20\n=1+1", 'readings must be numbers, got "=1+1" in row 2, column 1'],
    ["20;6,000", 'readings must be numbers, got "6,000" in row 1, column 2'],
    ["20\t0x10", 'readings must be numbers, got "0x10" in row 1, column 2'],
    ["m\t0.5\n1\t20\t3", 'places must be numbers, got "" in row 1, column 3'],
    ["m 0.5 2\nx 20 30", 'places must be numbers, got "x" in row 2, column 1'],
    ["m", 'readings must be pasted or typed here, got ""'],
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
