import { describe, expect, it } from "vitest";
import { catchClasses } from "../../src/taskpane/readings/classes";
import fc from "../support/properties";

const reading = fc.oneof(fc.constant(0), fc.double({ min: 1e-100, max: 1e9, noNaN: true }));

describe("the classes of the histogram", () => {
  it("have round limits and hold each catch once, on its lower limit", () => {
    // 8 to 14 in at most eight classes: width 1, limits 8 to 15
    expect(catchClasses([8, 10, 10, 12.5, 14])).toEqual([
      { from: 8, to: 9, cans: 1 },
      { from: 9, to: 10, cans: 0 },
      { from: 10, to: 11, cans: 2 },
      { from: 11, to: 12, cans: 0 },
      { from: 12, to: 13, cans: 1 },
      { from: 13, to: 14, cans: 0 },
      { from: 14, to: 15, cans: 1 },
    ]);
  });

  it("are one class when all catches are equal, and none when there are none", () => {
    expect(catchClasses([7, 7, 7])).toEqual([{ from: 7, to: 7, cans: 3 }]);
    expect(catchClasses([])).toEqual([]);
  });

  it("are at most eight and count every catch", () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 2 }), (catches) => {
        const classes = catchClasses(catches);
        expect(classes.length).toBeLessThanOrEqual(8);
        expect(classes.reduce((sum, { cans }) => sum + cans, 0)).toBe(catches.length);
      }),
    );
  });
});
