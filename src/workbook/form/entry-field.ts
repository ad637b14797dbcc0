import { ENTRIES, type EntryName } from "../../core/figures/entries";
import type { Entry } from "../../core/figures/entry";
import { type Figure, numberFormat } from "../../core/figures/figure";
import { type Allowed, number } from "./allowed";
import type { Field } from "./entry-lines";

export const allowedOf = ({ least, most, unit }: Entry): Allowed => number(least, most, unit);

/** The line that asks for an entry. */
export function entryField(name: EntryName, rest: Partial<Field> = {}): Field {
  const entry = ENTRIES[name];
  return { label: entry.label, unit: entry.unitWords, name, allowed: allowedOf(entry), ...rest };
}

/** What a line that answers a figure is called, in which unit and digits. */
export const figureField = (figure: Figure): Pick<Field, "label" | "unit" | "format"> & { format: string } => ({
  label: figure.name,
  unit: figure.unit,
  format: numberFormat(figure),
});
