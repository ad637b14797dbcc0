import type { Area } from "../../src/cells/area";
import { boxAddress, boxOf, cellAt } from "../../src/cells/box";
import type { Cell, Input } from "../../src/cells/cell";
import { type Host, type Picture, PLAIN_SEPARATORS } from "../../src/hosts/host";
import { snapshotOf } from "../../src/hosts/snapshot";
import { bookContents, refuseTaken } from "../../src/xlsx/parts/book-contents";
import { bookOfFile, fileOfBook } from "./memory-file";

type Sheet = Map<string, Input>;

/** A workbook in memory: it keeps what is typed but calculates nothing, so a formula shows #NAME?. */
export interface MemoryHost extends Host {
  /** Types into a cell as a person would, and tells the watchers. */
  type(area: Area, inputs: Input[][]): Promise<void>;
  /** Gives cells a name. */
  define(name: string, area: Area): void;
  /** What was handed over, in order. */
  readonly delivered: { file: Uint8Array; name: string }[];
  /** Whether the person lets another workbook take the place of the open one. */
  gives: boolean;
  /** What it says it had to leave out of inserted sheets. */
  leavesOut: string;
}

const NUMBER = /^-?\d+(\.\d+)?$/;

function entered(input: Input): Input {
  if (typeof input !== "string" || input.startsWith("=")) return input;
  if (input.startsWith("'")) return input;
  return NUMBER.test(input) ? Number(input) : input;
}

function cellFor(input: Input | undefined): Cell {
  if (input === undefined) return null;
  if (typeof input !== "string") return input;
  return input.startsWith("=") ? { error: "#NAME?" } : input.replace(/^'/, "");
}

export function memoryHost(
  sheets: Record<string, Record<string, Input>>,
  names: Record<string, Area> = {},
): MemoryHost {
  const book = new Map<string, Sheet>();
  for (const [name, cells] of Object.entries(sheets)) book.set(name, new Map(Object.entries(cells)));
  const known = new Map(Object.entries(names));
  let placed: Picture[] = [];
  let opened = 1;
  const watchers = new Set<() => void>();
  let selected: Area = { sheet: Object.keys(sheets)[0]!, address: "A1" };
  const tell = () => {
    for (const watcher of watchers) watcher();
  };

  function sheetOf(area: Area): Sheet {
    const sheet = book.get(area.sheet);
    if (!sheet) throw new Error(`no sheet ${area.sheet}`);
    return sheet;
  }

  function each<T>(area: Area, work: (sheet: Sheet, address: string, row: number, column: number) => T): T[][] {
    const { rows, columns } = boxOf(area);
    return Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (_, column) =>
        work(sheetOf(area), cellAt(area, row, column).address, row, column),
      ),
    );
  }

  function put(area: Area, inputs: Input[][]): void {
    each(area, (sheet, address, row, column) => {
      const input = entered(inputs[row]![column]!);
      if (input === "") sheet.delete(address);
      else sheet.set(address, input);
    });
    tell();
  }

  function remove(name: string): void {
    book.delete(name);
    placed = placed.filter(({ at }) => at.sheet !== name);
    for (const [each, { sheet }] of known) if (sheet === name) known.delete(each);
  }

  function removePicture(sheet: string, name: string): void {
    placed = placed.filter((one) => one.at.sheet !== sheet || one.name !== name);
  }

  async function add(file: Uint8Array): Promise<void> {
    const added = await bookOfFile(file);
    for (const [name, cells] of added.sheets) book.set(name, cells);
    for (const [name, area] of added.names) known.set(name, area);
    tell();
  }

  const read = (area: Area): Cell[][] => each(area, (sheet, address) => cellFor(sheet.get(address)));
  const named = (wanted: string): Area | null => {
    const name = [...known.keys()].find((one) => one.toLowerCase() === wanted.toLowerCase());
    return name === undefined ? null : known.get(name)!;
  };
  const inputs = (area: Area): Input[][] =>
    each(area, (sheet, address) => {
      const input = sheet.get(address) ?? "";
      return typeof input === "string" ? input.replace(/^'/, "") : input;
    });

  return {
    label: "memory",
    platform: "memory",
    opened: "is open as a workbook of its own.",
    saves: true,
    openPage: () => {},
    slow: () => () => {},
    separators: async () => PLAIN_SEPARATORS,
    snapshot: async (wanted) => {
      const facts = { book: `book ${opened}`, sheets: [...book.keys()], calculating: false };
      return snapshotOf(wanted, facts, selected, { named, read, inputs });
    },
    delivered: [],
    gives: true,
    leavesOut: "",
    selection: async () => selected,
    select: async (area) => {
      selected = area;
      tell();
    },
    watch: async (changed) => {
      watchers.add(changed);
      return async () => {
        watchers.delete(changed);
      };
    },
    read: async (area) => read(area),
    inputs: async (area) => inputs(area),
    write: async (area, inputs) => put(area, inputs),
    async writeTogether(writes) {
      for (const { area, inputs } of writes) await this.write(area, inputs);
    },
    async writeKept(writes) {
      for (const { area, inputs } of writes) await this.write(area, inputs);
    },
    type: async (area, inputs) => put(area, inputs),
    named: async (name) => named(name),
    define: (name, area) => void known.set(name, area),
    sheets: async () => [...book.keys()],
    used: async (sheet) => {
      const cells = [...sheetOf({ sheet, address: "A1" }).keys()].map((address) => boxOf({ sheet, address }));
      if (cells.length === 0) return null;
      const rows = cells.map(({ row }) => row);
      const columns = cells.map(({ column }) => column);
      const [row, column] = [Math.min(...rows), Math.min(...columns)];
      const size = { rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
      return { sheet, address: boxAddress({ row, column, ...size }) };
    },
    addSheet: async (name) => {
      book.set(name, new Map());
    },
    removeSheet: async (name) => remove(name),
    settled: async () => {},
    bytes: () => fileOfBook({ sheets: book, names: known }),
    async insertSheets(file) {
      refuseTaken(bookContents(file), [...book.keys()], [...known.keys()]);
      await add(file);
      return this.leavesOut;
    },
    async openBook(file) {
      if (!this.gives) return false;
      for (const name of [...book.keys()]) remove(name);
      opened += 1;
      await add(file);
      selected = { sheet: [...book.keys()][0]!, address: "A1" };
      tell();
      return true;
    },
    async deliver(file, name) {
      this.delivered.push({ file, name });
      return `${name} is kept in memory.`;
    },
    placePicture: async (picture) => {
      removePicture(picture.at.sheet, picture.name);
      placed.push(picture);
    },
    removePicture: async (sheet, name) => removePicture(sheet, name),
    pictures: async (sheet) => placed.filter(({ at }) => at.sheet === sheet),
  };
}
