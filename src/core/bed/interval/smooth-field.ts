import type { BedPlace } from "../bed-heads";
import { cholesky } from "../cholesky";
import type { Normals } from "./normals";

/** Reach of the smooth unevenness over the throw. */
const REACH = 0.45;
const JITTER = 1e-6;

/** How alike two places are: exp(-(r / l)^2 / 2); r: distance; l: 0.45 of the throw. */
export function alikeness(places: readonly BedPlace[], others: readonly BedPlace[], radius: number): Float64Array {
  const reach = REACH * radius;
  const alike = new Float64Array(places.length * others.length);
  for (let i = 0; i < alike.length; i += 1) {
    const place = places[Math.floor(i / others.length)]!;
    const other = others[i % others.length]!;
    alike[i] = Math.exp(-(((place.x - other.x) / reach) ** 2 + ((place.y - other.y) / reach) ** 2) / 2);
  }
  return alike;
}

/**
 * Smooth random fields over a lattice, mean 0 and variance 1, alike as `alikeness` says.
 *
 *     G = L Z M'        L L', M M': alikeness of the rows and of the columns; Z: standard normal numbers
 *
 * @source the likeness is a product of one across and one along, so that its factor is one too
 */
export class SmoothField {
  readonly #across: Float64Array;
  readonly #along: Float64Array;
  readonly columns: number;
  readonly rows: number;

  constructor(across: readonly number[], along: readonly number[], radius: number) {
    this.columns = across.length;
    this.rows = along.length;
    this.#across = lineFactor(across, radius);
    this.#along = lineFactor(along, radius);
  }

  /** One field, row after row. */
  draw(normals: Normals): Float64Array {
    const { rows, columns } = this;
    const plain = normals.fill(new Float64Array(rows * columns));
    const half = new Float64Array(rows * columns);
    for (let i = 0; i < rows; i += 1) {
      for (let k = 0; k <= i; k += 1) {
        const share = this.#along[i * rows + k] as number;
        for (let j = 0; j < columns; j += 1) half[i * columns + j]! += share * (plain[k * columns + j] as number);
      }
    }
    const field = new Float64Array(rows * columns);
    for (let i = 0; i < rows; i += 1) {
      for (let j = 0; j < columns; j += 1) {
        let sum = 0;
        for (let k = 0; k <= j; k += 1) {
          sum += (half[i * columns + k] as number) * (this.#across[j * columns + k] as number);
        }
        field[i * columns + j] = sum;
      }
    }
    return field;
  }
}

function lineFactor(line: readonly number[], radius: number): Float64Array {
  const places = line.map((x) => ({ x, y: 0 }));
  const alike = alikeness(places, places, radius);
  for (let i = 0; i < line.length; i += 1) alike[i * line.length + i]! += JITTER;
  return cholesky(alike, line.length);
}
