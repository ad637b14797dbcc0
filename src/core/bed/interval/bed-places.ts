import type { BedPlace } from "../bed-heads";
import type { ReadBed } from "../read-bed";

/** About how many equal cells, as square as they can be, a drawn bed is kept at: their middles. */
const CELLS = 784;
const FEWEST_A_SIDE = 8;

/** Where a bed is drawn: at its cans, and all over. */
export interface BedPlaces {
  /** The cans, then the cells. */
  all: BedPlace[];
  cans: number;
  /** How many cells are across and along. */
  columns: number;
  rows: number;
  /** Lines of a lattice that all places are on: those of the cans, then those of the cells. */
  across: number[];
  along: number[];
  /** Where each place is on the lattice, row after row. */
  at: Int32Array;
}

/** The places of a bed. */
export function bedPlaces({ cans, across, along, width, length }: ReadBed): BedPlaces {
  const side = Math.sqrt((width * length) / CELLS);
  const middles = (size: number) => {
    const count = Math.max(FEWEST_A_SIDE, 2 * Math.round(size / side / 2));
    return Array.from({ length: count }, (_, i) => ((i + 0.5) * size) / count);
  };
  const [x, y] = [middles(width), middles(length)];
  const columns = across.length + x.length;
  const cells = y.flatMap((cellY, row) => x.map((cellX, column) => ({ x: cellX, y: cellY, row, column })));
  return {
    all: [...cans.map((can) => ({ x: can.x, y: can.y })), ...cells.map((cell) => ({ x: cell.x, y: cell.y }))],
    cans: cans.length,
    columns: x.length,
    rows: y.length,
    across: [...across, ...x],
    along: [...along, ...y],
    at: Int32Array.from([
      ...cans.map(({ row, column }) => row * columns + column),
      ...cells.map(({ row, column }) => (along.length + row) * columns + across.length + column),
    ]),
  };
}
