import { InputError } from "../errors";
import { gapCount } from "./gaps";

const ARRANGEMENTS = ["border", "inset", "centre", "staggered"] as const;
const ARCS = ["full", "matched", "unmatched"] as const;

/**
 * Where heads are: on the border, half a gap inside it, in one line down the middle, or as on the border with every second
 * row shifted by half a gap across.
 */
export type Arrangement = (typeof ARRANGEMENTS)[number];
/** What heads on the border throw: full circles, or the part that faces the bed with part of the flow or with all. */
export type Arcs = (typeof ARCS)[number];
/** Which side of a head gets water: the lower, both (0) or the higher. */
export type Side = -1 | 0 | 1;

/** One head; places count from a corner of the bed. */
export interface Head {
  /** Place across the width [m]. */
  x: number;
  /** Place along the length [m]. */
  y: number;
  /** Flow [L/h]. */
  flow: number;
  /** Its rate over that of a full circle with the full flow. */
  times: number;
  /** The side that it throws to across the width. */
  across: Side;
  /** The side that it throws to along the length. */
  along: Side;
}

/** Heads in equal gaps over a bed. */
export interface Stand {
  width: number;
  length: number;
  /** Spacing asked for across the width [m]. */
  spacing: number;
  /** Spacing asked for along the length [m]. */
  rowSpacing: number;
  arrangement: Arrangement;
  arcs: Arcs;
}

/** The arrangement that a person typed. */
export function parseArrangement(value: unknown): Arrangement {
  const known = ARRANGEMENTS.find((arrangement) => arrangement === value);
  if (known) return known;
  throw new InputError("arrangement", 'be "border", "inset", "centre" or "staggered"', value);
}

/** The arcs that a person typed. */
export function parseArcs(value: unknown): Arcs {
  const known = ARCS.find((arcs) => arcs === value);
  if (known) return known;
  throw new InputError("arcs", 'be "full", "matched" or "unmatched"', value);
}

/** How many heads are across the width, in the first row, and how many rows along the length. */
export function headCounts({ width, length, spacing, rowSpacing, arrangement }: Stand): [number, number] {
  const across = gapCount(width, spacing);
  const along = gapCount(length, rowSpacing);
  if (reachesBorder(arrangement)) return [across + 1, along + 1];
  return [arrangement === "centre" ? 1 : across, along];
}

/** How many heads there are in all: a shifted row has one fewer. */
export function headTotal(stand: Stand): number {
  const [across, along] = headCounts(stand);
  return across * along - (stand.arrangement === "staggered" ? Math.floor(along / 2) : 0);
}

/** Whether the outer heads of an arrangement are on the bed's edge, so that they may throw part circles. */
export function reachesBorder(arrangement: Arrangement): boolean {
  return arrangement === "border" || arrangement === "staggered";
}

/**
 * Heads of a bed.
 *
 *     border: 0, g, 2g ... size        inset: g/2, 3g/2 ...        centre: width/2; along the length as inset
 *     staggered: as border, but across the width g/2, 3g/2 ... in every second row, from the second
 *     g = size / gaps        matched arcs: q = Q c, rate as that of a full circle; unmatched: q = Q, rate 1/c times it
 *     c: part of the circle, 1/2 on an edge and 1/4 on a corner
 *
 * @param stand Bed [m], spacings [m], arrangement and arcs; part circles only where heads are on the border
 * @param flow Flow of a head that throws a full circle, Q [L/h], more than 0
 * @returns Heads, row after row along the length
 * @throws InputError if a size is not more than 0, or part circles are asked for away from the border
 * @source own reasoning; rows of a triangle: Sammis, Soils 456 chapter 5
 * @example heads({ width: 4, length: 8, spacing: 4, rowSpacing: 4, arrangement: "inset", arcs: "full" }, 9)[1].y // 6
 */
export function heads(stand: Stand, flow: number): Head[] {
  checkArcs(stand);
  const [across, along] = headCounts(stand);
  const placed: Head[] = [];
  for (let j = 0; j < along; j += 1) {
    const shifted = stand.arrangement === "staggered" && j % 2 === 1;
    const shift = shifted ? 0.5 : 0;
    for (let i = 0; i < across - 2 * shift; i += 1) placed.push(head(stand, flow, [i + shift, across], [j, along]));
  }
  return placed;
}

/** Refuses part circles where they would not face into the bed. */
export function checkArcs({ arrangement, arcs }: Pick<Stand, "arrangement" | "arcs">): void {
  if (arcs !== "full" && !reachesBorder(arrangement)) {
    throw new InputError("arcs", `be "full" where the arrangement is "${arrangement}"`, arcs);
  }
}

function head(stand: Stand, flow: number, [i, across]: [number, number], [j, along]: [number, number]): Head {
  const { width, length, arrangement, arcs } = stand;
  if (!reachesBorder(arrangement)) {
    const x = (width * (i + 0.5)) / across;
    return { x, y: (length * (j + 0.5)) / along, flow, times: 1, across: 0, along: 0 };
  }
  const x = (width * i) / (across - 1);
  const y = (length * j) / (along - 1);
  if (arcs === "full") return { x, y, flow, times: 1, across: 0, along: 0 };
  const sides = { across: inward(i, across), along: inward(j, along) };
  const part = (sides.across === 0 ? 1 : 0.5) * (sides.along === 0 ? 1 : 0.5);
  const matched = arcs === "matched";
  return { x, y, flow: matched ? flow * part : flow, times: matched ? 1 : 1 / part, ...sides };
}

function inward(i: number, count: number): Side {
  if (i === 0) return 1;
  return i === count - 1 ? -1 : 0;
}
