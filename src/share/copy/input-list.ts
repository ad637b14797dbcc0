import { firstCell, placesOf } from "../../cells/places";
import { absolute, areaOf, type SheetArea } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";

/** A value that a person typed. */
export interface TypedInput {
  /** The defined name of its cell or rectangle, or the reference of a rectangle that has none. */
  name: string;
  /** Its place in the rectangle, from 1. */
  row: number;
  column: number;
  value: Stated;
  /** Where it is, such as `B7`. */
  address: string;
  sheet: string;
  /** The formula that it comes from, where it was not typed as a value. */
  formula?: string;
}

const namesOfInputs = new WeakMap<readonly SheetSpec[], readonly string[]>();

/**
 * The names of what is typed into an audit, in the order of its sheets: of single cells, of rectangles, and references
 * to those cells that have no name.
 */
export function inputNames(specs: readonly SheetSpec[]): readonly string[] {
  const known = namesOfInputs.get(specs);
  if (known) return known;
  const names = specs.flatMap((spec) => {
    const areas = Object.entries(spec.areas ?? {}).map(([name, range]) => ({ name, places: new Set(placesOf(range)) }));
    const open = spec.cells.filter(({ kind, formula }) => (kind === "input" || kind === "reading") && !formula);
    return open.map(({ at, name }) => {
      const place = firstCell(at);
      const around = areas.find(({ places }) => places.has(place));
      return name ?? around?.name ?? absolute(areaOf(place, spec.name)!);
    });
  });
  const once = [...new Set(names)];
  namesOfInputs.set(specs, once);
  return once;
}

function listed(book: FileBook, name: string, area: SheetArea): TypedInput[] {
  return cellsIn(book, area).map(({ row, column, address, cell }) => ({
    name,
    row,
    column,
    address,
    sheet: area.sheet,
    value: cell.error ?? cell.value,
    ...(cell.formula !== undefined && { formula: cell.formula }),
  }));
}

/**
 * What was typed into a workbook: name after name, within each row after row, blank cells left out.
 *
 * @param names Defined names; those that the workbook does not have are passed over
 * @param references Rectangles without such a name that count too
 */
export function typedInputs(book: FileBook, names: readonly string[], references: readonly SheetArea[]): TypedInput[] {
  const named = names.flatMap((name) => {
    const area = areaOfInput(book, name);
    return area ? listed(book, name, area) : [];
  });
  return [...named, ...references.flatMap((area) => listed(book, absolute(area), area))];
}

/** The rectangle of an input's name, which may be a reference. */
export function areaOfInput(book: FileBook, name: string): SheetArea | null {
  return namedArea(book, name) ?? areaOf(name, "");
}
