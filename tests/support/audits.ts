import { AUDIT_SHEETS } from "../../src/workbook/audit";
import { buildWorkbook, type Entries, namesOf } from "../../src/workbook/build";
import { firstCell } from "../../src/workbook/places";
import { formulaResults } from "./formula-results";
import { converted } from "./libreoffice";

/** An audit as LibreOffice calculated it. */
export interface Calculated {
  /** What stands in a cell with a formula, by `Sheet!A1`. */
  at: (place: string) => string | number | boolean;
  /** What the cell of this name gave. */
  named: (name: string) => string | number | boolean;
  /** What a data check says, by its sheet and its label. */
  check: (sheet: string, label: string) => string;
  places: readonly string[];
}

function placeOfName(name: string): string {
  const spec = AUDIT_SHEETS.find((one) => namesOf(one).has(name));
  if (!spec) throw new Error(`there is no cell named ${name}`);
  return `${spec.name}!${firstCell(namesOf(spec).get(name)!)}`;
}

function placeOfCheck(sheet: string, label: string): string {
  const { cells } = AUDIT_SHEETS.find(({ name }) => name === sheet)!;
  const row = (at: string) => /\d+/.exec(at)![0];
  const rows = cells.filter(({ kind, value }) => kind === "label" && value === label).map(({ at }) => row(at));
  const said = cells.find(({ at, kind, formula }) => kind === "note" && formula && rows.includes(row(at)))!;
  return `${sheet}!${firstCell(said.at)}`;
}

/** Audits with these entries, calculated by LibreOffice in one run. */
export async function calculated(all: readonly Entries[]): Promise<Calculated[]> {
  const files = await Promise.all(all.map((entries) => buildWorkbook(AUDIT_SHEETS, entries)));
  const results = await Promise.all((await converted(files, "xlsx")).map(formulaResults));
  return results.map((found) => {
    const at = (place: string) => found.get(place) ?? "";
    return {
      at,
      named: (name) => at(placeOfName(name)),
      check: (sheet, label) => String(at(placeOfCheck(sheet, label))),
      places: [...found.keys()],
    };
  });
}
