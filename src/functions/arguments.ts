import { caughtDepth } from "../core/application/depth";
import { positive, upTo, within } from "../core/checks";
import { InputError } from "../core/errors";
import { type Basis, parseBasis } from "../core/uniformity/multiplier";
import { isBlank, plain } from "./cells";

function optional<T>(value: unknown, otherwise: T, read: (value: unknown) => T): T {
  const given = plain(value);
  return isBlank(given) ? otherwise : read(given);
}

/** How a reading becomes a depth [mm]: millilitres by the can's mouth, millimetres as they stand. */
export function mouth(value: unknown): (reading: number) => number {
  const given = plain(value);
  if (typeof given === "string" && given.trim().toLowerCase() === "mm") return (depth) => depth;
  if (typeof given !== "number" || !(given > 0)) {
    throw new InputError("mouth", 'be a diameter in mm, or "mm" for readings in mm', given);
  }
  const diameter = positive("mouth", given, "mm");
  return (volume) => caughtDepth(volume, diameter);
}

/** Which multiplier sets the run time; the driest can where nothing is said. */
export function basis(value: unknown): Basis {
  return optional<Basis>(value, "can", (given) =>
    parseBasis(typeof given === "string" ? given.trim().toLowerCase() : given),
  );
}

const INDICES = ["MEAN", "CU.CHRISTIANSEN", "DU.QUARTER", "SC.QUARTER"] as const;
export type Index = (typeof INDICES)[number];

/** The index that an interval is asked for. */
export function index(value: unknown): Index {
  const given = plain(value);
  const name = typeof given === "string" ? given.trim().toUpperCase() : given;
  const known = INDICES.find((index) => index === name);
  if (known) return known;
  const reason = name === "SC.CAN" ? " because the lowest can has no dependable interval" : "";
  throw new InputError("index", `be "MEAN", "CU.CHRISTIANSEN", "DU.QUARTER" or "SC.QUARTER"${reason}`, given);
}

/** The share of resamples between the ends of an interval; 0.9 where nothing is said. */
export function level(value: unknown): number {
  return optional(value, 0.9, (given) => within("level", given, 0.5, 0.99));
}

/** The share of the heads' water that lands on the bed; all of it where nothing is said. */
export function inBedShare(value: unknown): number {
  return optional(value, 1, (given) => upTo("in_bed_share", given, 1));
}
