import { describe, expect, it } from "vitest";
import { farAbove } from "../../../src/core/pattern/far-above";

const field = (rates: (number | null)[][]) => ({
  rates,
  across: rates[0]!.map((_, index) => index),
  along: rates.map((_, index) => index),
});

describe("a can that reads ten times its neighbours", () => {
  it("is found, with the mean of those beside it", () =>
    // (60 + 66 + 70 + 71 + 58 + 64 + 62 + 60) / 8 = 63.875; 3 times the mean of all, (511 + 640) / 9, is 384
    expect(
      farAbove(
        field([
          [60, 66, 70],
          [71, 640, 58],
          [64, 62, 60],
        ]),
      ),
    ).toEqual({ row: 1, column: 1, value: 640, around: 63.875 }));

  it("is found in a corner beside cans that were not read", () =>
    // beside it only 60 was read; the mean of all is (640 + 9 × 60) / 10 = 118
    expect(
      farAbove(
        field([
          [640, null, 60, 60, 60],
          [null, 60, 60, 60, 60],
          [60, 60, null, null, null],
        ]),
      ),
    ).toMatchObject({ row: 0, column: 0, around: 60 }));

  it("is none where it reads less than that, or another is as wet beside it", () => {
    expect(farAbove(field([[60, 590, 60, 60, 60, 60]]))).toBeUndefined();
    expect(farAbove(field([[60, 640, 640, 60, 60, 60, 60, 60, 60, 60]]))).toBeUndefined();
  });
});
