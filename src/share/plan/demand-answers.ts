import type { Stated } from "../../cells/stated";
import { type MonthDemand, type MonthGiven, monthlyDemand } from "../../core/demand/monthly-demand";
import { potUse, weighedUse } from "../../core/demand/weighings";
import { RUN_TIME } from "../../core/figures/run-time";
import { MONTHS } from "../../workbook/nursery/months";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { orNull } from "../or-null";
import { gridOf, type PlanAnswer } from "./plan-cells";
import type { PlanWeather } from "./weather-answers";

const NO = "no";
const SQUARE = "square";

interface Weighing {
  group: Stated;
  month: Stated;
  /** Use of the pot [mL a day]; null where the line is not whole. */
  use: number | null;
}

function weighings(book: FileBook): Weighing[] {
  return gridOf(book, "Weighings_Typed").map(([group = null, month = null, before, after, hours]) => ({
    group,
    month,
    use:
      group === null || month === null
        ? null
        : orNull(() => weighedUse(before as number, after as number, hours as number)),
  }));
}

/** The line of a fact over all groups. */
const factsOf = (book: FileBook, name: string) => gridOf(book, name)[0] ?? [];

/** Diameter of a round pot with the top of a square one [mm]. */
const roundTop = (top: Stated, shape: Stated) =>
  shape === SQUARE ? (2 * Number(top)) / Math.sqrt(Math.PI) : Number(top);

/** What each group of a file's plan asks for month by month, by core; null for a column that is not used. */
function demandOf(book: FileBook, weighed: readonly Weighing[], { et0, rain }: PlanWeather): (MonthDemand[] | null)[] {
  const [tops, shapes, captures, coefficients, areas, rained] = [
    "Demand_Tops_mm",
    "Demand_Shapes",
    "Demand_Captures",
    "Demand_Coefficients",
    "Demand_Areas_m2",
    "Demand_Rained",
  ].map((name) => factsOf(book, name));
  return factsOf(book, "Demand_Groups").map((name, group) => {
    if (name === null) return null;
    const given = MONTHS.map((_, month): MonthGiven => {
      const volumes = weighed.flatMap((one) =>
        one.use !== null && one.group === name && one.month === month + 1 ? [one.use] : [],
      );
      return {
        ...(volumes.length > 0
          ? { volumes }
          : {
              et0: et0[month] as number,
              coefficient: coefficients![group] as number,
              area: areas![group] as number,
            }),
        rain: rained![group] === NO ? 0 : (rain[month] as number),
      };
    });
    return orNull(() => monthlyDemand(given, roundTop(tops![group]!, shapes![group]!), Number(captures![group] ?? 1)));
  });
}

/** Weighings, use and net depth of the groups of a file's plan, by core from what was typed. */
export function demandAnswers(book: FileBook, weather: PlanWeather): PlanAnswer[] {
  const weighed = weighings(book);
  const groups = factsOf(book, "Demand_Groups");
  const uses = weighed.map(
    ({ use }, row): PlanAnswer => ({
      area: "Weighings_Use",
      row,
      column: 0,
      label: `Use of the pot in line ${row + 1}`,
      unit: "mL a day",
      value: use,
    }),
  );
  const tables = groups.flatMap((name, column) => {
    if (name === null) return [];
    return MONTHS.flatMap((month, row): PlanAnswer[] => {
      const volumes = weighed.flatMap((one) =>
        one.use !== null && one.group === name && one.month === row + 1 ? [one.use] : [],
      );
      const pots = volumes.length > 1 ? potUse(volumes) : null;
      const of = (area: string, label: string, unit: string, value: number | null): PlanAnswer => ({
        area,
        row,
        column,
        label: `${label}, ${name}, ${month}`,
        unit,
        value,
      });
      return [
        of("Weighed_Mean_mL", "Mean use of the pots weighed", "mL a day", pots?.volume ?? volumes[0] ?? null),
        of("Weighed_Error_mL", "Standard error of that mean", "mL a day", pots?.error ?? null),
        of("Weighed_Pots", "Pots weighed", "", volumes.length),
      ];
    });
  });
  const demand = demandOf(book, weighed, weather).flatMap((months, column) =>
    (months ?? []).flatMap(({ depth, volume }, row): PlanAnswer[] => [
      {
        area: "Demand_Use_mL",
        row,
        column,
        label: `Use of a pot, ${groups[column]}, ${MONTHS[row]}`,
        unit: "mL a day",
        value: volume ?? null,
      },
      {
        area: "Demand_Depths",
        row,
        column,
        label: `${RUN_TIME.NET_DEPTH.short}, ${groups[column]}, ${MONTHS[row]}`,
        unit: "mm a day",
        value: depth ?? null,
      },
    ]),
  );
  return [...uses, ...tables, ...demand];
}
