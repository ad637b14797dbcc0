import { namesOf } from "../build";
import { firstCell } from "../places";
import type { CellSpec, SheetSpec } from "../sheet-spec";
import { sameValue } from "./agreement";
import { absolute, areaOf, placeName } from "./area";
import { type BookSheet, type FileBook, namedArea } from "./book";
import { sameFormula } from "./same-formula";
import type { FileCell } from "./sheet-cells";

const isTyped = ({ kind, formula }: CellSpec) => (kind === "input" || kind === "reading") && formula === undefined;

function shown({ value, error }: FileCell): string {
  const text = String(error ?? value ?? "");
  return text === "" ? "nothing" : `"${text.slice(0, 60)}"`;
}

function cellFinding(spec: CellSpec, sheet: string, cell: FileCell | undefined): string | null {
  const place = placeName(sheet, firstCell(spec.at));
  if (isTyped(spec)) {
    return cell?.formula === undefined ? null : `${place}: a formula stands where a value should be typed.`;
  }
  if (spec.formula === undefined) {
    const same = cell?.formula === undefined && sameValue(cell?.value ?? null, spec.value ?? null);
    return same || spec.value === undefined
      ? null
      : `${place}: "${spec.value}" was changed to ${cell ? shown(cell) : "nothing"}.`;
  }
  if (cell?.formula === undefined)
    return `${place}: the formula was typed over with ${cell ? shown(cell) : "nothing"}.`;
  return sameFormula(spec.formula, cell.formula, sheet) ? null : `${place}: the formula was changed.`;
}

const addresses = new WeakMap<SheetSpec, readonly string[]>();

/** The address of each cell of a sheet, worked out once. */
function addressesOf(spec: SheetSpec): readonly string[] {
  const known = addresses.get(spec) ?? spec.cells.map(({ at }) => firstCell(at));
  addresses.set(spec, known);
  return known;
}

function sheetFindings(spec: SheetSpec, sheet: BookSheet, replaced: ReadonlySet<string>): string[] {
  const places = addressesOf(spec);
  return spec.cells.flatMap((cell, index) => {
    const address = places[index]!;
    return replaced.has(`${spec.name}!${address}`)
      ? []
      : (cellFinding(cell, spec.name, sheet.cells.get(address)) ?? []);
  });
}

function nameFindings(spec: SheetSpec, book: FileBook): string[] {
  return [...namesOf(spec)].flatMap(([name, range]) => {
    const area = namedArea(book, name);
    if (!area) return [`The name ${name} is missing or leads nowhere.`];
    return absolute(area) === absolute(areaOf(range, spec.name)!) ? [] : [`The name ${name} leads to another place.`];
  });
}

/**
 * What of a file is not as in the audit's own sheets: missing sheets and names, changed or overwritten formulas and
 * fixed texts.
 *
 * @param replaced Cells that the Evidence sheet accounts for, as `Sheet!A1`
 */
export function templateFindings(book: FileBook, specs: readonly SheetSpec[], replaced: ReadonlySet<string>): string[] {
  return specs.flatMap((spec) => {
    const sheet = book.sheets.find(({ name }) => name === spec.name);
    if (!sheet) return [`The sheet ${spec.name} is missing.`];
    return [...nameFindings(spec, book), ...sheetFindings(spec, sheet, replaced)];
  });
}
