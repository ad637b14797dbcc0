import { firstCell } from "../../cells/places";
import { absolute, areaOf, placeName } from "../../cells/sheet-area";
import { namesOf } from "../../workbook/form/build";
import type { CellSpec, SheetSpec } from "../../workbook/form/sheet-spec";
import type { FileCell } from "../../xlsx/parts/sheet-cells";
import { type BookSheet, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { sameFormula } from "../same-formula";
import { sameValue } from "./agreement";

const isTyped = ({ kind, formula }: CellSpec) => (kind === "input" || kind === "reading") && formula === undefined;

function cellWords({ value, error }: FileCell): string {
  const text = String(error ?? value ?? "");
  return text === "" ? "nothing" : `"${text.slice(0, 60)}"`;
}

function cellFinding(spec: CellSpec, sheet: string, cell: FileCell | undefined): string | null {
  if (isTyped(spec)) return cell?.formula === undefined ? null : "a formula is where a value should be typed";
  if (spec.formula === undefined) {
    const same = cell?.formula === undefined && sameValue(cell?.value ?? null, spec.value ?? null);
    return same || spec.value === undefined
      ? null
      : `"${spec.value}" was changed to ${cell ? cellWords(cell) : "nothing"}`;
  }
  if (cell?.formula === undefined) return `the formula was typed over with ${cell ? cellWords(cell) : "nothing"}`;
  return sameFormula(spec.formula, cell.formula, sheet) ? null : "the formula was changed";
}

interface Template {
  cells: readonly { own: CellSpec; address: string; key: string }[];
  /** Where each name leads. */
  names: readonly { name: string; leads: string }[];
}

const templates = new WeakMap<SheetSpec, Template>();

/** What a sheet is held against, calculated once. */
function templateOf(spec: SheetSpec): Template {
  const known = templates.get(spec);
  if (known) return known;
  const cells = spec.cells.map((own) => {
    const address = firstCell(own.at);
    return { own, address, key: `${spec.name}!${address}` };
  });
  const names = [...namesOf(spec)].map(([name, range]) => ({ name, leads: absolute(areaOf(range, spec.name)!) }));
  const template = { cells, names };
  templates.set(spec, template);
  return template;
}

function sheetFindings(spec: SheetSpec, sheet: BookSheet, replaced: ReadonlySet<string>): string[] {
  return templateOf(spec).cells.flatMap(({ own, address, key }) => {
    const finding = replaced.has(key) ? null : cellFinding(own, spec.name, sheet.cells.get(address));
    return finding === null ? [] : [`${placeName(spec.name, address)}: ${finding}.`];
  });
}

function nameFindings(spec: SheetSpec, book: FileBook): string[] {
  return templateOf(spec).names.flatMap(({ name, leads }) => {
    const area = namedArea(book, name);
    if (!area) return [`The name ${name} is missing or leads nowhere.`];
    return absolute(area) === leads ? [] : [`The name ${name} leads to another place.`];
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
