import { placeName } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { COVERAGE } from "../../workbook/audit/coverage/coverage";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import type { FileCell } from "../../xlsx/parts/file-cell";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { added, changed, type Finding } from "../finding";
import { formatAt } from "../looks/cells/formats";
import { readable, shownText } from "../looks/cells/shown";
import { type FormulaCell, formulaCells } from "../native/formula-cells";
import { NativeValues } from "../native/native-values";
import { NativeError, type Scalar, Unsure } from "../native/value";
import { sameNumber, sameText, sameValue } from "./agreement";

/** A number within a text; the decimal sign depends on the settings of the machine that calculated it. */
const NUMBER = /\d+(?:[.,]\d+)?/g;

/** Whether a text says what another does, the numbers in them alike but for rounding. */
function sameWords(stated: string, own: string): boolean {
  if (sameText(stated, own)) return true;
  if (!sameText(stated.replace(NUMBER, "0"), own.replace(NUMBER, "0"))) return false;
  const numbers = (text: string) => (text.match(NUMBER) ?? []).map((digits) => Number(digits.replace(",", ".")));
  const others = numbers(own);
  return numbers(stated).every((number, i) => sameNumber(number, others[i]!));
}

function same(given: Scalar, stated: Stated): boolean {
  if (typeof given === "string" && typeof stated === "string") return sameWords(stated, given);
  return given instanceof NativeError || sameValue(stated, given);
}

/** Two numbers as they are shown where that tells them apart, else with all their digits. */
function twoWords(given: Stated, stated: Stated | undefined, format: string): [string, string] {
  if (typeof given === "number" && typeof stated === "number") {
    const shown = [given, stated].map((value) => shownText(value, format)) as [string, string];
    if (shown[0] !== shown[1]) return [`"${shown[0]}"`, `"${shown[1]}"`];
  }
  return [scalarWords(given, format), scalarWords(stated, format)];
}

const scalarWords = (value: Stated | undefined, format: string) =>
  value === null || value === undefined || value === ""
    ? "nothing"
    : `"${typeof value === "number" ? readable(value, format) : readable(value)}"`;

function valueAt(
  values: NativeValues,
  sheet: string,
  { row, column }: Pick<FormulaCell, "row" | "column">,
): Scalar | undefined {
  try {
    return values.at(sheet, row, column);
  } catch (error) {
    if (error instanceof Unsure) return undefined;
    throw error;
  }
}

/**
 * Cells of the audit that show something else than their formula gives, data checks and report among them. The formulas
 * are those of the audit's own sheets, calculated here from what was typed; none of the file is.
 *
 * @param figures Those that core calculates, by their names: they are told apart from these findings
 * @param apart Cells that the Evidence sheet accounts for, as `Sheet!A1`, and the source block of a Coverage sheet that the
 *   pane painted, whose formulas are of its form
 */
export function valueFindings(
  book: FileBook,
  specs: readonly SheetSpec[],
  figures: ReadonlyMap<string, Stated>,
  { replaced, painted }: { replaced: ReadonlySet<string>; painted: ReadonlyMap<string, FileCell | undefined> | null },
): Finding[] {
  const values = new NativeValues(book, specs, figures);
  for (const [address, cell] of painted ?? []) values.standsAt(COVERAGE.name, address, cell?.formula ?? null);
  return specs.flatMap((spec) => {
    const cells = book.sheets.find(({ name }) => name === spec.name)?.cells;
    if (!cells) return [];
    return formulaCells(spec).flatMap((own) => {
      const { address, key, name } = own;
      if (replaced.has(key) || (name && (figures.get(name) ?? null) !== null)) return [];
      const cell = cells.get(address);
      const given = valueAt(values, spec.name, own);
      if (given === undefined || (cell?.error === undefined && same(given, cell?.value ?? null))) return [];
      if (given instanceof NativeError) return [];
      const stated = cell?.error ?? cell?.value;
      if (given === "" && stated === 0) {
        return [
          added(placeName(spec.name, address), "holds 0 in place of no text, as some programs save it", "", "0", "0"),
        ];
      }
      const format = formatAt(specs, key);
      if (given === 0 && (stated ?? null) === null && readable(0, format) === "") return [];
      const [was, is] = twoWords(given, stated, format);
      const label = typeof given === "number" ? valueAt(values, spec.name, { ...own, column: 1 }) : "";
      const of = typeof label === "string" && label !== "" && own.column > 1 ? ` for ${label}` : "";
      return [
        changed(placeName(spec.name, address), `shows ${is}${of}; what was typed gives ${was}`, was, is, "shows"),
      ];
    });
  });
}
