import { describe, expect, it } from "vitest";
import { Generator } from "../../src/core/uniformity/generator";

const WORD = 2n ** 32n;

/** xoshiro128** written down from its definition, in whole numbers without bounds. */
function* byDefinition(state: bigint[]): Generator32 {
  let [a, b, c, d] = state as [bigint, bigint, bigint, bigint];
  const rotated = (x: bigint, by: bigint) => ((x << by) | (x >> (32n - by))) % WORD;
  for (;;) {
    yield Number((rotated((b * 5n) % WORD, 7n) * 9n) % WORD);
    const shifted = (b << 9n) % WORD;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotated(d, 11n);
  }
}

type Generator32 = globalThis.Generator<number, never, undefined>;

describe("the random generator", () => {
  it("is xoshiro128**, by the first words that the authors' own C program prints from the state 1, 2, 3, 4", () => {
    const words = byDefinition([1n, 2n, 3n, 4n]);
    const first = Array.from({ length: 6 }, () => words.next().value);
    expect(first).toEqual([11520, 0, 5927040, 70819200, 2031721883, 1637235492]);
  });

  it("counts the places that those words are for, one word a place in a large range", () => {
    const counts = new Float64Array(2000);
    new Generator([1, 2, 3, 4]).draw(counts);
    const words = byDefinition([1n, 2n, 3n, 4n]);
    const expected = new Float64Array(2000);
    for (let i = 0; i < 2000; i += 1) expected[Math.floor((words.next().value * 2000) / 2 ** 32)]! += 1;
    expect(counts).toEqual(expected);
  });

  it("goes on where it stopped, and takes one place from each half of a word in a small range", () => {
    const generator = new Generator([1, 2, 3, 4]);
    const words = byDefinition([1n, 2n, 3n, 4n]);
    for (let round = 0; round < 3; round += 1) {
      const counts = new Float64Array(25);
      generator.draw(counts);
      const expected = new Float64Array(25);
      for (let i = 0; i < 25; i += 2) {
        const word = words.next().value;
        expected[Math.floor(((word >>> 16) * 25) / 2 ** 16)]! += 1;
        if (i < 24) expected[Math.floor(((word & 0xffff) * 25) / 2 ** 16)]! += 1;
      }
      expect(counts).toEqual(expected);
    }
  });

  it("hands out those words one by one", () => {
    const generator = new Generator([1, 2, 3, 4]);
    const words = byDefinition([1n, 2n, 3n, 4n]);
    for (let i = 0; i < 100; i += 1) expect(generator.word()).toBe(words.next().value);
  });

  it("gives each place its even share", () => {
    // 4,000 rounds of 100 draws over 100 places: 4,000 a place, standard deviation 63; five of those are 315
    const generator = Generator.seeded(7);
    const counts = new Float64Array(100);
    const totals = new Float64Array(100);
    for (let round = 0; round < 4000; round += 1) {
      generator.draw(counts);
      for (let i = 0; i < 100; i += 1) totals[i]! += counts[i]!;
    }
    expect(Math.min(...totals)).toBeGreaterThan(4000 - 315);
    expect(Math.max(...totals)).toBeLessThan(4000 + 315);
  });
});
