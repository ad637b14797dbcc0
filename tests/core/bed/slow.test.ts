import { describe, expect, it } from "vitest";
import { redrawn } from "../../../src/core/bed/causes/redraw";
import { nextCans } from "../../../src/core/bed/interval/next-cans";
import { bedsDrawn, wholeBed, wholeBedOf } from "../../../src/core/bed/interval/whole-bed";
import { readBed } from "../../../src/core/bed/read-bed";
import { clearBed } from "./made-beds";

const last = <T>(of: Iterable<T>) => [...of].at(-1)!;

describe("beds drawn again without a fault", () => {
  it("seldom show as clear a sign of a fault as a bed with a dead head or wind", () => {
    expect(last(redrawn(readBed(clearBed("one weak head"))))).toMatchObject({ done: 30, as: 0, of: 30 });
    expect(last(redrawn(readBed(clearBed("wind"))))).toMatchObject({ as: 0 });
  });

  it("often show as clear a sign as a sound bed", () => {
    const shares = [1, 2, 3].map((seed) => last(redrawn(readBed(clearBed("nothing wrong found", seed)))).as / 30);
    expect(shares.reduce((sum, share) => sum + share, 0) / 3).toBeGreaterThan(0.1);
  });
});

describe("where more cans narrow the interval most", () => {
  const input = clearBed("one weak head");
  // no can in the lower half: its rows are taken out
  const half = readBed({ ...input, grid: input.grid.slice(0, 4), along: input.along.slice(0, 4) });
  const drawn = bedsDrawn(half);
  const found = nextCans(half, drawn);

  it("is where no can is, at four places apart, and narrows it", () => {
    expect(found.places).toHaveLength(4);
    expect(found.places.filter(({ y }) => y > 5).length).toBeGreaterThanOrEqual(3);
    for (const one of found.places) {
      for (const other of found.places)
        if (one !== other) expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(0.79);
    }
    expect(found.withCans).toBeLessThan(0.95);
    expect(found.withTwins).toBeGreaterThan(0);
    expect(found.withTwins).toBeLessThanOrEqual(1);
  });

  it("is the same for the same bed, and the interval is that of the drawn beds", () => {
    expect(nextCans(half, bedsDrawn(half))).toEqual(found);
    expect(wholeBedOf(half, drawn)).toEqual(wholeBed(half));
  });
});
