import type { Edge } from "../../pattern/edges";

/** What was measured while the bed was tested, besides the cans. */
export interface Measured {
  /** Flow into a bucket [L/h], head by head in the order of the bed's heads; null where none was taken. */
  flows: readonly (number | null)[];
  /** Pressure by gauge [kPa], head by head; null where none was read. */
  pressures: readonly (number | null)[];
  /** The maker's flow [L/h] at the maker's pressure [kPa]. */
  maker?: { flow: number; pressure: number };
  /** Mean wind of the test [m/s], and the way that it blows over the bed where known: right and down are positive. */
  wind?: { speed: number; towards?: { x: number; y: number } };
  /** The side where the water comes in. */
  supply?: Edge;
}

/** Indices and values of what was taken. */
export function taken(values: readonly (number | null)[]): { at: number; value: number }[] {
  return values.flatMap((value, at) => (value === null ? [] : [{ at, value }]));
}

/** Mean of what was taken; undefined of nothing. */
export function meanTaken(values: readonly (number | null)[]): number | undefined {
  const all = taken(values);
  return all.length === 0 ? undefined : all.reduce((sum, { value }) => sum + value, 0) / all.length;
}
