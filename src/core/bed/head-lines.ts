import { InputError } from "../errors";
import { heads as headsOf, type Stand } from "../layout/heads";
import { lineOfHead, type TypedHead } from "./bed-heads";

/** What was typed of a head, in the line of its number; null where blank. */
export interface HeadLine {
  /** From the left edge [m]. */
  across: number | null;
  /** From the top edge [m]. */
  along: number | null;
  /** Part of the circle that it throws [deg], 360 for all of it; 0: there is no head. */
  arc: number | null;
  /** Where that part faces [deg]: 0 towards the right, 90 the bottom. */
  faces: number | null;
}

function placeOf({ across, along }: HeadLine, number: number): { x: number; y: number } | undefined {
  if (across !== null && along !== null) return { x: across, y: along };
  if (across === null && along === null) return undefined;
  throw new InputError("heads", "have both across and along, or neither", across ?? along, {
    place: lineOfHead(number),
  });
}

function throwOf({ arc, faces }: HeadLine, number: number): Pick<TypedHead, "arc" | "faces"> {
  if (arc === null) return {};
  if (!(arc >= 0 && arc <= 360)) {
    throw new InputError("heads", "have an arc from 0 to 360 deg", arc, { place: lineOfHead(number) });
  }
  if (arc < 360 && faces === null) {
    throw new InputError("heads", "face a way where the arc is under 360 deg", arc, { place: lineOfHead(number) });
  }
  return { arc, faces: faces ?? 0 };
}

/**
 * Heads of a bed by the lines that were typed: each line is the head of its number.
 *
 *     place: as typed, else that of the head with this number in the layout; arc of 0: no head
 *
 * @param lines What was typed, in the order of the numbers
 * @param stand Layout of the heads; left out where only typed places have heads
 * @returns The heads with their numbers
 * @throws InputError if a line has one of across and along, or a part circle faces no way
 * @source own reasoning
 * @example headsOfLines([{ across: 1, along: 2, arc: null, faces: null }]) // [{ x: 1, y: 2, number: 1 }]
 */
export function headsOfLines(lines: readonly HeadLine[], stand?: Stand): TypedHead[] {
  const laidOut = stand ? headsOf({ ...stand, arcs: "full" }, 1) : [];
  return Array.from({ length: Math.max(lines.length, laidOut.length) }, (_, index) => index + 1).flatMap((number) => {
    const line = lines[number - 1];
    const laid = laidOut[number - 1];
    const place = (line && placeOf(line, number)) ?? (laid && { x: laid.x, y: laid.y });
    if (!place || line?.arc === 0) return [];
    return [{ ...place, number, ...(line && throwOf(line, number)) }];
  });
}
