import type { SheetSpec } from "../../workbook/form/sheet-spec";
import { tokensOf } from "../calls";

const known = new WeakMap<readonly SheetSpec[], ReadonlySet<string>>();

const unquoted = (literal: string) => literal.slice(1, -1).replaceAll('""', '"');

/** The texts that the named cells of an audit may show in place of a figure, such as "needs readings". */
export function knownWords(specs: readonly SheetSpec[]): ReadonlySet<string> {
  const words =
    known.get(specs) ??
    new Set(
      specs.flatMap(({ cells }) =>
        cells.flatMap(({ name, formula }) =>
          name && formula
            ? tokensOf(formula).flatMap(({ type, value }) => (type === "string" ? [unquoted(value)] : []))
            : [],
        ),
      ),
    );
  known.set(specs, words);
  return words;
}
