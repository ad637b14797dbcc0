import { type Rectangle, rectangle } from "./fake-excel-address";
import { evaluate, Fault, type Matrix, PENDING, type Value } from "./fake-excel-formula";

interface Cell {
  input: number | string | boolean | null;
  value: Value;
  /** Where the formula stands whose spill this cell shows. */
  anchor?: string;
}

const key = (row: number, column: number): string => `${row},${column}`;

/** A sheet that calculates its formulas. */
export class Sheet {
  readonly cells = new Map<string, Cell>();

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

/** Sheets, names and a selection; `call` runs a custom function or throws PENDING. */
export class Workbook {
  sheets: Sheet[] = [];
  readonly names = new Map<string, { sheet: string; address: string }>();
  selection!: { sheet: Sheet; area: Rectangle };
  call: (id: string, parameters: Matrix[]) => Matrix = () => [[new Fault("#NAME?")]];
  #made = 0;

  constructor() {
    this.selection = { sheet: this.add("Sheet1"), area: rectangle("A1") };
  }

  add(name: string): Sheet {
    this.#made += 1;
    const sheet = new Sheet(`{${this.#made}}`, name);
    this.sheets.push(sheet);
    return sheet;
  }

  remove(sheet: Sheet): void {
    this.sheets = this.sheets.filter((one) => one !== sheet);
    if (this.selection.sheet === sheet) this.selection = { sheet: this.sheets[0]!, area: rectangle("A1") };
  }

  sheet(name: string): Sheet | undefined {
    return this.sheets.find((sheet) => sheet.name === name || sheet.id === name);
  }

  /** Calculates until nothing changes; formulas read what the pass before left. */
  calculate(): void {
    for (let pass = 0, before = ""; pass < 20; pass++) {
      for (const sheet of this.sheets) this.#calculate(sheet);
      const now = JSON.stringify(this.sheets.map(({ cells }) => [...cells]));
      if (now === before) return;
      before = now;
    }
  }

  #calculate(sheet: Sheet): void {
    for (const [place, { input }] of [...sheet.cells]) {
      if (typeof input !== "string" || !input.startsWith("=")) continue;
      const values = this.#values(sheet, input);
      for (const [at, cell] of [...sheet.cells]) if (cell.anchor === place && at !== place) sheet.cells.delete(at);
      sheet.cells.set(place, { input, value: null });
      sheet.show(place, values);
    }
  }

  #values(sheet: Sheet, formula: string): Matrix {
    try {
      return evaluate(formula, {
        call: this.call,
        range: (name, address) => {
          const from = name === undefined ? sheet : this.sheet(name);
          if (!from) return [[new Fault("#REF!")]];
          return from.grid(rectangle(address), (row, column) => from.cell(row, column).value);
        },
      });
    } catch (error) {
      if (error !== PENDING) throw error;
      return [[new Fault("#BUSY!")]];
    }
  }
}
