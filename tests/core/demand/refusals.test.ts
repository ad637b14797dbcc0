import { describe, expect, it } from "vitest";
import { InputError } from "../../../src/core/errors";
import { DEMAND } from "./core";

const DAY = "day must be a whole number from 1 to 366, got";
const LATITUDE = "latitude must be from -66.5 to 66.5 °, got";
const AIR = { temperature: 20, wind: 2, deficit: 1, gamma: 0.067 };
const WEATHER = { tmin: 12, tmax: 21, rhmin: 60, rhmax: 80, wind: 2, sunshine: 9 };
const penman = (change: object, ...place: number[]) => [
  { ...WEATHER, ...change },
  ...(place.length ? place : [50, 100, 187]),
];

const REFUSALS: [string, unknown[], string][] = [
  ["inverseDistance", [0], `${DAY} 0`],
  ["declination", [367], `${DAY} 367`],
  ["declination", [1.5], `${DAY} 1.5`],
  ["declination", [Number.NaN], `${DAY} NaN`],
  ["sunsetAngle", [66.6, 100], `${LATITUDE} 66.6`],
  ["daylight", [-66.6, 100], `${LATITUDE} -66.6`],
  ["extraterrestrialRadiation", [Number.NaN, 100], `${LATITUDE} NaN`],
  ["extraterrestrialRadiation", [50, "100"], `${DAY} "100"`],
  ["saturationPressure", [61], "temperature must be from -60 to 60 °C, got 61"],
  ["saturationSlope", [-61], "temperature must be from -60 to 60 °C, got -61"],
  ["blackBody", [Number.NaN], "temperature must be from -60 to 60 °C, got NaN"],
  ["meanSaturationPressure", [22, 21], "tmin must be at most tmax, 21 °C, got 22"],
  ["actualPressure", [12, 21, 85, 84], "rhmin must be at most rhmax, 84 %, got 85"],
  ["actualPressure", [12, 21, -1, 84], "rhmin must be from 0 to 100 %, got -1"],
  ["actualPressure", [12, 21, 50, 101], "rhmax must be from 0 to 100 %, got 101"],
  ["airPressure", [6001], "elevation must be from -500 to 6000 m, got 6001"],
  ["psychrometricConstant", [0], "pressure must be more than 0 kPa, got 0"],
  ["windAtTwoMetres", [-1, 10], "wind must be from 0 to 100 m/s, got -1"],
  ["windAtTwoMetres", [3, 0], "height must be more than 0 m, got 0"],
  ["windAtTwoMetres", [3, 0.4], "height must be at least 0.5 m, got 0.4"],
  ["soilHeat", [61, 20], "before must be from -60 to 60 °C, got 61"],
  ["soilHeat", [20, 61], "next must be from -60 to 60 °C, got 61"],
  ["soilHeatSoFar", [20, Number.NaN], "month must be from -60 to 60 °C, got NaN"],
  ["monthSoilHeat", [20, 61, null], "month must be from -60 to 60 °C, got 61"],
  ["monthSoilHeat", [20, 20, 61], "next must be from -60 to 60 °C, got 61"],
  ["evaporation", [201], "energy must be from -200 to 200 MJ/m²/day, got 201"],
  ["solarRadiation", [-1, 12, 40], "sunshine must be from 0 to the 12 h of daylight of that day and place, got -1"],
  [
    "solarRadiation",
    [13, 12.129, 40],
    "sunshine must be from 0 to the 12.12 h of daylight of that day and place, got 13",
  ],
  ["solarRadiation", [6, 0, 40], "daylight must be more than 0 h, got 0"],
  ["solarRadiation", [6, 12, 0], "outside must be more than 0 MJ/m²/day, got 0"],
  ["temperatureRadiation", [21, 12, 0.16, 40], "tmin must be at most tmax, 12 °C, got 21"],
  ["temperatureRadiation", [12, 21, 0.2, 40], "k must be from 0.16 to 0.19, got 0.2"],
  ["clearSkyRadiation", [-501, 40], "elevation must be from -500 to 6000 m, got -501"],
  ["netShortwave", [0], "solar must be more than 0 MJ/m²/day, got 0"],
  ["netLongwave", [12, 21, -1, 20, 30], "vapour must be from 0 to 20 kPa, got -1"],
  ["netRadiation", [12, 21, 1, 20, 0], "clear must be more than 0 MJ/m²/day, got 0"],
  ["hargreaves", [27, 26, 45, 196], "tmin must be at most tmax, 26 °C, got 27"],
  ["hargreaves", [-40, -10, 45, 1], "tmin must have a mean with tmax of -17.8 °C or more, got -40"],
  ["hargreaves", [14, 26, 70, 196], `${LATITUDE} 70`],
  ["penmanMonteith", [13, { ...AIR, temperature: 99 }], "temperature must be from -60 to 60 °C, got 99"],
  ["penmanMonteith", [13, { ...AIR, wind: -1 }], "wind must be from 0 to 100 m/s, got -1"],
  ["penmanMonteith", [13, { ...AIR, deficit: -1 }], "deficit must be from 0 to 20 kPa, got -1"],
  ["penmanMonteith", [13, { ...AIR, gamma: 0 }], "gamma must be more than 0 kPa/°C, got 0"],
  ["penmanMonteith", [Number.NaN, AIR], "energy must be from -200 to 200 MJ/m²/day, got NaN"],
  ["penman", penman({ tmin: 22 }), "tmin must be at most tmax, 21 °C, got 22"],
  ["penman", penman({ rhmin: 81 }), "rhmin must be at most rhmax, 80 %, got 81"],
  ["penman", penman({ wind: 101 }), "wind must be from 0 to 100 m/s, got 101"],
  [
    "penman",
    penman({ sunshine: 24 }, 50.8, 100, 187),
    "sunshine must be from 0 to the 16.1 h of daylight of that day and place, got 24",
  ],
  ["penman", penman({}, -67, 100, 187), `${LATITUDE} -67`],
  ["penman", penman({}, 50, 9000, 187), "elevation must be from -500 to 6000 m, got 9000"],
  ["penman", penman({}, 50, 100, 0), `${DAY} 0`],
  ["dayOfYear", [13, 1, false], "month must be a whole number from 1 to 12, got 13"],
  ["dayOfYear", [2, 29, false], "date must be a whole number from 1 to 28, got 29"],
  ["dayOfYear", [4, 31, true], "date must be a whole number from 1 to 30, got 31"],
  ["potDepth", [-1, 190, 1], "volume must be 0 mL or more, got -1"],
  ["potDepth", [400, 0, 1], "top must be more than 0 mm, got 0"],
  ["potDepth", [400, 190, 0], "capture must be more than 0, got 0"],
  ["potDepth", [Number.NaN, 190, 1], "volume must be 0 mL or more, got NaN"],
];

function refused(work: () => number): InputError {
  try {
    work();
  } catch (error) {
    return error as InputError;
  }
  throw new Error("nothing was refused");
}

describe("what the demand family refuses", () => {
  it.each(REFUSALS)("%s of %j", (name, values, message) => {
    const refusal = refused(() => DEMAND[name]!(...(values as never[])));
    expect(refusal).toBeInstanceOf(InputError);
    expect(refusal.message).toBe(message);
  });

  it("covers every function", () => {
    const refusing = new Set(REFUSALS.map(([name]) => name));
    expect(Object.keys(DEMAND).filter((name) => !refusing.has(name))).toEqual(["radians"]);
  });

  it("a day too cold for the formula is not wrong input, but gives no answer", () => {
    expect(refused(() => DEMAND.hargreaves!(...([-40, -10, 45, 1] as never[]))).missing).toBe(true);
    expect(refused(() => DEMAND.hargreaves!(...([27, 26, 45, 1] as never[]))).missing).toBe(false);
  });
});
