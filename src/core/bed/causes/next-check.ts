import type { BedHead } from "../bed-heads";
import type { ReadBed } from "../read-bed";
import { type BedCauses, headsInReach, type WeighedCause } from "./causes";
import { type Measured, taken } from "./measured";

const CHECKS = {
  "nothing wrong found": "no check needed",
  "one weak head": "",
  "pressure falls along the line": "read the pressure at the first and the last head of the line",
  wind: "test again when it is calm",
  "pressure too low": "read the pressure at a head",
  "heads inside the edge": "measure from the edge of the bed to the nearest heads",
  "one line of heads": "measure the throw of a head against its distance to the edges",
  "no heads in the corners": "look which heads reach the corner cans",
  "heads too far apart": "measure the throw of a head against the distance between heads",
} as const;
/** The causes whose check tells them from any other, the plainest check first. */
const TELLING = ["pressure falls along the line", "pressure too low", "one weak head", "wind"] as const;
const SHARE_OF_DIAGONAL = 0.4142;

/** A place on the bed as it is said: across, along, to 0.1 m. */
export function placeName({ x, y }: Pick<BedHead, "x" | "y">): string {
  return `${x.toFixed(1)}, ${y.toFixed(1)} m`;
}

/** A direction on the bed, to an eighth of the circle. */
export function directionName({ x, y }: { x: number; y: number }): string {
  const flat = SHARE_OF_DIAGONAL * Math.max(Math.abs(x), Math.abs(y));
  const vertical = Math.abs(y) > flat ? (y > 0 ? "bottom" : "top") : "";
  const sideways = Math.abs(x) > flat ? (x > 0 ? "right" : "left") : "";
  return [vertical, sideways].filter(Boolean).join(" ");
}

/** Where on the bed a cause is: the head, or the direction; "" where it has no place. */
export function whereOf(bed: ReadBed, { head, towards }: WeighedCause): string {
  if (head !== undefined) return headsInReach(bed) ? `head at ${placeName(bed.heads[head]!)}` : "";
  return towards ? `towards the ${directionName(towards)}` : "";
}

/** The head nearest to another one. */
function neighbour(heads: readonly BedHead[], of: number): BedHead | undefined {
  const { x, y } = heads[of]!;
  const far = (head: BedHead) => Math.hypot(head.x - x, head.y - y);
  return heads.filter((_, k) => k !== of).sort((one, other) => far(one) - far(other))[0];
}

/** A head as it is said: its number on the map and its place. */
export function headName(head: BedHead): string {
  return `head ${head.number} at ${placeName(head)}`;
}

function bucket(one: BedHead, other: BedHead | undefined): string {
  return `bucket ${headName(one)}${other ? ` and ${headName(other)}` : ""}`;
}

/** What is to be done where the check was already made at the heads; undefined where it was not. */
function afterMeasured(
  { cause, head }: WeighedCause,
  heads: readonly BedHead[],
  measured?: Measured,
): string | undefined {
  if (!measured) return undefined;
  const gauges = taken(measured.pressures).length;
  if (cause === "one weak head" && head !== undefined && measured.flows[head] != null) {
    return `clean or replace head ${heads[head]!.number}, then test again`;
  }
  if (cause === "pressure falls along the line" && gauges > 1) {
    return "look for the loss in the pipe: its size, leaks, a valve half open";
  }
  if (cause === "pressure too low" && gauges > 0 && measured.maker) {
    return "raise the pressure, by fewer heads at once or a larger pipe, then test again";
  }
  return undefined;
}

/** The check at the heads that makes sure of a cause, or what follows where it was made. */
export function checkOf(bed: ReadBed, one: WeighedCause, measured?: Measured): string {
  const { cause, head } = one;
  const after = afterMeasured(one, bed.heads, measured);
  if (after) return after;
  if (cause !== "one weak head" || head === undefined) return CHECKS[cause];
  if (!headsInReach(bed)) return `set out 4 more cans near ${placeName(bed.heads[head]!)}`;
  return bucket(bed.heads[head]!, neighbour(bed.heads, head));
}

/** The next measurement: of the leading cause, or what tells it from the second where none is named. */
export function nextCheck({ bed, causes, doubts, second, outside, measured }: BedCauses): string {
  const [lead, other] = [causes[0]!, causes[1]!];
  if (doubts.length === 0) return checkOf(bed, lead, measured);
  if (doubts.includes("cans")) return "set out at least 16 cans";
  if (doubts.includes("measured")) return "measure at the heads again: bucket, gauge or wind log do not fit the cans";
  if (outside?.what === "can") return `read the can at ${placeName(outside.can)} again`;
  if (doubts.includes("weight")) {
    const telling = TELLING.find((cause) => cause === lead.cause || cause === other.cause);
    return checkOf(bed, lead.cause === telling ? lead : other, measured);
  }
  if (second !== undefined) {
    const one = bed.heads[lead.head ?? second]!;
    return bucket(one, lead.head === undefined ? neighbour(bed.heads, second) : bed.heads[second]!);
  }
  if (outside?.what === "heads") return bucket(bed.heads[outside.heads[0]!]!, bed.heads[outside.heads[1]!]!);
  if (outside?.what === "arcs") return "look what part of the circle each head on the edge throws";
  if (outside) return "look whether every head turns and has the same nozzle";
  return "check the places of cans and heads, then read the cans again";
}
