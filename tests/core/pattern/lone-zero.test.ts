import { describe, expect, it } from "vitest";
import { loneZero } from "../../../src/core/pattern/lone-zero";

const field = (rates: (number | null)[][]) => ({
  rates,
  across: rates[0]!.map((_, index) => index),
  along: rates.map((_, index) => index),
});

describe("a can that reads 0 among wet ones", () => {
  it("is found with the two beside it", () =>
    expect(
      loneZero(
        field([
          [60, 66, 70],
          [71, 0, 58],
          [64, 62, 60],
        ]),
      ),
    ).toEqual({ row: 1, column: 1, between: [71, 58] }));

  it("is found in a corner", () =>
    expect(
      loneZero(
        field([
          [0, 50, 60],
          [50, 60, 60],
        ]),
      ),
    ).toMatchObject({ row: 0, column: 0 }));

  it("is none where a can beside it is dry too", () =>
    expect(
      loneZero(
        field([
          [0, 0, 60],
          [50, 60, 60],
        ]),
      ),
    ).toBeUndefined());

  it("is none where the ground round it is drier than a quarter of the mean", () =>
    expect(
      loneZero(
        field([
          [0, 9, 80],
          [9, 9, 80],
          [80, 80, 80],
        ]),
      ),
    ).toBeUndefined());

  it("is none where no can reads 0, and where cans beside it were not read", () => {
    expect(
      loneZero(
        field([
          [10, 20],
          [30, 40],
        ]),
      ),
    ).toBeUndefined();
    expect(
      loneZero(
        field([
          [0, null, 20],
          [null, null, 30],
        ]),
      ),
    ).toBeUndefined();
  });
});
