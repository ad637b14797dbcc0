import type { BedPlace } from "../bed-heads";
import type { ReadBed } from "../read-bed";

/** Places across the bed, and along it, at which a drawn bed is kept: the middles of equal cells. */
export const CELLS = 16;

/** Where a bed is drawn: at its cans, and all over. */
export interface BedPlaces {
  /** The cans, then the cells. */
  all: BedPlace[];
  cans: number;
  /** Lines of a lattice that all places are on: those of the cans, then those of the cells. */
  across: number[];
  along: number[];
  /** Where each place is on the lattice, row after row. */
  at: Int32Array;
}

/** The places of a bed. */
export function bedPlaces({ cans, across, along, width, length }: ReadBed): BedPlaces {
  const middles = (size: number) => Array.from({ length: CELLS }, (_, i) => ((i + 0.5) * size) / CELLS);
  const [x, y] = [middles(width), middles(length)];
  const columns = across.length + CELLS;
  const cells = y.flatMap((cellY, row) => x.map((cellX, column) => ({ x: cellX, y: cellY, row, column })));
  return {
    all: [...cans.map((can) => ({ x: can.x, y: can.y })), ...cells.map((cell) => ({ x: cell.x, y: cell.y }))],
    cans: cans.length,
    across: [...across, ...x],
    along: [...along, ...y],
    at: Int32Array.from([
      ...cans.map(({ row, column }) => row * columns + column),
      ...cells.map(({ row, column }) => (along.length + row) * columns + across.length + column),
    ]),
  };
}
