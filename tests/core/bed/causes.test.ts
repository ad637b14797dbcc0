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

interface Place {
  x: number;
  y: number;
}
const places = (of: readonly number[], size: number) => of.map((place) => size - place).reverse();

/** A bed seen in a mirror or from another side, and a place of it brought back. */
const TURNS: { name: string; turned: (input: BedInput) => BedInput; back: (place: Place, input: BedInput) => Place }[] =
  [
    {
      name: "left to right",
      turned: (input) => ({
        ...input,
        grid: input.grid.map((row) => [...row].reverse()),
        across: places(input.across, input.width),
        heads: input.heads!.map(({ x, y }) => ({ x: input.width - x, y })),
      }),
      back: ({ x, y }, { width }) => ({ x: width - x, y }),
    },
    {
      name: "top to bottom",
      turned: (input) => ({
        ...input,
        grid: [...input.grid].reverse(),
        along: places(input.along, input.length),
        heads: input.heads!.map(({ x, y }) => ({ x, y: input.length - y })),
      }),
      back: ({ x, y }, { length }) => ({ x, y: length - y }),
    },
    {
      name: "across for along",
      turned: (input) => ({
        ...input,
        grid: input.across.map((_, column) => input.grid.map((row) => row[column]!)),
        ...{ across: input.along, along: input.across, width: input.length, length: input.width },
        ...{ spacing: input.rowSpacing, rowSpacing: input.spacing },
        heads: input.heads!.map(({ x, y }) => ({ x: y, y: x })),
      }),
      back: ({ x, y }) => ({ x: y, y: x }),
    },
  ];

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
    "says of a bed that is mirrored or turned the same cause at the place that went with it: %s",
    (cause) => {
      const input = clearBed(cause);
      const [one] = read(input).causes;
      for (const { name, turned, back } of TURNS) {
        const [other] = read(turned(input)).causes;
        expect(other!.cause, name).toBe(one!.cause);
        expect(other!.weight, name).toBeCloseTo(one!.weight, 3);
        if (one!.head !== undefined) {
          const head = turned(input).heads![other!.head!]!;
          const { x, y } = back(head, input);
          expect([x, y], name).toEqual([
            expect.closeTo(input.heads![one!.head]!.x, 9),
            expect.closeTo(input.heads![one!.head]!.y, 9),
          ]);
        }
        if (one!.towards) {
          const origin = back({ x: 0, y: 0 }, input);
          const { x, y } = back(other!.towards!, input);
          expect(x - origin.x, name).toBeCloseTo(one!.towards.x, 3);
          expect(y - origin.y, name).toBeCloseTo(one!.towards.y, 3);
        }
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

  it.each([0, 0.3, 2.2])(
    "names no cause for one can that was knocked and gave %s of its water, and sends to it",
    (part) => {
      const input = clearBed("nothing wrong found");
      const grid = input.grid.map((row, r) => row.map((caught, c) => (r === 4 && c === 2 ? caught! * part : caught)));
      const found = read({ ...input, grid });
      expect(found.doubts).toContain("outside");
      const place = `${input.across[2]!.toFixed(1)}, ${input.along[4]!.toFixed(1)} m`;
      expect(nextCheck(found)).toBe(`read the can at ${place} again`);
    },
  );

  it("names no cause where three heads at the end of a line give ever less", () => {
    const input = clearBed("nothing wrong found");
    const cone = (x: number, y: number) => Math.max(0, 1 - Math.hypot(x, y) / 3.2) / 3.2 ** 2;
    const lost = [0.35, 0.6, 0.85];
    const grid = input.grid.map((row, r) =>
      row.map((caught, c) => {
        const less = lost.map((part, k) => part * cone(input.across[c]! - 3, input.along[r]! - 6 - 3 * k));
        return caught! - 100 * less.reduce((sum, part) => sum + part, 0);
      }),
    );
    const found = read({ ...input, grid });
    expect(found.doubts).not.toEqual([]);
    expect(nextCheck(found)).toMatch(/^bucket head (10|14|18) at 3\.0, (6|9|12)\.0 m and head /);
  });

  it("names no cause where the part circles on the edge face another way than typed", () => {
    const input = clearBed("nothing wrong found");
    const onEdge = (x: number, y: number) => [x === 0 ? 1 : x === 9 ? -1 : 0, y === 0 ? 1 : y === 12 ? -1 : 0] as const;
    const half = (right: number, down: number) =>
      right === 0 && down === 0 ? 360 : right === 0 || down === 0 ? 180 : 90;
    const heads = input.heads!.map(({ x, y }) => ({ x, y, side: onEdge(x, y) }));
    const grid = input.along.map((y) =>
      input.across.map((x) => {
        const rates = heads.map(({ x: hx, y: hy, side: [right, down] }) => {
          const arc = half(right, down);
          const faces = (Math.atan2(down, right) * 180) / Math.PI + 30;
          const off = Math.abs((((((Math.atan2(y - hy, x - hx) * 180) / Math.PI - faces) % 360) + 540) % 360) - 180);
          return arc < 360 && off > arc / 2 ? 0 : Math.max(0, 1 - Math.hypot(x - hx, y - hy) / 3.2);
        });
        return rates.reduce((sum, rate) => sum + rate, 0);
      }),
    );
    const found = read({ ...input, grid, arcs: "matched" });
    expect(found.outside).toMatchObject({ what: "arcs" });
    expect(nextCheck(found)).toBe("look what part of the circle each head on the edge throws");
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
