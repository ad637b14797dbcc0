import { isReference, parseStructRef, stringifyStructRef, stringifyTokens, tokenize } from "@borgar/fx/xlsx";
import { columnLetters } from "../../cells/letters";
import { areaOf, type SheetArea } from "../../cells/sheet-area";
import type { CellChange } from "../desk-file/book";
import { type Edit, edited, tagEdit } from "../parts/edits";
import { escaped } from "../parts/escaped";
import { isMain } from "../parts/namespaces";
import { relationsOf, textOf } from "../parts/relations";
import { decoded } from "../parts/xml";
import { childOf, childrenOf, within, type XmlElement, xmlTree } from "../parts/xml-tree";
import { holdsFormula, speaksOfCells } from "./speaking";
import { type Parts, writePart } from "./write-part";

/** A column of a table that has another name now. */
interface Renamed {
  table: string;
  from: string;
  to: string;
}

interface Table {
  part: string;
  name: string;
  area: SheetArea;
  /** Whether its first line are the names of its columns, and its last one totals. */
  header: boolean;
  totals: boolean;
  columns: XmlElement[];
}

function tablesOf(parts: Parts, sheet: string): Table[] {
  return relationsOf(parts, sheet).flatMap(({ kind, part }) => {
    if (kind !== "table" || !parts.has(part)) return [];
    const root = xmlTree(textOf(parts, part));
    const area = areaOf(root.given.get("ref") ?? "", "");
    const columns = childrenOf(childOf(root, isMain, "tableColumns"), isMain, "tableColumn");
    const header = root.given.get("headerRowCount") !== "0";
    const totals = Number(root.given.get("totalsRowCount") ?? 0) > 0;
    return area ? [{ part, name: root.given.get("displayName") ?? "", area, header, totals, columns }] : [];
  });
}

/** The text that a header shows of what was typed or calculated; a column without one has its number. */
function headerText({ input = "", value }: CellChange, place: number): string {
  const shown = typeof input === "string" && input.startsWith("=") ? (value ?? "") : input;
  const text = typeof shown === "object" ? shown.error : String(shown).trim();
  return text === "" ? `Column${place + 1}` : text;
}

/** A name that no other column of the table has. */
function unique(name: string, others: readonly string[]): string {
  const taken = new Set(others.map((one) => one.toLowerCase()));
  let free = name;
  for (let number = 2; taken.has(free.toLowerCase()); number += 1) free = `${name}${number}`;
  return free;
}

/**
 * Gives the columns of a sheet's tables the names that their headers have now, as the file's own program does, which
 * refuses a table whose headers are not the names of its columns.
 *
 * @returns The changes with each header as the text that names its column
 */
export function nameColumns(parts: Parts, sheet: string, changes: readonly CellChange[]): CellChange[] {
  const renamed: Renamed[] = [];
  const all = new Map(changes.map((one) => [columnLetters(one.column + 1) + one.row, one]));
  for (const { part, name, area, header, totals, columns } of tablesOf(parts, sheet)) {
    const edits: Edit[] = [];
    const names = columns.map(({ given }) => given.get("name") ?? "");
    for (const [at, change] of all) {
      const place = change.column + 1 - area.left;
      const column = columns[place];
      if (change.input === undefined || !column) continue;
      if (header && change.row + 1 === area.top) {
        const to = unique(
          headerText(change, place),
          names.filter((_, i) => i !== place),
        );
        if (to !== names[place]) renamed.push({ table: name, from: names[place]!, to });
        names[place] = to;
        edits.push(tagEdit(column, { name: to }));
        const { value: _, spill: __, ...rest } = change;
        all.set(at, { ...rest, input: to });
      } else if (totals && change.row + 1 === area.bottom && column.given.has("totalsRowLabel")) {
        const label = typeof change.input === "string" && !change.input.startsWith("=") ? change.input : "";
        edits.push(tagEdit(column, { totalsRowLabel: label === "" ? null : label }));
      }
    }
    if (edits.length > 0) writePart(parts, part, edited(textOf(parts, part), edits));
  }
  if (renamed.length > 0) followNames(parts, renamed);
  return [...all.values()];
}

const same = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();

function followedFormula(formula: string, renamed: readonly Renamed[]): string {
  if (!formula.includes("[") || !renamed.some(({ table }) => formula.toLowerCase().includes(table.toLowerCase()))) {
    return formula;
  }
  const tokens = tokenize(formula, { withLocation: false, negativeNumbers: false });
  const followed = tokens.map((token) => {
    const parsed = isReference(token) ? parseStructRef(token.value) : undefined;
    if (!parsed?.columns?.length) return token;
    const columns = parsed.columns.map(
      (held) => renamed.find(({ table, from }) => same(table, parsed.table ?? "") && same(from, held))?.to ?? held,
    );
    const isSame = columns.every((one, i) => one === parsed.columns![i]);
    return isSame ? token : { ...token, value: stringifyStructRef({ ...parsed, columns }, { thisRow: true }) };
  });
  return followed.every(({ value }, i) => value === tokens[i]!.value) ? formula : stringifyTokens(followed);
}

/** Lets all formulas of the file speak of the columns by their new names. */
function followNames(parts: Parts, renamed: readonly Renamed[]): void {
  for (const [part, bytes] of [...parts]) {
    if (!speaksOfCells(part, bytes)) continue;
    const xml = decoded(bytes);
    const root = xmlTree(xml);
    const edits = [...within(root)].flatMap((one): Edit[] => {
      const text = holdsFormula(one) ? followedFormula(one.text, renamed) : one.text;
      return text === one.text ? [] : [{ start: one.openEnd, end: one.closeStart, text: escaped(text) }];
    });
    if (edits.length > 0) writePart(parts, part, edited(xml, edits));
  }
}
