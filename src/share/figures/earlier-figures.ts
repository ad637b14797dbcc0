import type { Stated } from "../../cells/stated";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { namedAreas } from "../native/formula-cells";
import { NativeValues } from "../native/native-values";
import { NativeError, type Scalar, Unsure } from "../native/value";

const IN_WORDS = /^(Verdict_|Limit_)/;

/** A figure, or null where the formula says in words why there is none. */
function figureOf(name: string, value: Scalar): Stated {
  if (value instanceof NativeError) return null;
  return typeof value === "string" && !IN_WORDS.test(name) ? null : value;
}

/**
 * The figures of an audit of an earlier version, by that version's own formulas from what was typed: its rules are kept
 * there and nowhere else.
 *
 * @param names The figures that are asked for; those that the version did not have are left out
 */
export function earlierFigures(
  book: FileBook,
  specs: readonly SheetSpec[],
  names: Iterable<string>,
): Map<string, Stated> {
  const values = new NativeValues(book, specs, new Map());
  const areas = namedAreas(specs);
  const figures = new Map<string, Stated>();
  for (const name of names) {
    const area = areas.get(name.toUpperCase());
    if (!area) continue;
    try {
      figures.set(name, figureOf(name, values.at(area.sheet, area.top, area.left)));
    } catch (error) {
      if (!(error instanceof Unsure)) throw error;
    }
  }
  return figures;
}
