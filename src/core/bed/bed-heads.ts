import { InputError } from "../errors";
import { type Arcs, heads as headsOf, type Side, type Stand } from "../layout/heads";

/** A head this near an edge [m] is on it. */
const ON_EDGE_M = 0.05;
/** Most heads of a bed that is read. */
export const MOST_HEADS = 200;

/** A place on the bed or near it. */
export interface BedPlace {
  /** From the left edge [m]. */
  x: number;
  /** From the top edge [m]. */
  y: number;
}

/** A head as it was typed: its part circle follows its place where it is left out, its number the order. */
export interface TypedHead extends BedPlace {
  arc?: number;
  faces?: number;
  number?: number;
}

/** A head of a bed that is read. */
export interface BedHead extends BedPlace {
  /** Its number on the map, from 1. */
  number: number;
  /** Part of the circle that it throws [deg], 360 for all of it. */
  arc: number;
  /** Where the middle of that part faces [deg]: 0 towards the right, 90 the bottom, 180 the left, 270 the top; 0 for a full circle. */
  faces: number;
  /** Rate in its part over that of a full circle: 1, or 360/arc where a part circle has the nozzle of a full one. */
  times: number;
}

/** Where a head was typed, as an error says it. */
export function lineOfHead(number: number): string {
  return `the line of head ${number}`;
}

type Throw = Pick<BedHead, "arc" | "faces" | "times">;

function thrown(arc: number, faces: number, arcs: Arcs): Throw {
  return { arc, faces, times: arcs === "unmatched" ? 360 / arc : 1 };
}

function partCircle(across: Side, along: Side, arcs: Arcs): Throw {
  const arc = (across === 0 ? 360 : 180) * (along === 0 ? 1 : 0.5);
  const faces = arc === 360 ? 0 : (Math.atan2(along, across) * 180) / Math.PI;
  return thrown(arc, (faces + 360) % 360, arcs);
}

function inward(place: number, size: number): Side {
  if (Math.abs(place) <= ON_EDGE_M) return 1;
  return Math.abs(place - size) <= ON_EDGE_M ? -1 : 0;
}

/** What a head throws that has a matched part circle facing the bed where it is on an edge. */
export function facingBed({ x, y }: BedPlace, { width, length }: { width: number; length: number }): Throw {
  return partCircle(inward(x, width), inward(y, length), "matched");
}

/**
 * Heads of a bed that is read, of its arrangement or at the places that were typed.
 *
 *     arrangement: as in a layout, gaps at most 5 % wider than the spacing
 *     typed: the arc that was typed, else a part circle that faces the bed where arcs are cut and the head is within 0.05 m
 *     of an edge
 *
 * @param stand Bed [m], spacings [m], arrangement and arcs
 * @param places Places of the heads, instead of the arrangement; left out: as arranged
 * @returns Heads in the order typed, or row after row along the length
 * @throws InputError if part circles are asked for away from the border, or there are more than 200 heads
 * @source own reasoning
 * @example bedHeads({ width: 4, length: 8, spacing: 4, rowSpacing: 4, arrangement: "border", arcs: "matched" })[2]
 *   // { x: 0, y: 4, number: 3, arc: 180, faces: 0, times: 1 }
 */
export function bedHeads(stand: Stand, places?: readonly TypedHead[]): BedHead[] {
  const { width, length, arcs } = stand;
  if (places) {
    if (places.length > MOST_HEADS) throw new InputError("heads", `be at most ${MOST_HEADS}`, places.length);
    return places.map(({ x, y, number, arc, faces }, index) => ({
      ...{ x, y, number: number ?? index + 1 },
      ...(arc !== undefined
        ? thrown(arc, faces ?? 0, arcs)
        : arcs === "full"
          ? partCircle(0, 0, arcs)
          : partCircle(inward(x, width), inward(y, length), arcs)),
    }));
  }
  if (!((width / stand.spacing + 1) * (length / stand.rowSpacing + 1) <= 2 * MOST_HEADS)) tooMany(stand);
  const placed = headsOf(stand, 1);
  if (placed.length > MOST_HEADS) tooMany(stand);
  return placed.map(({ x, y, across, along }, index) => ({
    ...{ x, y, number: index + 1 },
    ...partCircle(across, along, arcs),
  }));
}

function tooMany({ spacing }: Stand): never {
  throw new InputError("spacing", `be wider (at most ${MOST_HEADS} heads)`, spacing);
}
