import { type Rectangle, rectangle } from "./fake-excel-address";
import type { Arrival } from "./fake-excel-file";
import { evaluate, Fault, type Matrix, PENDING } from "./fake-excel-formula";
import { Sheet } from "./fake-excel-sheet";

/** The sheet and the address that a name's formula leads to, or null. */
export function placeOf(formula: string): { sheet: string; address: string } | null {
  const [, quoted, plain, address] =
    /^=(?:'((?:[^']|'')+)'|(\w+))!(\$[A-Z]+\$\d+(?::\$[A-Z]+\$\d+)?)$/.exec(formula) ?? [];
  return address ? { sheet: quoted?.replaceAll("''", "'") ?? plain!, address } : null;
}

/** Sheets, names and a selection; `call` runs a custom function or throws PENDING. */
export class Workbook {
  sheets: Sheet[] = [];
  /** Defined names of the whole workbook, with their formulas. */
  readonly names = new Map<string, string>();
  /** What becomes of the names of inserted files. */
  arrival: Arrival = "workbook";
  /** Whether it takes no file at all. */
  refusesFiles = false;
  /** As Excel on the web does with sheets of a file that holds charts. */
  refusesCharts = false;
  /** Whether a change calculates the formulas again. */
  calculates = true;
  /** Whether it takes a file and says all the same that it failed, after so many of its sheets. */
  failsAfter: number | null = null;
  /** Whether references between inserted sheets become links to another file. */
  links = false;
  /** Whether sheets may be added and removed. */
  structureProtected = false;
  /** Whether it opens no file in a window of its own. */
  refusesWindows = false;
  /** The signs that formulas are typed with. */
  separators = { decimal: ".", list: "," };
  /** What Excel's own Undo would take back. */
  readonly ownUndo: string[] = [];
  /** The files whose sheets were inserted. */
  readonly inserted: string[] = [];
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
    for (const [name, formula] of this.names) {
      const place = placeOf(formula);
      if (place?.sheet === sheet.name) this.names.set(name, `=#REF!${place.address}`);
    }
    if (this.selection.sheet === sheet) this.selection = { sheet: this.sheets[0]!, area: rectangle("A1") };
  }

  sheet(name: string): Sheet | undefined {
    return this.sheets.find((sheet) => sheet.name === name || sheet.id === name);
  }

  /** Calculates until nothing changes; formulas read what the pass before left. */
  calculate(): void {
    if (!this.calculates) return;
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

  #range(name: string, address: string): Matrix {
    const from = this.sheet(name);
    if (!from) return [[new Fault("#REF!")]];
    return from.grid(rectangle(address), (row, column) => from.cell(row, column).value);
  }

  #values(sheet: Sheet, formula: string): Matrix {
    try {
      return evaluate(formula, {
        call: this.call,
        range: (name, address) => this.#range(name ?? sheet.name, address),
        named: (name) => {
          const formula = sheet.names.get(name) ?? this.names.get(name);
          if (formula === undefined) return [[new Fault("#NAME?")]];
          const place = placeOf(formula);
          return place ? this.#range(place.sheet, place.address) : [[new Fault("#REF!")]];
        },
      });
    } catch (error) {
      if (error !== PENDING) throw error;
      return [[new Fault("#BUSY!")]];
    }
  }
}
