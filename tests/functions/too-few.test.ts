import { beforeAll, describe, expect, it } from "vitest";
import { cell, fakeCustomFunctions } from "../support/custom-functions";
import { CALLS, exchanged } from "./calls";

const NEEDS: Record<string, number> = {
  "CU.CHRISTIANSEN": 2,
  "DU.QUARTER": 4,
  "SC.CAN": 2,
  "SC.QUARTER": 4,
  "SC.SHARE": 2,
  "SC.PATCH": 4,
  INTERVAL: 16,
  MAR: 1,
  RUNTIME: 2,
  "WATER.ANNUAL": 2,
  "COST.ANNUAL": 2,
  SUMMARY: 2,
};

const DRY_CAN = "readings must have no dry can (mark a can that was not read with x), got 0 in row 3, column 1";

function called(id: string, range: unknown) {
  const call = CALLS.find((call) => call.id === id)!;
  return cell(() => exchanged(call, 0, range));
}

function missing(message: string) {
  return { error: "#N/A", message };
}

beforeAll(() => void fakeCustomFunctions());

describe.each(Object.entries(NEEDS))("%s needs %i cans", (id, needs) => {
  const name = id === "SC.PATCH" ? "grid" : "readings";

  it("and says how many were counted", () => {
    const few = Array.from({ length: needs - 1 }, () => 5);
    const unread = id === "SC.PATCH" ? [] : ["x", ""];
    const message = `${name} must have at least ${needs} cans, got ${needs - 1}`;
    if (needs > 1) expect(called(id, [[...few, ...unread]])).toEqual(missing(message));
  });

  it("and answers for just as many", () => {
    expect(called(id, [Array.from({ length: needs }, () => 5)])).not.toHaveProperty("error");
  });

  it("and cannot answer when every can is dry", () => {
    const dry = [Array.from({ length: needs }, () => 0)];
    expect(called(id, dry)).toEqual(missing(`${name} must have a mean above 0, got 0`));
  });

  it("and counts a range with nothing in it as no cans", () => {
    if (id === "SC.PATCH") return;
    const message = `readings must have at least ${needs} cans, got 0`;
    for (const range of [
      [
        ["", null],
        ["x", undefined],
      ],
      null,
      undefined,
      "",
    ]) {
      expect(called(id, range)).toEqual(missing(message));
    }
  });
});

describe("a dry can", () => {
  const column = [[10], ["x"], [0], [12], [11], [0]];

  it.each(["SC.CAN", "RUNTIME", "WATER.ANNUAL", "COST.ANNUAL"])("stops %s, which names the first", (id) => {
    expect(called(id, column)).toEqual(missing(DRY_CAN));
  });

  it("does not stop CU, MAR or the depths", () => {
    for (const id of ["CU.CHRISTIANSEN", "MAR", "DEPTH.CAUGHT"]) expect(called(id, column)).not.toHaveProperty("error");
  });

  it("stops SC.QUARTER where the whole low quarter is dry", () => {
    expect(called("SC.QUARTER", [[0, 10, 12, 10]])).toEqual(missing("readings must have a low quarter above 0, got 0"));
  });

  it("stops SC.SHARE where fewer than that share are wet", () => {
    // 0.9 of 4 cans, rounded up: 4 cans
    expect(called("SC.SHARE", [[0, 10, 12, 10]])).toEqual(
      missing("readings must have a catch above 0 in 4 cans, got 0"),
    );
  });

  it("stops SC.PATCH where the driest patch is dry", () => {
    expect(
      called("SC.PATCH", [
        [0, 10],
        [12, 10],
      ]),
    ).toEqual(missing("grid must have no dry patch, got 0"));
  });

  it("shows as a depth and a rate of 0", () => {
    expect(called("DEPTH.CAUGHT", [[0, -0]])).toEqual([[0, 0]]);
    expect(called("RATE.CAUGHT", [[0, -0]])).toEqual([[0, 0]]);
  });
});
