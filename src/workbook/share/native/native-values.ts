import { namesOf } from "../../build";
import { cellAt, firstCell } from "../../places";
import type { SheetSpec } from "../../sheet-spec";
import { areaOf, type SheetArea } from "../area";
import { type FileBook, namedArea } from "../book";
import type { Stated } from "../copy-report";
import type { FileCell } from "../sheet-cells";
import { NATIVE, SIGNS } from "./functions";
import type { Cells } from "./given";
import { type Node, treeOf } from "./syntax";
import { isArea, isMatrix, type Matrix, NativeError, type Scalar, truthOf, Unsure, type Value } from "./value";

const MOST_CELLS = 20_000;

interface Sheets {
  /** The formulas taken apart, by `Sheet!A1`. */
  trees: Map<string, Node>;
  /** The formula of each cell, by `Sheet!A1`. */
  formulas: ReadonlyMap<string, string>;
  /** What each name stands for, in capitals. */
  areas: ReadonlyMap<string, SheetArea>;
}

const described = new WeakMap<readonly SheetSpec[], Sheets>();

function sheetsOf(specs: readonly SheetSpec[]): Sheets {
  const known = described.get(specs);
  if (known) return known;
  const formulas = specs.flatMap(({ name, cells }) =>
    cells.flatMap(({ at, formula }) =>
      formula === undefined ? [] : [[`${name}!${firstCell(at)}`, formula] as [string, string]],
    ),
  );
  const areas = specs.flatMap((spec) =>
    [...namesOf(spec)].map(([name, range]) => [name.toUpperCase(), areaOf(range, spec.name)!] as [string, SheetArea]),
  );
  const sheets = { trees: new Map(), formulas: new Map(formulas), areas: new Map(areas) };
  described.set(specs, sheets);
  return sheets;
}

/**
 * What the audit's own formulas give from what was typed into a file. The formulas come from the audit's sheets as
 * Canfall describes them, never from the file, and figures that core works out are taken from there.
 */
export class NativeValues implements Cells {
  private readonly sheets: Sheets;
  private readonly cells: ReadonlyMap<string, ReadonlyMap<string, FileCell>>;
  private readonly known = new Map<string, Scalar>();
  /** The values of whole areas, which many formulas read. */
  private readonly matrices = new Map<string, Matrix>();
  private readonly others = new Map<string, string | null>();
  private readonly doing = new Set<string>();

  constructor(
    private readonly book: FileBook,
    specs: readonly SheetSpec[],
    /** Figures worked out otherwise, by their names. */
    figures: ReadonlyMap<string, Stated>,
  ) {
    this.sheets = sheetsOf(specs);
    this.cells = new Map(book.sheets.map(({ name, cells }) => [name, cells]));
    for (const [name, figure] of figures) {
      const area = this.sheets.areas.get(name.toUpperCase());
      if (area && figure !== null) this.know(area.sheet, cellAt(area.top, area.left), figure);
    }
  }

  /** Another formula than the audit's own in a cell, or null where something is typed. */
  standsAt(sheet: string, address: string, formula: string | null): void {
    this.others.set(`${sheet}!${address}`, formula);
  }

  /** Takes the value of a cell as given. */
  know(sheet: string, address: string, value: Scalar): void {
    this.known.set(`${sheet}!${address}`, value);
  }

  /** What a cell should show; throws Unsure where that is not certain. */
  at(sheet: string, address: string): Scalar {
    const key = `${sheet}!${address}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const value = this.worked(key, sheet, address);
    this.known.set(key, value);
    return value;
  }

  private worked(key: string, sheet: string, address: string): Scalar {
    const other = this.others.get(key);
    const formula = other === undefined ? this.sheets.formulas.get(key) : other;
    if (formula === undefined || formula === null) return this.typed(sheet, address);
    if (this.doing.has(key)) throw new Unsure();
    this.doing.add(key);
    try {
      return this.first(this.valueOf(this.treeAt(key, formula, sheet), sheet)) ?? 0;
    } catch (error) {
      if (error instanceof NativeError) return error;
      throw error;
    } finally {
      this.doing.delete(key);
    }
  }

  /** The tree of a cell's formula, kept for the next file. */
  private treeAt(key: string, formula: string, sheet: string): Node {
    if (this.others.has(key)) return treeOf(formula, sheet);
    const { trees } = this.sheets;
    const tree = trees.get(key) ?? treeOf(formula, sheet);
    trees.set(key, tree);
    return tree;
  }

  private typed(sheet: string, address: string): Scalar {
    const cell = this.cells.get(sheet)?.get(address);
    return cell?.error === undefined ? (cell?.value ?? null) : new NativeError(cell.error);
  }

  matrix(value: Value): Matrix {
    if (isMatrix(value)) return value;
    if (!isArea(value)) return [[value]];
    const { sheet, top, left, bottom, right } = value;
    if ((bottom - top + 1) * (right - left + 1) > MOST_CELLS) throw new Unsure();
    const key = `${sheet}!${top},${left},${bottom},${right}`;
    const known = this.matrices.get(key);
    if (known) return known;
    const matrix = Array.from({ length: bottom - top + 1 }, (_, i) =>
      Array.from({ length: right - left + 1 }, (_, j) => this.at(sheet, cellAt(top + i, left + j))),
    );
    this.matrices.set(key, matrix);
    return matrix;
  }

  first(value: Value): Scalar {
    if (isMatrix(value)) return value[0]?.[0] ?? null;
    return isArea(value) ? this.at(value.sheet, cellAt(value.top, value.left)) : value;
  }

  private areaNamed(text: string): SheetArea {
    const area = this.sheets.areas.get(text.toUpperCase()) ?? namedArea(this.book, text);
    if (!area) throw new Unsure();
    return area;
  }

  private valueOf(node: Node, sheet: string): Value {
    switch (node.kind) {
      case "value":
        return node.value;
      case "cells":
        return node.area ?? this.areaNamed(node.text);
      case "minus":
        return SIGNS["-"]!([0, this.valueOf(node.of, sheet)], this);
      case "sign":
        return node.sign === ":"
          ? this.between(node, sheet)
          : SIGNS[node.sign]!([this.valueOf(node.left, sheet), this.valueOf(node.right, sheet)], this);
      case "call":
        return this.called(node, sheet);
    }
  }

  private between({ left, right }: Node & { kind: "sign" }, sheet: string): Value {
    const [from, to] = [this.valueOf(left, sheet), this.valueOf(right, sheet)];
    if (!isArea(from) || !isArea(to)) throw new Unsure();
    return { ...from, bottom: to.bottom, right: to.right };
  }

  private called({ name, given }: Node & { kind: "call" }, sheet: string): Value {
    if (name === "IF") {
      const met = truthOf(this.first(this.valueOf(given[0]!, sheet)));
      const chosen = met ? given[1] : given[2];
      return chosen ? this.valueOf(chosen, sheet) : met;
    }
    const native = NATIVE[name];
    if (!native) throw new Unsure();
    return native(
      given.map((one) => this.safe(one, sheet)),
      this,
    );
  }

  /** An error stays a value here: some functions ask for it. */
  private safe(node: Node, sheet: string): Value {
    try {
      return this.valueOf(node, sheet);
    } catch (error) {
      if (error instanceof NativeError) return error;
      throw error;
    }
  }
}
