import { hargreaves } from "../../src/core/demand/hargreaves";
import { type MonthDemand, type MonthGiven, monthlyDemand } from "../../src/core/demand/monthly-demand";
import { penman } from "../../src/core/demand/penman-monteith";
import { monthSoilHeat } from "../../src/core/demand/soil-heat";
import { daylight } from "../../src/core/demand/sun";
import { type PotUse, potUse, weighedUse } from "../../src/core/demand/weighings";
import { InputError } from "../../src/core/errors";
import type { Entries } from "../../src/workbook/form/build";
import { randomNumbers } from "./random";

type Typed = number | string;
const MONTHS = [...Array(12).keys()];

/** A generated nursery plan: what is typed, and what core makes of it; words are for a figure that there can't be. */
export interface GeneratedNursery {
  title: string;
  entries: Entries;
  et0: (number | "words")[];
  /** Useful rain of each month [mm]. */
  rain: (number | "words")[];
  /** Use of each pot weighed [mL a day], line by line. */
  uses: number[];
  /** By group, then by month. */
  weighed: (PotUse | number | undefined)[][];
  demand: MonthDemand[][];
}

interface Shape {
  title: string;
  latitude?: Typed;
  elevation?: Typed;
  groups?: number;
  lines?: number;
  /** Changes the weather line of a month: Tmin, Tmax, RHmin, RHmax, wind, sun, ET0, rain, useful share. */
  weather?: (line: Typed[], month: number) => Typed[];
}

const only =
  (...kept: number[]) =>
  (line: Typed[]) =>
    line.map((value, index) => (kept.includes(index) ? value : ""));
const set =
  (index: number, to: Typed) =>
  (line: Typed[]): Typed[] =>
    line.map((value, at) => (at === index ? to : value));
const inMonths = (months: number[], change: (line: Typed[]) => Typed[]) => (line: Typed[], month: number) =>
  months.includes(month) ? change(line) : line;

const SHAPES: Shape[] = [
  { title: "full weather, south" },
  { title: "full weather, north", latitude: 51.3, elevation: 120 },
  { title: "on the equator", latitude: 0, elevation: 1900 },
  { title: "near the polar circle", latitude: 66.5, elevation: 10 },
  { title: "below the sea", latitude: 31.5, elevation: -400 },
  { title: "no elevation", elevation: "" },
  { title: "no latitude", latitude: "", lines: 20 },
  { title: "beyond the polar circle", latitude: 70, lines: 30 },
  { title: "temperatures only", weather: only(0, 1) },
  { title: "temperatures and rain", weather: only(0, 1, 7, 8) },
  { title: "ET0 typed", latitude: "", weather: (_, month) => ["", "", "", "", "", "", 1 + month / 3, "", ""] },
  { title: "ET0 typed beside weather", weather: inMonths([0, 5, 11], set(6, 4.4)) },
  { title: "every second month missing", weather: inMonths([1, 3, 5, 7, 9, 11], only()) },
  { title: "no weather, pots weighed", weather: only(), lines: 60 },
  { title: "no weighings", lines: 0 },
  { title: "six groups, sixty weighings", groups: 6, lines: 60 },
  { title: "one group", groups: 1, lines: 12 },
  { title: "rain over what is needed", weather: (line, month) => set(7, 200 + 50 * month)(line) },
  { title: "rain without a share", weather: set(8, "") },
  { title: "rain below 0 in one month", weather: inMonths([3], set(7, -5)) },
  { title: "Tmin above Tmax in two months", weather: inMonths([2, 8], set(0, 40)) },
  { title: "humidities the wrong way round", weather: inMonths([6], set(2, 99)) },
  { title: "more sun than daylight", weather: inMonths([6], set(5, 23)) },
  { title: "frost", latitude: 60, weather: inMonths([0, 1], (line) => set(1, -20)(set(0, -25)(line))) },
  { title: "no range of temperature", weather: (line) => only(0, 1)(set(1, line[0]!)(line)) },
];

const orWords = <T>(work: () => T): T | "words" => {
  try {
    return work();
  } catch (error) {
    if (error instanceof InputError) return "words";
    throw error;
  }
};

/** Mean temperature of a month, where its Tmin and Tmax are typed and in order. */
function meanOf([tmin, tmax]: Typed[]): number | null {
  return tmin === "" || tmax === "" || tmin! > tmax! ? null : (Number(tmin) + Number(tmax)) / 2;
}

/** Heat of the soil by months, December before January. */
function soilOf(typed: Typed[][], month: number): number {
  const [before, now, next] = [-1, 0, 1].map((step) => meanOf(typed[(month + step + 12) % 12]!));
  return now === null ? 0 : monthSoilHeat(before!, now!, next!);
}

