import { beforeAll, describe, expect, it } from "vitest";
import { firstCell, placesOf } from "../../src/cells/places";
import { type Entries, namesOf } from "../../src/workbook/form/build";
import { NURSERY_EXAMPLE } from "../../src/workbook/nursery/examples/nursery";
import { NURSERY_SHEETS } from "../../src/workbook/nursery/nursery-plan";
import { calculatedPlans, DEMAND_SHEETS, type PlanBook } from "../support/plan-book";

type Typed = string | number;

/** The same in every cell of every named rectangle that is typed in. */
const everywhere = (value: Typed): Entries =>
  Object.fromEntries(
    NURSERY_SHEETS.flatMap((spec) => {
      const typed = new Set(spec.cells.flatMap(({ at, kind }) => (kind === "input" ? [firstCell(at)] : [])));
      return [...namesOf(spec)].flatMap(([name, range]) => {
        const places = placesOf(range);
        if (!places.every((place) => typed.has(place))) return [];
        const rows = new Set(places.map((place) => /\d+/.exec(place)![0])).size;
        return [[name, Array.from({ length: rows }, () => Array.from({ length: places.length / rows }, () => value))]];
      });
    }),
  );

const January = (line: Typed[]): Entries => ({ Latitude_deg: -27.5, Elevation_m: 60, Weather_Typed: [line] });
const weighing = (...line: Typed[]): Entries => ({
  Demand_Groups: [["herbs", "trees", "trees"]],
  Weighings_Typed: [line],
});
const WEATHER_SAID: [what: string, entries: Entries, said: string][] = [
  ["Tmin above Tmax", January([25, 20]), "Tmin in B6 must be at most Tmax, 20 °C in C6, got 25"],
  ["RHmin above RHmax", January([20, 30, 90, 60]), "RHmin in D6 must be at most RHmax, 60 % in E6, got 90"],
  ["words for wind", January([20, 30, 40, 60, "light"]), "wind in F6 must be from 0 to 100 m/s, got light"],
  ["ET0 that can't be", January(["", "", "", "", "", "", 45]), "ET0 in H6 must be from 0 to 30 mm a day, got 45"],
  [
    "a latitude beyond the polar circle",
    { ...January([20, 30]), Latitude_deg: 70 },
    "latitude in Nursery!C8 must be from -66.5 to 66.5 °, got 70",
  ],
  ["no latitude", { Weather_Typed: [[20, 30]] }, "needs latitude: see Nursery!C8"],
  [
    "no elevation",
    { Latitude_deg: -27.5, Weather_Typed: [[20, 30, 40, 60, 2, 8]] },
    "temperatures only (Hargreaves); the full formula needs elevation: see Nursery!C9",
  ],
  ["no wind", January([20, 30, 40, 60, "", 8]), "temperatures only (Hargreaves); the full formula needs wind"],
  [
    "rain below 0",
    January(["", "", "", "", "", "", 5, -3, 0.5]),
    "typed; rain in I6 must be from 0 to 10000 mm, got -3",
  ],
  [
    "rain without its share",
    January(["", "", "", "", "", "", 5, 30]),
    "typed; rain is left out: needs the useful share in J6",
  ],
];
const WEIGHINGS_SAID: [what: string, entries: Entries, said: string][] = [
  ["a pot that grew", weighing("herbs", 7, 500, 600, 24), "mass after in D5 must be at most the 500 g before, got 600"],
  ["no hours between", weighing("herbs", 7, 500, 400, 0), "hours in E5 must be more than 0 h, got 0"],
  ["a half-filled line", weighing("herbs", "", 500), "needs month, mass after, hours"],
  ["an unknown group", weighing("ferns", 7, 500, 400, 24), "group in A5 is none of the names on Demand"],
  ["a group named twice", weighing("trees", 7, 500, 400, 24), "group in A5 is a name that Demand has twice"],
  [
    "a month that is none",
    weighing("herbs", 13, 500, 400, 24),
    "month in B5 must be a whole number from 1 to 12, got 13",
  ],
];
/** A pot of 4,000 g with its outer pot; 1 g is 1 mL. */
const leaching = (minutes: Typed, applied: number, drained: number, target: Typed): Entries => ({
  Leaching_Run_min: minutes,
  Leaching_Before_g: 4000,
  Leaching_After_g: 4000 + applied,
  Leaching_Poured_g: 4000 + applied - drained,
  Leaching_Target: target,
});
/** Worked by hand: measured = drained / applied; run time = old (1 - measured) / (1 - wanted). */
const LEACHING: [what: string, entries: Entries, measured: Typed, minutes: Typed, said: RegExp][] = [
  ["more than wanted", leaching(60, 500, 160, 0.15), 0.32, (60 * 0.68) / 0.85, /^More drained than wanted/],
  ["as wanted", leaching(60, 500, 75, 0.15), 0.15, 60, /^As wanted/],
  ["nothing drained", leaching(60, 500, 0, 0.15), 0, 60 / 0.85, /^Nothing drained: this run time is only a floor/],
  ["half-filled", leaching("", 500, 75, ""), 0.15, "needs run time and fraction wanted", /^$/],
  [
    "more drained than applied",
    leaching(60, 500, 600, 0.1),
    "needs applied and drained",
    "needs the fraction measured",
    /^$/,
  ],
  ["a target of 1", leaching(60, 500, 75, 1), 0.15, "fraction wanted in B10 must be from 0 to 0.9, got 1", /^$/],
];
const DEMAND_SAID: [what: string, entries: Entries, litre: string, depth: string][] = [
  [
    "a group without a top",
    {
      Demand_Groups: [["herbs"]],
      Weather_Typed: [["", "", "", "", "", "", 5]],
      Demand_Coefficients: [[1]],
      Demand_Areas_m2: [[0.02]],
    },
    "needs pot top",
    "needs pot top",
  ],
  [
    "a top below 0",
    { ...weighing("herbs", 1, 500, 400, 24), Demand_Tops_mm: [[-3]] },
    "pot top in B6 must be more than 0 mm, got -3",
    "needs 2nd pot",
  ],
  ["a column without a name", { Demand_Tops_mm: [[100]] }, "needs a name", "needs a name"],
  [
    "neither weather nor weighings",
    { Demand_Groups: [["herbs"]], Demand_Tops_mm: [[0]] },
    "pot top in B6 must be more than 0 mm, got 0",
    "needs weather",
  ],
];

