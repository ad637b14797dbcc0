import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/cells/cell";
import type { BedHead } from "../../src/core/bed/bed-heads";
import { bedCans } from "../../src/workbook/bed/bed-cans";
import { bedOfWorkbook } from "../../src/workbook/bed/bed-of-workbook";
import { type BedCans, causesOf, verdictOf } from "../../src/workbook/bed/bed-verdict";
import { typicalSpacing } from "../../src/workbook/bed/typical-spacing";

const BLANK = Array.from({ length: 60 }, () => [null]);
const AREAS = ["Head_Across_m", "Head_Along_m", "Head_Arc_deg", "Head_Faces", "Flow_Lh", "Pressure_kPa"];
const BED: Record<string, Cell[][]> = {
  ...Object.fromEntries(AREAS.map((name) => [name, BLANK])),
  ...{
    Bed_Width_m: [[4]],
    Bed_Length_m: [[8]],
    Head_Layout: [["border"]],
    Head_Spacing_m: [[4]],
    Row_Spacing_m: [[4]],
  },
  ...{ Head_Arc: [["part circles, matched"]], Head_Throw_m: [[4.4]] },
};
const line = (number: number, value: Cell): Cell[][] => BLANK.map((_, i) => [i === number - 1 ? value : null]);
const read = (more: Record<string, Cell[][] | null> = {}) =>
  bedOfWorkbook((name) => ({ ...BED, ...more })[name] ?? null);

describe("the bed of a workbook", () => {
  it("has the heads of its layout, numbered row after row", () => {
    const { heads, input, lack } = read();
    expect(lack).toBe("");
    expect(heads.map(({ number, x, y }) => [number, x, y])).toEqual([
      [1, 0, 0],
      [2, 4, 0],
      [3, 0, 4],
      [4, 4, 4],
      [5, 0, 8],
      [6, 4, 8],
    ]);
    expect(input).toMatchObject({ radius: 4.4, arrangement: "border", arcs: "matched" });
    expect(input!.heads).toBeUndefined();
  });

  it("takes typed places, arcs and missing heads before the layout", () => {
    const { heads } = read({
      Head_Across_m: line(3, 1),
      Head_Along_m: line(3, 5),
      Head_Arc_deg: line(6, 0),
    });
    expect(heads.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5]);
    expect(heads[2]).toMatchObject({ x: 1, y: 5, arc: 360 });
  });

  it("reads flow and pressure at the head of the line, the maker's figures, the wind and the supply side", () => {
    const { measured } = read({
      ...{ Flow_Lh: line(2, 150), Pressure_kPa: line(5, 180), Maker_Flow_Lh: [[200]], Maker_Pressure_kPa: [[250]] },
      ...{ Supply_Side: [["left"]], Bed_Bearing_deg: [[180]], Wind_ms: [[2], [1]], Wind_From: [["E"], ["still"]] },
    });
    expect(measured).toMatchObject({
      flows: [null, 150, null, null, null, null],
      pressures: [null, null, null, null, 180, null],
      maker: { flow: 200, pressure: 250 },
      supply: "left",
    });
    // the length runs south, so east is on the right: a wind from the east blows towards the left
    expect(measured.wind!.speed).toBe(1.5);
    expect(measured.wind!.towards!.x).toBeCloseTo(-1, 9);
    expect(measured.wind!.towards!.y).toBeCloseTo(0, 9);
  });

  it("says what is lacking, and reads no cause without it", () => {
    const lack = (more: Record<string, Cell[][] | null>) => {
      const found = read(more);
      expect(found.input).toBeUndefined();
      return found.lack;
    };
    expect(lack({ Head_Layout: [["other"]] })).toMatch(/^Fill in the bed, layout and spacings on the sheet Block, or/);
    expect(lack({ Head_Throw_m: [[null]] })).toBe("Type the throw of a head on the sheet Block to see the cause.");
    expect(lack({ Head_Throw_m: null })).toMatch(/^This workbook is of a version/);
    expect(lack({ Head_Across_m: line(2, 1) })).toBe(
      "heads must have both across and along, or neither, got 1 in the line of head 2",
    );
    expect(lack({ Flow_Lh: line(9, 150) })).toMatch(/^Head 9 on the sheet Heads has a bucket or a pressure, but/);
  });

  it("reads typed heads without a layout, with the spacing that they have", () => {
    const places = [0, 3, 6];
    const at = (of: (i: number) => Cell) => BLANK.map((_, i) => [i < 3 ? of(i) : null]);
    const { input, heads } = read({
      ...{ Head_Layout: [["other"]], Head_Spacing_m: null, Row_Spacing_m: null },
      ...{ Head_Across_m: at(() => 2), Head_Along_m: at((i) => places[i]!) },
    });
    expect(heads).toHaveLength(3);
    expect(input).toMatchObject({ spacing: 3, rowSpacing: 3 });
    expect(typicalSpacing([{ x: 0, y: 0 }])).toBe(1);
  });
});

