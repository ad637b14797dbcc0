import { describe, expect, it } from "vitest";
import { CAUSES, type CauseName } from "../../../src/core/bed/causes/cause-names";
import { type BedCauses, causes } from "../../../src/core/bed/causes/causes";
import { nextCheck, whereOf } from "../../../src/core/bed/causes/next-check";
import { type BedInput, readBed } from "../../../src/core/bed/read-bed";
import fc from "../../support/properties";
import { CLEAR, clearBed } from "./made-beds";

const read = (input: BedInput): BedCauses => causes(readBed(input));
const weightsOf = ({ causes: all }: BedCauses) => CAUSES.map((name) => all.find(({ cause }) => cause === name)!.weight);
const whereIn = (found: BedCauses) => whereOf(found.bed, found.causes[0]!);

const anyCause = fc.constantFrom<CauseName>(...CAUSES);

describe("causes", () => {
  it.each(CAUSES)("finds %s where it is made, and where it is", (cause) => {
    const found = read(clearBed(cause));
    expect(found.causes[0]!.cause).toBe(cause);
    expect(found.doubts).toEqual([]);
    expect(whereIn(found)).toBe(CLEAR[cause].where ?? "");
  });

  it("gives all nine causes once, by falling weight, which sum to 100", () => {
    fc.assert(
      fc.property(anyCause, fc.integer({ min: 1, max: 1e6 }), (cause, seed) => {
        const { causes: all } = read(clearBed(cause, seed));
        expect(all.map((one) => one.cause).sort()).toEqual([...CAUSES].sort());
        const weights = all.map(({ weight }) => weight);
        expect(weights).toEqual([...weights].sort((one, other) => other - one));
        expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(100, 9);
      }),
      { numRuns: 6 },
    );
  });

  it("gives the same weights in any unit of the catches", () => {
    const input = clearBed("pressure falls along the line");
    const weights = weightsOf(read(input));
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (factor) => {
        const scaled = { ...input, grid: input.grid.map((row) => row.map((caught) => caught! * factor)) };
        const got = weightsOf(read(scaled));
        for (const [i, weight] of got.entries()) expect(weight).toBeCloseTo(weights[i]!, 4);
      }),
      { numRuns: 5 },
    );
  });

  it.each(CAUSES)(
    "says of a bed turned left to right and top to bottom the same cause at the mirrored place: %s",
    (cause) => {
      const input = clearBed(cause);
      const turned = (places: readonly number[], size: number) => places.map((place) => size - place).reverse();
      const mirrored: BedInput = {
        ...input,
        grid: [...input.grid].reverse().map((row) => [...row].reverse()),
        across: turned(input.across, input.width),
        along: turned(input.along, input.length),
        heads: input.heads!.map(({ x, y }) => ({ x: input.width - x, y: input.length - y })),
      };
      const [one, other] = [read(input).causes[0]!, read(mirrored).causes[0]!];
      expect(other.cause).toBe(one.cause);
      expect(other.weight).toBeCloseTo(one.weight, 3);
      expect(other.head === undefined ? undefined : mirrored.heads![other.head]).toEqual(
        one.head === undefined
          ? undefined
          : { x: input.width - input.heads![one.head]!.x, y: input.length - input.heads![one.head]!.y },
      );
      if (one.towards) {
        expect(other.towards!.x).toBeCloseTo(-one.towards.x, 3);
        expect(other.towards!.y).toBeCloseTo(-one.towards.y, 3);
      }
    },
  );

  it("cannot tell from fewer than 16 cans", () => {
    const input = clearBed("wind");
    const few = { ...input, grid: input.grid.slice(0, 2), along: input.along.slice(0, 2) };
    const found = read(few);
    expect(found.doubts).toContain("cans");
    expect(nextCheck(found)).toBe("set out at least 16 cans");
  });

  it("names no single head under 1.5 cans a head", () => {
    const input = clearBed("one weak head");
    const every = (at: number) => at % 2 === 0;
    const few = {
      ...input,
      grid: input.grid.filter((_, row) => every(row)).map((row) => row.filter((_, column) => every(column))),
      along: input.along.filter((_, row) => every(row)),
      across: input.across.filter((_, column) => every(column)),
    };
    const found = read(few);
    const weak = found.causes.find(({ cause }) => cause === "one weak head")!;
    expect(found.bed.cans.length / found.bed.heads.length).toBe(1);
    expect(whereOf(found.bed, weak)).toBe("");
  });

  it("names no cause where two heads are weak, and sends to both", () => {
    const input = clearBed("one weak head");
    const nearby = (x: number, y: number) => Math.hypot(x - 6, y - 9) < 1.3;
    const grid = input.grid.map((row, r) =>
      row.map((caught, c) => (nearby(input.across[c]!, input.along[r]!) ? caught! * 0.3 : caught)),
    );
    const found = read({ ...input, grid });
    expect(found.doubts).not.toEqual([]);
  });

  it("sends to the head and its neighbour where one is weak, and to the gauge where the pressure is low", () => {
    expect(nextCheck(read(clearBed("one weak head")))).toBe("bucket head 10 at 3.0, 6.0 m and head 6 at 3.0, 3.0 m");
    expect(nextCheck(read(clearBed("pressure too low")))).toBe("read the pressure at a head");
  });

  it("answers where no head reaches a can, without a name", () => {
    const input = clearBed("nothing wrong found");
    const found = read({ ...input, radius: 0.01, heads: [{ x: 0, y: 0 }] });
    expect(weightsOf(found).every(Number.isFinite)).toBe(true);
    expect(found.doubts).not.toEqual([]);
  });

  it("answers for one can", () => {
    const found = read({ ...clearBed("wind"), grid: [[5]], across: [4], along: [4] });
    expect(weightsOf(found).every(Number.isFinite)).toBe(true);
    expect(found.doubts).toContain("cans");
  });
});