/** On every sheet of the plan: blank, the example, and what was pasted over the checks of typing. */
const WHOLE: Entries[] = [
  {},
  NURSERY_EXAMPLE,
  ...[0, -1, "twelve"].map((value) => ({ ...NURSERY_EXAMPLE, ...everywhere(value) })),
];
const SAID = [WEATHER_SAID, WEIGHINGS_SAID, LEACHING, DEMAND_SAID].flatMap((cases) =>
  cases.map(([, entries]) => entries),
);

describe("a whole nursery plan, calculated by LibreOffice", () => {
  const books = new Map<Entries, PlanBook>();
  beforeAll(async () => {
    for (const [all, sheets] of [
      [WHOLE, NURSERY_SHEETS],
      [SAID, DEMAND_SHEETS],
    ] as const) {
      for (const [index, book] of (await calculatedPlans(all, sheets)).entries()) books.set(all[index]!, book);
    }
  }, 600_000);
  const first = (entries: Entries, name: string) => books.get(entries)!.cells(name)[0];

  it("shows no error value blank, as the example, or where zeros, negatives or words were pasted", () => {
    expect([...WHOLE, ...SAID].flatMap((entries) => books.get(entries)!.errors)).toEqual([]);
  });

  it("has an example whose every group has a depth in every month", () => {
    const depths = books.get(NURSERY_EXAMPLE)!.cells("Demand_Depths");
    expect(depths.filter((depth) => typeof depth === "number")).toHaveLength(12 * 5);
  });

  it.each(WEATHER_SAID)("says of the weather, with %s, what it is and where", (_, entries, said) => {
    expect(first(entries, "Weather_How")).toBe(said);
  });

  it.each(WEIGHINGS_SAID)("says of a weighing, with %s, what it is and where", (_, entries, said) => {
    expect(first(entries, "Weighings_To_Mend")).toBe(said);
    expect(first(entries, "Weighings_Use")).toBe("");
  });

  it.each(LEACHING)("corrects the run time of a leaching test, %s", (_, entries, measured, minutes, said) => {
    const same = (theirs: unknown, ours: Typed) =>
      typeof ours === "string" ? expect(theirs).toBe(ours) : expect(theirs).toBeCloseTo(ours, 12);
    same(first(entries, "Leaching_Measured"), measured);
    same(first(entries, "Leaching_Run_Time_min"), minutes);
    expect(first(entries, "Leaching_Said")).toMatch(said);
  });

  it.each(DEMAND_SAID)("says of %s what is missing", (_, entries, litre, depth) => {
    expect(first(entries, "Demand_Litre_mm")).toBe(litre);
    expect(first(entries, "Demand_Depths")).toBe(depth);
  });
});
