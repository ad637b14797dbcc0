import { firstCell } from "../../../cells/places";
import type { SheetSpec } from "../../../workbook/form/sheet-spec";

const known = new WeakMap<readonly SheetSpec[], ReadonlyMap<string, string>>();

/** The number format that the workbook gives a cell, by `Sheet!A1`; General where it gives none. */
export function formatAt(specs: readonly SheetSpec[], key: string): string {
  const formats =
    known.get(specs) ??
    new Map(
      specs.flatMap(({ name, cells }) =>
        cells.flatMap(({ at, format }) => (format ? [[`${name}!${firstCell(at)}`, format] as const] : [])),
      ),
    );
  known.set(specs, formats);
  return formats.get(key) ?? "General";
}
