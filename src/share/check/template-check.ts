import { firstCell } from "../../cells/places";
import { absolute, areaOf, placeName } from "../../cells/sheet-area";
import { KEPT } from "../../workbook/audit/working/kept";
import { namesOf } from "../../workbook/form/build";
import type { CellSpec, SheetSpec } from "../../workbook/form/sheet-spec";
import type { FileCell } from "../../xlsx/parts/file-cell";
import { type BookSheet, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { changed, type Finding, saying } from "../finding";
import { strangeSign } from "../looks/sheets/look-alike";
import { sameFormula } from "../same-formula";
import { shortened } from "../shortened";
import { sameValue } from "./agreement";

/** Cells that the pane fills; whether they are true is looked at by what they say. */
const KEPT_NAMES = new Set(KEPT.map(([name]) => name));

const isKept = ({ name }: CellSpec) => name !== undefined && KEPT_NAMES.has(name);

const isTyped = ({ kind, formula }: CellSpec) => (kind === "input" || kind === "reading") && formula === undefined;

function shownWords(cell: FileCell | undefined): string {
  const text = String(cell?.error ?? cell?.value ?? "");
  return text === "" ? "nothing" : shortened(text, 90);
}

interface Said {
  what: string;
  was: string;
  is: string;
}

/** The kind of a formula where it is not a plain one of one cell. */
const kindSaid = ({ kind, fills }: FileCell): string =>
  kind === undefined || kind === "shared"
    ? ""
    : `${kind === "array" ? "an array formula" : "a data table"} of ${fills ?? "one cell"}`;

function cellFinding(spec: CellSpec, sheet: string, cell: FileCell | undefined): Said | null {
  const is = shownWords(cell);
  if (isTyped(spec) || isKept(spec)) {
    return cell?.formula === undefined
      ? null
      : { what: "a formula is where a value should be typed", was: "a value", is: `=${shortened(cell.formula, 90)}` };
  }
  if (spec.formula === undefined) {
    const was = String(spec.value ?? "");
    if (cell?.formula === undefined && cell?.error === undefined && sameValue(cell?.value ?? null, spec.value ?? null))
      return null;
    const sign = strangeSign(is);
    return { what: `"${was}" was changed to ${is === "nothing" ? is : `"${is}"`}${sign ? `: ${sign}` : ""}`, was, is };
  }
  const was = `=${shortened(spec.formula, 90)}`;
  if (cell?.formula === undefined) {
    return { what: `the formula was typed over with ${is === "nothing" ? is : `"${is}"`}`, was, is };
  }
  if (!sameFormula(spec.formula, cell.formula, sheet)) {
    return { what: "the formula was changed", was, is: `=${shortened(cell.formula, 90)}` };
  }
  const kind = kindSaid(cell);
  return kind ? { what: `the formula was entered as ${kind}`, was: "a formula of one cell", is: kind } : null;
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

function sheetFindings(
  spec: SheetSpec,
  sheet: BookSheet,
  replaced: ReadonlySet<string>,
  given: ReadonlyMap<string, string>,
): Finding[] {
  return templateOf(spec).cells.flatMap(({ own, address, key }) => {
    const said = own.name === undefined ? undefined : given.get(own.name);
    const expected = said === undefined ? own : { ...own, value: said };
    const finding = replaced.has(key) ? null : cellFinding(expected, spec.name, sheet.cells.get(address));
    return finding === null
      ? []
      : [changed(placeName(spec.name, address), finding.what, finding.was, finding.is, finding.what.split('"')[0]!)];
  });
}

/** A place that is the same from whichever cell it is asked for. */
const FIXED = /^\$[A-Z]{1,3}\$\d+(:\$[A-Z]{1,3}\$\d+)?$/;
const isFixed = (text: string) => FIXED.test(text.slice(text.lastIndexOf("!") + 1).trim());

function nameFindings(spec: SheetSpec, book: FileBook): Finding[] {
  return templateOf(spec).names.flatMap(({ name, leads }) => {
    const area = namedArea(book, name);
    const is = book.names.get(name) ?? "nowhere";
    const said = (what: string) => [saying("changed", name, `The name ${name} ${what}.`, leads, is)];
    if (!area) return said("is missing or leads nowhere");
    if (absolute(area) !== leads) return said("leads to another place");
    return isFixed(is) ? [] : said("leads to another place from each cell that asks for it");
  });
}

/**
 * What of a file is not as in the audit's own sheets: missing sheets and names, changed or overwritten formulas and
 * fixed texts.
 *
 * @param replaced Cells whose formulas were the add-in's or were painted by the pane, as `Sheet!A1`
 * @param given What a copy says in cells of its own, by their names
 */
export function templateFindings(
  book: FileBook,
  specs: readonly SheetSpec[],
  replaced: ReadonlySet<string>,
  given: ReadonlyMap<string, string>,
): Finding[] {
  return specs.flatMap((spec) => {
    const sheet = book.sheets.find(({ name }) => name === spec.name);
    if (!sheet) return [saying("changed", spec.name, `The sheet ${spec.name} is missing.`)];
    return [...nameFindings(spec, book), ...sheetFindings(spec, sheet, replaced, given)];
  });
}
