import { describe, expect, it } from "vitest";
import { dayOfYear } from "../../../src/core/demand/day-of-year";
import { extraterrestrialRadiation } from "../../../src/core/demand/extraterrestrial-radiation";
import { hargreaves } from "../../../src/core/demand/hargreaves";
import { penman } from "../../../src/core/demand/penman-monteith";
import { potDepth } from "../../../src/core/demand/pot-depth";
import { daylight, radians } from "../../../src/core/demand/sun";
import fc from "../../support/properties";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const day = fc.integer({ min: 1, max: 366 });
const latitude = number(-66.5, 66.5);

describe("potDepth", () => {
  it("is 14.1 mm for 400 mL on a top of 190 mm, and 9.4 mm where the plant catches half as much again", () => {
    // pi 190^2 / 4 = 28,353 mm2; 400,000 mm3 / 28,353 mm2 = 14.108 mm; 14.108 / 1.5 = 9.405 mm
    expect(potDepth(400, 190, 1)).toBeCloseTo(14.108, 3);
    expect(potDepth(400, 190, 1.5)).toBeCloseTo(9.405, 3);
  });

  it("is 0 where the pot uses nothing", () => {
    expect(potDepth(0, 190, 1)).toBe(0);
  });

  it("returns the volume when spread over the top again", () => {
    fc.assert(
      fc.property(number(1, 1e4), number(50, 1000), number(0.5, 4), (volume, top, capture) => {
        const litres = potDepth(volume, top, capture) * capture * Math.PI * (top / 2) ** 2;
        expect(litres / 1000).toBeCloseTo(volume, 6);
      }),
    );
  });
});

describe("the sun", () => {
  it("turns half a circle in pi radians", () => {
    expect(radians(180)).toBe(Math.PI);
  });

  it("shines everywhere inside the polar circles, never the whole day, 12 hours on the equator", () => {
    fc.assert(
      fc.property(latitude, day, (lat, j) => {
        const hours = daylight(lat, j);
        expect(hours).toBeGreaterThan(0);
        expect(hours).toBeLessThan(24);
        expect(hours + daylight(-lat, j)).toBeCloseTo(24, 9);
        expect(daylight(0, j)).toBeCloseTo(12, 12);
        expect(extraterrestrialRadiation(lat, j)).toBeGreaterThan(0);
      }),
    );
  });
});

describe("reference evapotranspiration", () => {
  it("from temperatures is 0 or more, and 0 when they do not differ", () => {
    fc.assert(
      fc.property(number(-17, 60), number(-17, 60), latitude, day, (a, b, lat, j) => {
        expect(hargreaves(Math.min(a, b), Math.max(a, b), lat, j)).toBeGreaterThanOrEqual(0);
        expect(hargreaves(a, a, lat, j)).toBe(0);
      }),
    );
  });

  it("from full weather is finite and no larger than weather can make it", () => {
    const anyDay = fc.record({ low: number(-30, 30), range: number(1, 25), wind: number(0.1, 20), sun: number(0, 1) });
    fc.assert(
      fc.property(anyDay, latitude, number(-500, 6000), day, ({ low, range, wind, sun }, lat, height, j) => {
        const rest = { tmin: low, tmax: low + range, wind, sunshine: sun * daylight(lat, j) };
        const eto = penman({ ...rest, rhmin: 60, rhmax: 90 }, lat, height, j);
        expect(eto).toBeGreaterThan(-5);
        expect(eto).toBeLessThan(30);
      }),
    );
  });
});

describe("dayOfYear", () => {
  it("counts every day of both kinds of year", () => {
    for (const year of [2023, 2024]) {
      const leap = year === 2024;
      for (let j = 1; j <= (leap ? 366 : 365); j += 1) {
        const date = new Date(Date.UTC(year, 0, j));
        expect(dayOfYear(date.getUTCMonth() + 1, date.getUTCDate(), leap)).toBe(j);
      }
    }
  });
});
