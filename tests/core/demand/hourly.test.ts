import { describe, expect, it } from "vitest";
import { airPressure, psychrometricConstant } from "../../../src/core/demand/air-pressure";
import { evaporation } from "../../../src/core/demand/evaporation";
import { clearSkyRadiation } from "../../../src/core/demand/solar-radiation";
import { declination, inverseDistance, radians } from "../../../src/core/demand/sun";
import { saturationPressure, saturationSlope } from "../../../src/core/demand/vapour-pressure";

const DAY = 274;
const LATITUDE = 16.22;

/** FAO-56, Example 19: N'Diaye, 1 October, from 14 to 15 h; the equations of an hour are here, its steps in core. */
function middle(): number {
  const b = (2 * Math.PI * (DAY - 81)) / 364; // eq. 33
  const season = 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b); // eq. 32
  return (Math.PI / 12) * (14.5 + 0.06667 * (15 - 16.25) + season - 12); // eq. 31
}

function outside(): number {
  const start = middle() - Math.PI / 24; // eq. 29
  const end = middle() + Math.PI / 24; // eq. 30
  const lat = radians(LATITUDE);
  const dec = declination(DAY);
  const turn =
    (end - start) * Math.sin(lat) * Math.sin(dec) + Math.cos(lat) * Math.cos(dec) * (Math.sin(end) - Math.sin(start));
  return ((12 * 60) / Math.PI) * 0.082 * inverseDistance(DAY) * turn; // eq. 28
}

function hourly(temperature: number, humidity: number, wind: number, net: number, soil: number): number {
  const slope = saturationSlope(temperature);
  const gamma = psychrometricConstant(airPressure(8));
  const deficit = saturationPressure(temperature) * (1 - humidity / 100); // eq. 54
  const drying = ((gamma * 37) / (temperature + 273)) * wind * deficit;
  return (slope * evaporation(net - soil) + drying) / (slope + gamma * (1 + 0.34 * wind)); // eq. 53
}

/** Net radiation of an hour; sigma is that of a day over 24. */
function net(temperature: number, humidity: number, solar: number, clearness: number): number {
  const humid = 0.34 - 0.14 * Math.sqrt((saturationPressure(temperature) * humidity) / 100);
  const lost = (4.903e-9 / 24) * (temperature + 273.16) ** 4 * humid * (1.35 * clearness - 0.35); // eq. 39
  return 0.77 * solar - lost;
}

describe("FAO-56, Example 19, from the steps of core", () => {
  it("has the sun at 0.682 and 3.543 MJ/m2 outside the air, 2.658 under a clear sky", () => {
    expect(Math.abs(middle() - 0.682)).toBeLessThan(0.0005);
    expect(Math.abs(outside() - 3.543)).toBeLessThan(0.002);
    expect(Math.abs(clearSkyRadiation(8, outside()) - 2.658)).toBeLessThan(0.002);
  });

  it("gives 0.63 mm in the hour of the afternoon and 0.00 at night", () => {
    const day = net(38, 52, 2.45, 2.45 / 2.658);
    expect(Math.abs(hourly(38, 52, 3.3, day, 0.1 * day) - 0.63)).toBeLessThan(0.005);
    const night = net(28, 90, 0, 0.8);
    expect(Math.abs(hourly(28, 90, 1.9, night, 0.5 * night))).toBeLessThan(0.005);
  });
});
