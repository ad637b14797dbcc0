import { caughtDepth } from "../core/application/depth";
import { positive, upTo, within } from "../core/checks";
import { InputError } from "../core/errors";
import type { IntervalIndex } from "../core/uniformity/interval";
import { type Basis, parseBasis } from "../core/uniformity/multiplier";
import { plain } from "./cells";

/** A word that a person typed, in any case; anything else as it is. */
export function word(value: unknown): unknown {
  return typeof value === "string" ? value.trim().toLowerCase() : value;
}

/** An argument that may be left out. */
export function optional<T>(value: unknown, otherwise: T, read: (value: unknown) => T): T {
  const given = plain(value);
  return given === null ? otherwise : read(given);
}

/** How a reading becomes a depth [mm]: millilitres by the can's mouth, millimetres as they are. */
export function mouth(value: unknown): (reading: number) => number {
  const given = plain(value);
  if (word(given) === "mm") return (depth) => depth;
  if (typeof given !== "number" || !(given > 0)) {
    throw new InputError("mouth", 'be a diameter in mm, or "mm" for readings in mm', given);
  }
  const diameter = positive("mouth", given, "mm");
  return (volume) => caughtDepth(volume, diameter);
}

/** Which multiplier sets the run time; the driest can where nothing is said. */
export function basis(value: unknown): Basis {
  return optional<Basis>(value, "can", (given) => parseBasis(word(given)));
}

/** The index that an interval is asked for, in any case; core refuses the ones that it does not know. */
export function index(value: unknown): IntervalIndex {
  const given = plain(value);
  return (typeof given === "string" ? given.trim().toUpperCase() : given) as IntervalIndex;
}

/** The share of such intervals that should hold the true value; 0.9 where nothing is said. */
export function level(value: unknown): number {
  return optional(value, 0.9, (given) => within("level", given, 0.5, 0.99));
}

/** The share of the heads' water that lands on the bed; all of it where nothing is said. */
export function inBedShare(value: unknown): number {
  return optional(value, 1, (given) => upTo("in_bed_share", given, 1));
}