describe("a bed with a slip of the typist", () => {
  const across = [0.5, 1.5, 2.5, 3.5];
  const along = [0.5, 1.5, 2.5, 3.5, 4.5, 5.5, 6.5, 7.5];
  const laidOut = read().heads;
  const typed = (place: (head: BedHead, index: number) => [Cell, Cell]): Record<string, Cell[][]> => {
    const at = (which: 0 | 1) => BLANK.map((_, i) => [laidOut[i] ? place(laidOut[i]!, i)[which] : null]);
    return { Head_Across_m: at(0), Head_Along_m: at(1) };
  };
  // cones about the heads of the layout, rate 1 - r/throw; part circles on the edge throw into the bed like full ones
  const caught = along.map((y) =>
    across.map((x) =>
      laidOut.reduce((sum, head) => sum + 50 * Math.max(0, 1 - Math.hypot(head.x - x, head.y - y) / 4.4), 0),
    ),
  );
  const verdict = (more: Record<string, Cell[][]>, cans: Partial<BedCans> = {}) => {
    const { input, measured, lack } = read(more);
    return lack || verdictOf(causesOf({ grid: caught, across, along, ...cans }, { input: input!, measured })).sentence;
  };

  it("is read as sound without one", () => {
    expect(verdict({})).toMatch(/^Nothing wrong found/);
    expect(verdict(typed(({ x, y }) => [x, y]))).toBe(verdict({}));
  });

  it.each([
    ["a head far outside", typed(({ x, y }, i) => [i === 2 ? 40 : x, y]), 'bed, got "40, 4" in the line of head 3'],
    ["heads in cm", typed(({ x, y }) => [100 * x, 100 * y]), 'bed, got "400, 0" in the line of head 2'],
    ["two heads at one place", typed(({ x, y }, i) => (i === 1 ? [0, 0] : [x, y])), 'got "0, 0" in the line of head 2'],
    ["a throw below 0", { Head_Throw_m: [[-4]] }, "radius must be more than 0 m, got -4"],
  ] as [string, Record<string, Cell[][]>, string][])("is refused, and the place named: %s", (_, more, message) => {
    expect(() => verdict(more)).toThrow(message);
  });

  it("is refused where the places of the cans are in cm", () => {
    const cm = across.map((place) => 100 * place);
    expect(() => verdict({}, { across: cm })).toThrow(
      "across must lie within the bed, from 0 to 4 m, got 50 in place 1",
    );
  });

  it.each([
    ["across and along of the heads changed over", typed(({ x, y }) => [y, x]), {}],
    ["the throw in feet", { Head_Throw_m: [[4.4 / 0.3048]] }, {}],
    [
      "a row of readings ten times too large",
      {},
      { grid: caught.map((row, r) => row.map((one) => (r === 2 ? 10 * one : one))) },
    ],
    [
      "one reading ten times too large",
      {},
      { grid: caught.map((row, r) => row.map((one, c) => (r === 2 && c === 1 ? 10 * one : one))) },
    ],
  ] as [string, Record<string, Cell[][]>, Partial<BedCans>][])("names no cause: %s", (_, more, cans) => {
    expect(verdict(more, cans)).toMatch(/^(Cannot tell|Nothing wrong found)/);
  });

  it("sends to the reading that is ten times too large", () => {
    const grid = caught.map((row, r) => row.map((one, c) => (r === 2 && c === 1 ? 10 * one : one)));
    expect(verdict({}, { grid })).toContain("the can at 1.5, 2.5 m does not fit the others");
  });
});

describe("the cans of a workbook", () => {
  it("are the rows and columns that hold anything", () => {
    const cells: Record<string, Cell[][]> = {
      Cans_Readings: [
        [5, null, "x", null],
        [null, null, null, null],
        [6, null, 7, null],
      ],
      Cans_Across_m: [[0.5, 1.5, 2.5, null]],
      Cans_Along_m: [[1], [2], [3]],
    };
    expect(bedCans((name) => cells[name] ?? null)).toEqual({
      grid: [
        [5, null],
        [6, 7],
      ],
      across: [0.5, 2.5],
      along: [1, 3],
      ...{ rows: [0, 2], columns: [0, 2] },
    });
  });
});
