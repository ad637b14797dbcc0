import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { firstCell } from "../../src/cells/places";
import type { Results } from "../../src/workbook/form/build";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";

/** No figure of any test comes to this. */
export const PLANTED_WRONG = -4711;

/** A wrong value for every formula of these sheets. */
export const plantedResults = (sheets: readonly SheetSpec[]): Results =>
  new Map(
    sheets.flatMap(({ name, cells }) =>
      cells.flatMap(({ at, formula }) =>
        formula === undefined ? [] : [[`${name}!${firstCell(at)}`, PLANTED_WRONG] as const],
      ),
    ),
  );

/** A file in which every value that it keeps for a formula is replaced by a wrong one. */
export function plantedFile(file: Uint8Array): Uint8Array {
  const parts = Object.entries(unzipSync(file)).map(([name, part]) => {
    if (!name.startsWith("xl/worksheets/sheet")) return [name, part] as const;
    const planted = strFromU8(part).replace(
      /(<c [^>]*[^/]>)((?:(?!<\/c>)[\s\S])*?<\/f>)<v>[^<]*<\/v>/g,
      (_, cell: string, formula: string) => `${cell}${formula}<v>${/ t="b"/.test(cell) ? 0 : -7}</v>`,
    );
    return [name, strToU8(planted)] as const;
  });
  return zipSync(Object.fromEntries(parts));
}
