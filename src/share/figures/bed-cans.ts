import { canAreas } from "../../core/pattern/can-areas";
import type { AuditInputs } from "./audit-inputs";

/** The cans of an audit as the file's readings give them. */
export interface BedCans {
  /** Cans with a number. */
  count: number;
  dry: number;
  /** The catches, row after row; none while a reading is wrong, fewer than 2 are read, or all are dry. */
  catches: number[];
  /** The area that each can with a number is for [m²]; none while places or the bed are not known. */
  areas: number[];
}

const isX = (value: unknown) => typeof value === "string" && ["", "X"].includes(value.trim().toUpperCase());

/** Whether typed positions can be used: numbers without gaps, ascending, within the bed, one for each line in use. */
function usable(
  inputs: AuditInputs,
  name: string,
  used: ReadonlySet<number>,
  side: number,
): Map<number, number> | null {
  const positions = inputs.numbers(name);
  if (inputs.cells(name).length > positions.size) return null;
  if ([...used].some((place) => !positions.has(place))) return null;
  let last = -Infinity;
  for (let place = 1; place <= positions.size; place += 1) {
    const position = positions.get(place);
    if (position === undefined || !(position > last)) return null;
    last = position;
  }
  const first = positions.get(1) ?? 0;
  return first >= 0 && last <= side ? positions : null;
}

/** Strips use all places that were typed, whatever was read there. */
function areasOf(inputs: AuditInputs, read: readonly { row: number; column: number }[]): number[] {
  const [width, length] = [inputs.number("Bed_Width_m"), inputs.number("Bed_Length_m")];
  const typed = inputs.cells("Cans_Readings");
  if (width === null || length === null || typed.length === 0) return [];
  const across = usable(inputs, "Cans_Across_m", new Set(typed.map(({ column }) => column)), width);
  const along = usable(inputs, "Cans_Along_m", new Set(typed.map(({ row }) => row)), length);
  if (!across || !along) return [];
  const areas = canAreas([...across.values()], [...along.values()], width, length);
  return read.map(({ row, column }) => areas[row - 1]![column - 1]!);
}

/** The cans of an audit, refused as a whole where one reading is neither a number of 0 or more nor x. */
export function bedCans(inputs: AuditInputs): BedCans {
  const typed = inputs.cells("Cans_Readings");
  const read = typed.flatMap(({ row, column, cell: { value } }) =>
    typeof value === "number" ? [{ row, column, value }] : [],
  );
  const values = read.map(({ value }) => value);
  const wrong = typed.some(({ cell: { value } }) => (typeof value === "number" ? value < 0 : !isX(value)));
  const usableCans = !wrong && values.length >= 2 && values.some((value) => value > 0);
  return {
    count: values.length,
    dry: values.filter((value) => value === 0).length,
    catches: usableCans ? values : [],
    areas: areasOf(inputs, read),
  };
}
