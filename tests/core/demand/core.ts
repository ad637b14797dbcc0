import * as airPressure from "../../../src/core/demand/air-pressure";
import * as dayOfYear from "../../../src/core/demand/day-of-year";
import * as evaporation from "../../../src/core/demand/evaporation";
import * as extraterrestrialRadiation from "../../../src/core/demand/extraterrestrial-radiation";
import * as hargreaves from "../../../src/core/demand/hargreaves";
import * as netRadiation from "../../../src/core/demand/net-radiation";
import * as penmanMonteith from "../../../src/core/demand/penman-monteith";
import * as potDepth from "../../../src/core/demand/pot-depth";
import * as soilHeat from "../../../src/core/demand/soil-heat";
import * as solarRadiation from "../../../src/core/demand/solar-radiation";
import * as sun from "../../../src/core/demand/sun";
import * as vapourPressure from "../../../src/core/demand/vapour-pressure";
import * as wind from "../../../src/core/demand/wind";

/** Every engineering function of the family by its name. */
export const DEMAND: Record<string, (...values: never[]) => number> = {
  ...airPressure,
  ...dayOfYear,
  ...evaporation,
  ...extraterrestrialRadiation,
  ...hargreaves,
  ...netRadiation,
  ...penmanMonteith,
  ...potDepth,
  ...soilHeat,
  ...solarRadiation,
  ...sun,
  ...vapourPressure,
  ...wind,
};
