import type { BedCans } from "./bed-verdict";
import { type CellsOf, listOf } from "./cells-of";

const isFilled = (cell: unknown) => cell !== null && cell !== undefined && cell !== "";

/** The cans of a bed, and which rows and columns of the audit's form they are in, from 0. */
export type PlacedCans = BedCans & { rows: number[]; columns: number[] };

/** The cans of an audit as typed: rows and columns that hold anything, null where a can was not read. */
export function bedCans(cells: CellsOf): PlacedCans {
  const typed = cells("Cans_Readings") ?? [];
  const rows = typed.flatMap((line, row) => (line.some(isFilled) ? [row] : []));
  const columns = (typed[0] ?? []).flatMap((_, column) =>
    typed.some((line) => isFilled(line[column])) ? [column] : [],
  );
  const [across, along] = [listOf(cells, "Cans_Across_m"), listOf(cells, "Cans_Along_m")];
  const place = (value: unknown) => (typeof value === "number" ? value : Number.NaN);
  const reading = (value: unknown) => (typeof value === "number" ? value : null);
  return {
    grid: rows.map((row) => columns.map((column) => reading(typed[row]![column]))),
    across: columns.map((column) => place(across[column])),
    along: rows.map((row) => place(along[row])),
    ...{ rows, columns },
  };
}
