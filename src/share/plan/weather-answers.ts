import type { Stated } from "../../cells/stated";
import { hargreaves } from "../../core/demand/hargreaves";
import { penman } from "../../core/demand/penman-monteith";
import { monthSoilHeat } from "../../core/demand/soil-heat";
import { DAYS_OF_MONTH, MONTHS } from "../../workbook/nursery/months";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { orNull } from "../or-null";
import { gridOf, type PlanAnswer } from "./plan-cells";

const MOST_ET0_MM = 30;
const isNumber = (value: Stated | undefined): value is number => typeof value === "number";

/** Middle of a month, as FAO-56 (1998), annex 2, table 2.5 has it: integer(30.4 month - 15). */
const middleOf = (month: number) => Math.trunc((304 * month) / 10 - 15);

const meanOf = (line: readonly Stated[]): number | null => {
  const [tmin, tmax] = line;
  return isNumber(tmin) && isNumber(tmax) && tmin <= tmax ? (tmin + tmax) / 2 : null;
};

/** Reference evapotranspiration of a month [mm a day]: typed, of the full weather, or of temperatures alone. */
function et0Of(typed: readonly Stated[][], month: number, latitude: Stated, elevation: Stated): number | null {
  const [tmin, tmax, rhmin, rhmax, wind, sunshine, et0] = typed[month]!;
  if (et0 !== null) return isNumber(et0) && et0 >= 0 && et0 <= MOST_ET0_MM ? et0 : null;
  if (!isNumber(tmin) || !isNumber(tmax) || !isNumber(latitude)) return null;
  const day = middleOf(month + 1);
  const full = isNumber(rhmin) && isNumber(rhmax) && isNumber(wind) && isNumber(sunshine) && isNumber(elevation);
  const mean = (step: number) => meanOf(typed[(month + step + 12) % 12]!);
  const value = orNull(() =>
    full
      ? penman(
          { tmin, tmax, rhmin, rhmax, wind, sunshine },
          latitude,
          elevation,
          day,
          monthSoilHeat(mean(-1), mean(0)!, mean(1)),
        )
      : hargreaves(tmin, tmax, latitude, day),
  );
  return value !== null && value >= 0 && value <= MOST_ET0_MM ? value : null;
}

/** Useful rain of a month [mm]; 0 where none is typed, null where what is typed is no rain. */
function rainOf([, , , , , , , rain = null, share = null]: readonly Stated[]): number | null {
  const known = (value: Stated, most: number) => value === null || (isNumber(value) && value >= 0 && value <= most);
  if (!known(rain, 10_000) || !known(share, 1)) return null;
  return isNumber(rain) && isNumber(share) ? rain * share : 0;
}

/** What the weather of a plan gives for each month. */
export interface PlanWeather {
  et0: (number | null)[];
  /** Useful rain of the whole month [mm]. */
  rain: (number | null)[];
}

/** The weather of a file's plan, by core from what was typed. */
export function planWeather(book: FileBook): PlanWeather {
  const typed = gridOf(book, "Weather_Typed");
  const [latitude, elevation] = ["Latitude_deg", "Elevation_m"].map((name) => gridOf(book, name)[0]?.[0] ?? null);
  return {
    et0: typed.map((_, month) => et0Of(typed, month, latitude!, elevation!)),
    rain: typed.map(rainOf),
  };
}

export function weatherAnswers({ et0, rain }: PlanWeather): PlanAnswer[] {
  return MONTHS.flatMap((month, row) => [
    { area: "Weather_ET0", row, column: 0, label: `ET0, ${month}`, unit: "mm a day", value: et0[row] ?? null },
    {
      area: "Weather_Rain",
      row,
      column: 0,
      label: `Useful rain, ${month}`,
      unit: "mm a day",
      value: rain[row] === null || rain[row] === undefined ? null : rain[row] / DAYS_OF_MONTH[row]!,
    },
  ]);
}