function et0Of(line: Typed[], month: number, latitude: Typed, elevation: Typed, soil: number): number | "words" {
  const [tmin, tmax, rhmin, rhmax, wind, sunshine, typed] = line as number[];
  if (line[6] !== "") return typed!;
  if (line[0] === "" || line[1] === "" || latitude === "") return "words";
  // FAO-56, annex table 2.5: the middle of a month
  const day = Math.trunc((304 * (month + 1)) / 10 - 15);
  const full = line.slice(0, 6).every((value) => value !== "") && elevation !== "";
  return orWords(() => {
    const value = full
      ? penman(
          { tmin: tmin!, tmax: tmax!, rhmin: rhmin!, rhmax: rhmax!, wind: wind!, sunshine: sunshine! },
          latitude as number,
          elevation as number,
          day,
          soil,
        )
      : hargreaves(tmin!, tmax!, latitude as number, day);
    return value < 0 ? "words" : value;
  });
}

/** Nursery plans of every kind; the same ones every time. */
export function generatedNurseries(): GeneratedNursery[] {
  const random = randomNumbers(5);
  const between = (low: number, high: number, digits = 1) => Number((low + (high - low) * random()).toFixed(digits));
  return SHAPES.map(({ title, latitude = -27.5, elevation = 60, groups = 4, lines = 40, weather }) => {
    const names = Array.from({ length: groups }, (_, index) => `group ${index + 1}`);
    const facts = names.map((_, index) => ({
      top: between(60, 450, 0),
      shape: ["round", "square", ""][index % 3]!,
      capture: index % 4 === 2 ? "" : between(0.8, 3, 2),
      coefficient: between(0.4, 3, 2),
      area: between(0.004, 0.4, 4),
      rained: ["yes", "", "no"][index % 3]!,
    }));
    const typed = MONTHS.map((month) => {
      const tmin = between(4, 20);
      const longest =
        typeof latitude === "number" && Math.abs(latitude) <= 66.5 ? daylight(latitude, 15 + 30 * month) : 10;
      const rhmin = between(20, 60, 0);
      const line: Typed[] = [
        tmin,
        between(tmin, tmin + 14),
        rhmin,
        between(rhmin, 100, 0),
        between(0, 5),
        between(0, 0.8 * longest),
        "",
        between(0, 120, 0),
        between(0, 1, 2),
      ];
      return weather ? weather(line, month) : line;
    });
    const weighings = Array.from({ length: lines }, () => {
      const before = between(800, 9000, 0);
      const lost = before * between(0.01, 0.1, 4);
      const [group, month] = [Math.floor(groups * random()), Math.floor(12 * random())];
      return { group, month, before, after: Math.round(before - lost), hours: between(18, 50) };
    });
    const uses = weighings.map(({ before, after, hours }) => weighedUse(before, after, hours));
    const et0 = typed.map((line, month) => et0Of(line, month, latitude, elevation, soilOf(typed, month)));
    const rain = typed.map(([, , , , , , , amount, share]) =>
      Number(amount) < 0 ? "words" : amount === "" || share === "" ? 0 : Number(amount) * Number(share),
    );
    const ofPots = (group: number, month: number) =>
      uses.filter((_, line) => weighings[line]!.group === group && weighings[line]!.month === month);
    const weighed = names.map((_, group) =>
      MONTHS.map((month) => {
        const volumes = ofPots(group, month);
        return volumes.length > 1 ? potUse(volumes) : volumes[0];
      }),
    );
    const demand = facts.map(({ top, shape, capture, coefficient, area, rained }, group) => {
      const given = MONTHS.map((month): MonthGiven => {
        const volumes = ofPots(group, month);
        const fallen = rained === "no" ? 0 : rain[month];
        return {
          ...(volumes.length > 0 ? { volumes } : { et0: et0[month] as number, coefficient, area }),
          rain: fallen as number,
        };
      });
      const round = shape === "square" ? (2 * top) / Math.sqrt(Math.PI) : top;
      return monthlyDemand(given, round, Number(capture || 1));
    });
    const across = (values: Typed[]) => [values];
    const entries: Entries = {
      Latitude_deg: latitude,
      Elevation_m: elevation,
      Demand_Groups: across(names),
      Demand_Tops_mm: across(facts.map(({ top }) => top)),
      Demand_Shapes: across(facts.map(({ shape }) => shape)),
      Demand_Captures: across(facts.map(({ capture }) => capture)),
      Demand_Coefficients: across(facts.map(({ coefficient }) => coefficient)),
      Demand_Areas_m2: across(facts.map(({ area }) => area)),
      Demand_Rained: across(facts.map(({ rained }) => rained)),
      Weather_Typed: typed,
      Weighings_Typed: weighings.map(({ group, month, before, after, hours }) => [
        names[group]!,
        month + 1,
        before,
        after,
        hours,
      ]),
    };
    return { title, entries, et0, rain, uses, weighed, demand };
  });
}
