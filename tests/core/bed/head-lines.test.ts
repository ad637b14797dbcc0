import { describe, expect, it } from "vitest";
import { bedHeads } from "../../../src/core/bed/bed-heads";
import { type HeadLine, headsOfLines } from "../../../src/core/bed/head-lines";
import type { Stand } from "../../../src/core/layout/heads";

const STAND: Stand = { width: 4, length: 8, spacing: 4, rowSpacing: 4, arrangement: "border", arcs: "matched" };
const line = (given: Partial<HeadLine> = {}): HeadLine => ({
  ...{ across: null, along: null, arc: null, faces: null },
  ...given,
});

describe("heads by their lines", () => {
  it("follow the layout where nothing is typed", () => {
    expect(bedHeads(STAND, headsOfLines([line(), line()], STAND))).toEqual(bedHeads(STAND));
  });

  it("are where they were typed, keep their numbers, and are left out at an arc of 0", () => {
    const heads = headsOfLines(
      [line({ arc: 0 }), line({ across: 3.5, along: 0 }), ...Array(5).fill(line()), line({ across: 2, along: 4 })],
      STAND,
    );
    expect(heads.map(({ x, y, number }) => [number, x, y])).toEqual([
      [2, 3.5, 0],
      [3, 0, 4],
      [4, 4, 4],
      [5, 0, 8],
      [6, 4, 8],
      [8, 2, 4],
    ]);
  });

  it("throw the part circle that was typed, the rate by the arcs of the block", () => {
    const typed = headsOfLines([line({ arc: 120, faces: 90 })], STAND);
    expect(bedHeads(STAND, typed)[0]).toMatchObject({ arc: 120, faces: 90, times: 1 });
    expect(bedHeads({ ...STAND, arcs: "unmatched" }, typed)[0]).toMatchObject({ times: 3 });
  });

  it("need a whole place, an arc to 360 degrees and a way that it faces", () => {
    expect(() => headsOfLines([line(), line({ along: 2 })])).toThrow(
      "heads must have both across and along, or neither, got 2 in the line of head 2",
    );
    expect(() => headsOfLines([line({ across: 1, along: 2, arc: 400 })])).toThrow(
      "heads must have an arc from 0 to 360 deg, got 400 in the line of head 1",
    );
    expect(() => headsOfLines([line({ across: 1, along: 2, arc: 90 })])).toThrow(
      "heads must face a way where the arc is under 360 deg, got 90 in the line of head 1",
    );
  });
});
