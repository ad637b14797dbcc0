import type { Cell } from "../../cells/cell";
import { columnLetters } from "../../cells/letters";
import { addressParts } from "../../cells/sheet-area";
import type { CellChange } from "../desk-file/book";
import { callsOurs, storedFormula } from "../desk-file/formula";
import type { Edit } from "../parts/edits";
import type { FileCell, FileRow, SheetContent } from "../parts/file-cell";
import { isFiled, type PlannedChange, withArrays } from "./array-cells";
import { cellText, formulaText } from "./cell-text";

/** What the cells of a sheet need from the rest of the file. */
export interface CellTools {
  /** The style that a new cell would have in a row and a column without cells, as a number. */
  inherited(row: FileRow | undefined, column: number): number;
  /** The style of a cell whose look changes. */
  styled(base: number, change: CellChange): number;
  /** The mark of a formula whose size is its own. */
  dynamic(): number;
}

interface NewCell {
  row: number;
  column: number;
  text: string;
}

const isFormula = (input: unknown): boolean => typeof input === "string" && input.startsWith("=");

/** Whether two references such as A1 and A1:A1 mean the same cells. */
const samePlaces = (one: string | undefined, other: string): boolean =>
  one !== undefined && one.replace(/^([A-Z]+\d+):\1$/, "$1") === other.replace(/^([A-Z]+\d+):\1$/, "$1");

/** Changes the cells of one sheet; everything else in its part stays sign by sign. */
export class CellEdits {
  readonly edits: Edit[] = [];
  /** Whether a formula came, went or changed. */
  formulas = false;
  private changes = new Map<string, PlannedChange>();
  /** The cells that are new, row and column from 1. */
  readonly added: NewCell[] = [];

  constructor(
    private readonly xml: string,
    private readonly content: SheetContent,
    private readonly p: string,
    private readonly tools: CellTools,
  ) {}

  /** Takes all changes in, with what they mean for other cells. */
  take(all: readonly CellChange[]): void {
    this.changes = withArrays(all, this.content.cells);
    this.splitShared();
    const rows = new Map(this.content.rows.map((row) => [row.number, row]));
    for (const [address, change] of this.changes) this.write(address, change, rows);
    this.insert(rows);
  }

  /** Where the first of the cells that share a formula changes, each of the others gets its own. */
  private splitShared(): void {
    const split = new Set<string>();
    for (const [address, { input }] of this.changes) {
      const cell = this.content.cells.get(address);
      if (input !== undefined && cell?.shared !== undefined) split.add(cell.shared);
    }
    if (split.size === 0) return;
    for (const [address, cell] of this.content.cells) {
      if (cell.shared === undefined || !split.has(cell.shared)) continue;
      if (this.changes.get(address)?.input !== undefined) continue;
      const { row, column } = addressParts(address);
      this.changes.set(address, { row: row - 1, column: column - 1, ...this.changes.get(address), own: true });
    }
  }

  private write(address: string, change: PlannedChange, rows: Map<number, FileRow>): void {
    const cell = this.content.cells.get(address);
    const row = change.row + 1;
    const base = cell ? Number(cell.given.get("s") ?? 0) : this.tools.inherited(rows.get(row), change.column + 1);
    const style = change.look ? this.tools.styled(base, change) : base;
    const text = this.textOf(address, change, cell, style);
    if (cell) {
      if (text !== this.xml.slice(cell.start, cell.end)) this.edits.push({ start: cell.start, end: cell.end, text });
    } else if (text !== "") this.added.push({ row, column: change.column + 1, text });
  }

  private textOf(address: string, change: PlannedChange, cell: FileCell | undefined, style: number): string {
    const { p } = this;
    const given = new Map([["r", address], ...(cell?.given ?? [])]);
    if (style > 0) given.set("s", String(style));
    else given.delete("s");
    const { input, value = null } = change;
    // a value with looks or a picture of its own, which the desk does not know, goes with its formula
    if (input === undefined && !change.look && !change.own && cell?.given.has("vm"))
      return this.xml.slice(cell.start, cell.end);
    if (input === undefined) return this.kept(cell, given, change);
    const fills = typeof input === "string" && isFormula(input) ? this.fills(address, change, input) : undefined;
    if (isFiled(input, cell) && cell.formulaPlace && samePlaces(fills, cell.fills)) {
      return cellText(p, given, value, this.xml.slice(...cell.formulaPlace));
    }
    if (cell && change.spilled !== undefined && change.spilled === cell.value && !change.look) {
      return this.xml.slice(cell.start, cell.end);
    }
    given.delete("cm");
    given.delete("vm");
    if (cell?.formula !== undefined || isFormula(input)) this.formulas = true;
    if (typeof input !== "string" || !isFormula(input)) {
      const typed: Cell = input === "" ? (change.spilled ?? null) : input;
      if (typed === null && style === 0) return "";
      return cellText(p, given, typed, "");
    }
    if (fills !== undefined) given.set("cm", String(this.tools.dynamic()));
    return cellText(p, given, value, formulaText(p, storedFormula(input), fills));
  }

