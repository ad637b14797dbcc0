import { beforeAll, describe, expect, it } from "vitest";
import { etoHargreaves, etoPenman, potDepth } from "../../src/functions/demand";
import { cell, fakeCustomFunctions } from "../support/custom-functions";
import { CALLS, exchanged } from "./calls";

const DEMAND = CALLS.filter(({ id }) => id.startsWith("ETO.") || id.startsWith("POT."));

/** What an argument must be, a number just outside and the limits themselves. */
const RANGES: Record<string, { rule: string; outside: number[]; inside: number[] }> = {
  volume: { rule: "be 0 mL or more", outside: [-1], inside: [0, 1e-9] },
  top: { rule: "be more than 0 mm", outside: [0, -1], inside: [0.1] },
  tmin: { rule: "be from -60 to 60 °C", outside: [-60.1, 60.1], inside: [-17] },
  tmax: { rule: "be from -60 to 60 °C", outside: [-60.1, 60.1], inside: [60] },
  rhmin: { rule: "be from 0 to 100 %", outside: [-0.1, 100.1], inside: [0] },
  rhmax: { rule: "be from 0 to 100 %", outside: [-0.1, 100.1], inside: [100] },
  wind: { rule: "be from 0 to 100 m/s", outside: [-0.1, 100.1], inside: [0, 100] },
  latitude: { rule: "be from -66.5 to 66.5 °", outside: [-66.6, 66.6], inside: [-35, 66.5] },
  elevation: { rule: "be from -500 to 6000 m", outside: [-501, 6001], inside: [-500, 0, 6000] },
  day: { rule: "be a whole number from 1 to 366", outside: [0, 367, 187.5, 45000], inside: [182] },
  sunshine: {
    rule: "be from 0 to the 16.1 h of daylight of that day and place",
    outside: [-0.1, 16.2],
    inside: [0, 16.1],
  },
};

const NEVER: [unknown, string][] = [
  ["", "a blank cell"],
  [null, "a blank cell"],
  [undefined, "a blank cell"],
  ["20", '"20"'],
  [true, "TRUE"],
  [[[20]], "a list"],
  [{}, "a linked value"],
  [Number.NaN, "NaN"],
];

const EACH = DEMAND.flatMap((call) =>
  call.names.flatMap((name, at) => (name in RANGES ? [{ id: call.id, name, call, at }] : [])),
);

beforeAll(() => void fakeCustomFunctions());

describe.each(EACH)("$id, $name", ({ name, call, at }) => {
  const { rule, outside, inside } = RANGES[name]!;

  it("must be a number in its range", () => {
    const wrong = [...NEVER, ...outside.map((value): [unknown, string] => [value, String(value)])];
    for (const [value, shown] of wrong) {
      const message = `${name} must ${rule}, got ${shown}`;
      expect(cell(() => exchanged(call, at, value))).toEqual({ error: "#VALUE!", message });
    }
  });

  it("takes the limits of the range, a data type, and no error", () => {
    for (const value of inside) expect(exchanged(call, at, value), String(value)).toEqual(expect.any(Number));
    const good = call.good[at];
    expect(exchanged(call, at, { type: "Double", basicValue: good })).toEqual(exchanged(call, at, good));
    const error = { type: "Error", basicValue: "#REF!" };
    expect(cell(() => exchanged(call, at, error))).toEqual({
      error: "#VALUE!",
      message: `${name} must ${rule}, got #REF!`,
    });
  });
});

describe("POT.DEPTH", () => {
  it("counts a capture factor left out as 1", () => {
    // 400,000 mm3 on pi 190^2 / 4 = 28,353 mm2
    for (const left of [undefined, null, "", 1]) expect(potDepth(400, 190, left)).toBeCloseTo(14.108, 3);
    expect(potDepth(400, 190, 2)).toBeCloseTo(7.054, 3);
  });

  it("refuses a capture factor that is not more than 0", () => {
    for (const value of [0, -1, Number.NaN]) {
      const message = `capture must be more than 0, got ${value}`;
      expect(cell(() => potDepth(400, 190, value))).toEqual({ error: "#VALUE!", message });
    }
    const message = 'capture must be more than 0, got "1.5"';
    expect(cell(() => potDepth(400, 190, "1.5"))).toEqual({ error: "#VALUE!", message });
  });
});

describe("reference evapotranspiration", () => {
  it("is that of FAO-56, Examples 18 and 20", () => {
    expect(etoPenman(12.3, 21.5, 63, 84, 2.078, 9.25, 50.8, 100, 187)).toBeCloseTo(3.88, 2);
    expect(etoHargreaves(14.8, 26.6, 45.717, 196)).toBeCloseTo(5.0, 1);
  });

  it("takes the heat that the soil takes up in a month, as FAO-56, Example 17 does, and 0 where it is left out", () => {
    // Bangkok in April, G by eq. 44: 0.14 (30.2 - 29.2); both humidities 64.453 % give its ea of 2.85 kPa
    const april = [25.6, 34.8, 64.453, 64.453, 2, 8.5, 13 + 44 / 60, 2, 105] as const;
    expect(etoPenman(...april, 0.14)).toBeCloseTo(5.72, 2);
    expect(etoPenman(...april)).toBe(etoPenman(...april, 0));
    expect(etoPenman(...april)).toBe(etoPenman(...april, ""));
    const message = "soil_heat must be from -20 to 20 MJ/m²/day, got 21";
    expect(cell(() => etoPenman(...april, 21))).toEqual({ error: "#VALUE!", message });
  });

  it("refuses a least value above the greatest", () => {
    const above = { error: "#VALUE!", message: "tmin must be at most tmax, 12 °C, got 15" };
    expect(cell(() => etoHargreaves(15, 12, 45, 196))).toEqual(above);
    expect(cell(() => etoPenman(15, 12, 63, 84, 2, 9, 50, 100, 187))).toEqual(above);
    const message = "rhmin must be at most rhmax, 50 %, got 60";
    expect(cell(() => etoPenman(12, 15, 60, 50, 2, 9, 50, 100, 187))).toEqual({ error: "#VALUE!", message });
  });

  it("has no answer by ETO.HARGREAVES for a mean under -17.8 °C", () => {
    const message = "tmin must have a mean with tmax of -17.8 °C or more, got -40";
    expect(cell(() => etoHargreaves(-40, -10, 45, 1))).toEqual({ error: "#N/A", message });
  });

  it("is smaller in winter, north and south", () => {
    const at = (latitude: number, day: number) => etoHargreaves(10, 20, latitude, day);
    expect(at(50, 1)).toBeLessThan(at(50, 182));
    expect(at(-50, 182)).toBeLessThan(at(-50, 1));
  });
});
