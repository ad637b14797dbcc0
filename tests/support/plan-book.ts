import { placesOf } from "../../src/cells/places";
import { type Entries, namesOf } from "../../src/workbook/form/build";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";
import { NURSERY_SHEETS } from "../../src/workbook/nursery/nursery-plan";
import { PLANTED_WRONG } from "./planted";
import { recalculatedEntries } from "./recalculated";

/** The sheets that say what the pots need; they are on their own. */
export const DEMAND_SHEETS = NURSERY_SHEETS.filter(({ name }) =>
  ["Nursery", "Demand", "Weather", "Weighings", "Leaching test"].includes(name),
);

/** A plan as LibreOffice calculated it. */
export interface PlanBook {
  /** What the formulas of a named rectangle gave, row after row. */
  cells: (name: string) => (string | number | boolean)[];
  /** What the formula of a cell gave, by `Sheet!A1`. */
  at: (place: string) => string | number | boolean;
  /** Cells that show an error value or a planted one. */
  errors: string[];
}

/** Plans with these entries, every cached value planted wrong, calculated by LibreOffice in one run. */
export async function calculatedPlans(all: readonly Entries[], sheets: readonly SheetSpec[]): Promise<PlanBook[]> {
  const results = await recalculatedEntries(sheets, all);
  return results.map((found) => ({
    cells: (name) => {
      const spec = sheets.find((one) => namesOf(one).has(name))!;
      return placesOf(namesOf(spec).get(name)!).map((place) => found.get(`${spec.name}!${place}`) ?? "");
    },
    at: (place) => found.get(place) ?? "",
    errors: [...found]
      .filter(([, value]) => /^(#|Err:)/.test(String(value)) || value === PLANTED_WRONG)
      .map(([place, value]) => `${place} ${value}`),
  }));
}