  private fills(address: string, { row, column, spill }: CellChange, input: string): string | undefined {
    if (!spill) return callsOurs(input) ? address : undefined;
    if (spill.length === 1 && spill[0]!.length === 1) return address;
    return `${address}:${columnLetters(column + spill[0]!.length)}${row + spill.length}`;
  }

  /** A cell that keeps what was typed in it: its style may change, and a formula's value. */
  private kept(cell: FileCell | undefined, given: ReadonlyMap<string, string>, change: PlannedChange): string {
    const { p } = this;
    if (!cell) return cellText(p, given, null, "");
    const place = cell.formulaPlace;
    if (!place || (change.value === undefined && !change.own)) return this.restyled(cell, given);
    const formula = change.own ? formulaText(p, cell.formula ?? "") : this.xml.slice(...place);
    if (change.own) this.formulas = true;
    const held = cell.error === undefined ? cell.value : { error: cell.error };
    return cellText(p, given, change.value === undefined ? held : change.value, formula);
  }

  /** A cell with another style and all else as it is written. */
  private restyled({ start, end, given: held }: FileCell, given: ReadonlyMap<string, string>): string {
    const source = this.xml.slice(start, end);
    if (held.get("s") === given.get("s")) return source;
    const rest = source.slice(this.tagLength(source));
    const open = cellText(this.p, new Map(given), null, "").slice(0, -2);
    const type = held.get("t");
    return `${open}${type === undefined ? "" : ` t="${type}"`}${source.endsWith("/>") && rest === "" ? "/>" : `>${rest}`}`;
  }

  /** Length of the opening tag of a cell, whose attributes hold no `>`. */
  private tagLength(source: string): number {
    return source.indexOf(">") + 1;
  }

  private insert(rows: Map<number, FileRow>): void {
    const { p, content } = this;
    const byRow = new Map<number, NewCell[]>();
    for (const cell of this.added) byRow.set(cell.row, [...(byRow.get(cell.row) ?? []), cell]);
    const there = new Map<number, { column: number; start: number }[]>();
    for (const [address, { start }] of content.cells) {
      const { row, column } = addressParts(address);
      if (byRow.has(row)) there.set(row, [...(there.get(row) ?? []), { column, start }]);
    }
    const newRows: { number: number; text: string }[] = [];
    for (const [number, cells] of [...byRow].sort(([one], [other]) => one - other)) {
      cells.sort((one, other) => one.column - other.column);
      const row = rows.get(number);
      const texts = cells.map(({ text }) => text).join("");
      if (!row) newRows.push({ number, text: `<${p}row r="${number}">${texts}</${p}row>` });
      else if (row.openEnd === row.end) {
        const at = this.xml.lastIndexOf("/", row.end);
        this.edits.push({ start: at, end: row.end, text: `>${texts}</${p}row>` });
      } else this.insertInto(row, cells, there.get(number) ?? []);
    }
    this.insertRows(newRows);
  }

  private insertRows(rows: { number: number; text: string }[]): void {
    const { table, rows: there } = this.content;
    if (rows.length === 0) return;
    if (table.openEnd === table.end) {
      const text = `>${rows.map((row) => row.text).join("")}</${this.p}sheetData>`;
      this.edits.push({ start: this.xml.lastIndexOf("/", table.end), end: table.end, text });
      return;
    }
    for (const { number, text } of rows) {
      const at = there.find((one) => one.number > number)?.start ?? table.closeStart;
      this.edits.push({ start: at, end: at, text });
    }
  }

  private insertInto(row: FileRow, cells: NewCell[], there: { column: number; start: number }[]): void {
    for (const { column, text } of cells) {
      const at = there.find((one) => one.column > column)?.start ?? row.closeStart;
      this.edits.push({ start: at, end: at, text });
    }
  }
}
