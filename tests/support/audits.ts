import { firstCell } from "../../src/cells/places";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { type Entries, namesOf } from "../../src/workbook/form/build";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";
import { recalculatedEntries } from "./recalculated";

/** An audit as LibreOffice calculated it. */
export interface Calculated {
  /** What is in a cell with a formula, by `Sheet!A1`. */
  at: (place: string) => string | number | boolean;
  /** What the cell of this name gave. */
  named: (name: string) => string | number | boolean;
  /** What a data check says, by its sheet and its label. */
  check: (sheet: string, label: string) => string;
  places: readonly string[];
}

const placesOfNames = (sheets: readonly SheetSpec[]) =>
  new Map(
    sheets.flatMap((spec) => [...namesOf(spec)].map(([name, range]) => [name, `${spec.name}!${firstCell(range)}`])),
  );

function placeOfCheck(sheets: readonly SheetSpec[], sheet: string, label: string): string {
  const { cells } = sheets.find(({ name }) => name === sheet)!;
  const row = (at: string) => /\d+/.exec(at)![0];
  const rows = cells.filter(({ kind, value }) => kind === "label" && value === label).map(({ at }) => row(at));
  const said = cells.find(({ at, kind, formula }) => kind === "note" && formula && rows.includes(row(at)))!;
  return `${sheet}!${firstCell(said.at)}`;
}

/** Audits with these entries, or some of their sheets, every cached value planted wrong, calculated by LibreOffice. */
export async function calculated(
  all: readonly Entries[],
  sheets: readonly SheetSpec[] = AUDIT_SHEETS,
): Promise<Calculated[]> {
  const names = placesOfNames(sheets);
  return (await recalculatedEntries(sheets, all)).map((found) => {
    const at = (place: string) => found.get(place) ?? "";
    return {
      at,
      named: (name) => {
        const place = names.get(name);
        if (place === undefined) throw new Error(`there is no cell named ${name}`);
        return at(place);
      },
      check: (sheet, label) => String(at(placeOfCheck(sheets, sheet, label))),
      places: [...found.keys()],
    };
  });
}
