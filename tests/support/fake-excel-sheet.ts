import type { Rectangle } from "./fake-excel-address";
import { Fault, type Matrix, type Value } from "./fake-excel-formula";

interface Cell {
  input: number | string | boolean | null;
  value: Value;
  /** Where the formula is whose spill this cell shows. */
  anchor?: string;
}

const key = (row: number, column: number): string => `${row},${column}`;

/** A picture over a sheet; lengths in points. */
export interface Shape {
  id: string;
  type: "Image" | "GeometricShape";
  name: string;
  altTextDescription: string;
  lockAspectRatio: boolean;
  left: number;
  top: number;
  width: number;
  height: number;
  base64: string;
}

/** How a sheet is protected. */
export interface Protection {
  options: Record<string, unknown>;
  password?: string | undefined;
}

/** A sheet that calculates its formulas. */
export class Sheet {
  readonly cells = new Map<string, Cell>();
  /** Names that only this sheet knows, with their formulas. */
  readonly names = new Map<string, string>();
  shapes: Shape[] = [];
  protection: Protection | null = null;
  /** Places that may be written to while it is protected. */
  readonly unlocked = new Set<string>();

  constructor(
    readonly id: string,
    readonly name: string,
  ) {}

  cell(row: number, column: number): Cell {
    return this.cells.get(key(row, column)) ?? { input: null, value: null };
  }

  set(row: number, column: number, input: number | string | boolean): void {
    if (input === "") this.cells.delete(key(row, column));
    else this.cells.set(key(row, column), { input, value: String(input).startsWith("=") ? null : input });
  }

  grid<T>(area: Rectangle, of: (row: number, column: number) => T): T[][] {
    if (area.rows * area.columns > 5_000_000) throw new Error("the fake Excel refuses to answer for so many cells");
    return Array.from({ length: area.rows }, (_, r) =>
      Array.from({ length: area.columns }, (_, c) => of(area.row + r, area.column + c)),
    );
  }

  used(): Rectangle | null {
    const places = [...this.cells.keys()].map((place) => place.split(",").map(Number) as [number, number]);
    if (places.length === 0) return null;
    const rows = places.map(([row]) => row);
    const columns = places.map(([, column]) => column);
    const [row, column] = [Math.min(...rows), Math.min(...columns)];
    return { row, column, rows: Math.max(...rows) + 1 - row, columns: Math.max(...columns) + 1 - column };
  }

  /** Puts the values of the formula in a cell there, spilled where they are more than one. */
  show(place: string, values: Matrix): void {
    const [row, column] = place.split(",").map(Number) as [number, number];
    const body: [string, Value][] = values
      .flatMap((line, r) => line.map((value, c): [string, Value] => [key(row + r, column + c), value]))
      .slice(1);
    const anchor = this.cells.get(place)!;
    if (body.some(([at]) => this.cells.has(at))) {
      anchor.value = new Fault("#SPILL!");
      return;
    }
    anchor.value = values[0]![0] ?? 0;
    if (body.length > 0) anchor.anchor = place;
    for (const [at, value] of body) this.cells.set(at, { input: null, value: value ?? 0, anchor: place });
  }
}
