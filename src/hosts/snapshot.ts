import type { Area } from "../cells/area";
import { boxOf } from "../cells/box";
import type { Cell, Input } from "../cells/cell";

/** What a reader of the workbook asks for. */
export interface Wanted {
  names?: readonly string[];
  areas?: readonly Area[];
  /** Names and areas of which what was typed is wanted too. */
  inputs?: readonly (string | Area)[];
}

/** The cells of an area at one moment. */
export interface Filled {
  area: Area;
  cells: Cell[][];
  /** What was typed; null where that was not asked for. */
  inputs: Input[][] | null;
}

/** The workbook at one moment, as plain data. */
export interface Seen {
  /** Tells the open workbook from any that was open before it. */
  book: string;
  /** Its file's name; left out where the spreadsheet does not tell. */
  file?: string;
  sheets: readonly string[];
  calculating: boolean;
  /** Cut to the used part of its sheet; null where no cells are selected. */
  selection: Filled | null;
  /** What is at each name and area that was asked for; null where there is none. */
  held: readonly (readonly [place: string | Area, found: Filled | null])[];
}

const nameKey = (name: string) => name.toLowerCase();
const areaKey = ({ sheet, address }: Area) => `${sheet.toLowerCase()}!${address}`;
const keyOf = (place: string | Area) => (typeof place === "string" ? nameKey(place) : areaKey(place));

/** Several askings as one, each place once. */
export interface AllWanted {
  names: string[];
  areas: Area[];
  /** Whether what was typed there is wanted too. */
  typed(place: string | Area): boolean;
}

export function allWanted(each: readonly Wanted[]): AllWanted {
  const places = new Map<string, string | Area>();
  const typed = new Set<string>();
  for (const { names = [], areas = [], inputs = [] } of each) {
    for (const place of [...names, ...areas, ...inputs]) places.set(keyOf(place), place);
    for (const place of inputs) typed.add(keyOf(place));
  }
  const all = [...places.values()];
  return {
    names: all.filter((place) => typeof place === "string"),
    areas: all.filter((place) => typeof place !== "string"),
    typed: (place) => typed.has(keyOf(place)),
  };
}

/** The workbook at one moment: what was asked for, and the selection. */
export class Snapshot {
  readonly #held = new Map<string, Filled | null>();

  constructor(readonly seen: Seen) {
    for (const [place, found] of seen.held) this.#held.set(keyOf(place), found);
    for (const [, found] of [...seen.held, ["", seen.selection] as const]) {
      if (found && !this.#held.has(areaKey(found.area))) this.#held.set(areaKey(found.area), found);
    }
  }

  /** What is behind a defined name; null where there is none. */
  named(name: string): Filled | null {
    return this.#asked(nameKey(name), name);
  }

  /** What an area holds; null where its sheet is not there. */
  at(area: Area): Filled | null {
    return this.#asked(areaKey(area), `${area.sheet}!${area.address}`);
  }

  /** The value of one cell, in whichever area it was read. */
  cell(area: Area): Cell {
    const { row, column } = boxOf(area);
    for (const filled of this.#held.values()) {
      if (filled?.area.sheet.toLowerCase() !== area.sheet.toLowerCase()) continue;
      const box = boxOf(filled.area);
      const value = filled.cells[row - box.row]?.[column - box.column];
      if (value !== undefined) return value;
    }
    throw new Error(`${area.sheet}!${area.address} was not asked for`);
  }

  /** The sheet as the workbook spells it; null where there is none. */
  sheet(name: string): string | null {
    return this.seen.sheets.find((one) => nameKey(one) === nameKey(name)) ?? null;
  }

  #asked(key: string, place: string): Filled | null {
    const found = this.#held.get(key);
    if (found === undefined) throw new Error(`${place} was not asked for`);
    return found;
  }
}

/** What a host without round trips answers cell by cell. */
export interface Cells {
  named(name: string): Area | null;
  read(area: Area): Cell[][];
  inputs(area: Area): Input[][];
}

/** A snapshot of a workbook that is at hand. */
export function snapshotOf(
  wanted: Wanted,
  facts: Pick<Seen, "book" | "file" | "sheets" | "calculating">,
  selection: Area,
  from: Cells,
): Snapshot {
  const { names, areas, typed } = allWanted([wanted]);
  const filled = (area: Area, withInputs: boolean): Filled => ({
    area,
    cells: from.read(area),
    inputs: withInputs ? from.inputs(area) : null,
  });
  const known = new Map(facts.sheets.map((sheet) => [sheet.toLowerCase(), sheet]));
  const at = (area: Area): Filled | null => {
    const sheet = known.get(area.sheet.toLowerCase());
    return sheet === undefined ? null : filled({ ...area, sheet }, typed(area));
  };
  const behind = (name: string): Filled | null => {
    const area = from.named(name);
    return area && filled(area, typed(name));
  };
  return new Snapshot({
    ...facts,
    selection: filled(selection, false),
    held: [...areas.map((area) => [area, at(area)] as const), ...names.map((name) => [name, behind(name)] as const)],
  });
}
