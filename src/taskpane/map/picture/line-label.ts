import type { Band } from "./class-bands";

/** A place of a map [m]. */
type Place = readonly [x: number, y: number];

/** Lines shorter than this many points have no room for a label. */
const FEWEST_POINTS = 6;

/** The point of a band's edge that lies farthest from other marks and from where the ground ends; null where there is none. */
export function labelPlace(
  { rings }: Band,
  ground: readonly { x: number; y: number; width: number; length: number }[],
  marks: readonly Place[],
): Place | null {
  let best: Place | null = null;
  let room = 0;
  for (const ring of rings) {
    if (ring.length < FEWEST_POINTS) continue;
    for (const point of ring) {
      const free = Math.min(
        edgeDistance(point, ground),
        ...marks.map(([x, y]) => Math.hypot(x - point[0], y - point[1])),
      );
      if (free > room) [best, room] = [point, free];
    }
  }
  return best;
}

/** How far inside its ground a point lies [m]; below 0 outside. */
function edgeDistance(
  [x, y]: Place,
  ground: readonly { x: number; y: number; width: number; length: number }[],
): number {
  const left = Math.min(...ground.map((part) => part.x));
  const top = Math.min(...ground.map((part) => part.y));
  const right = Math.max(...ground.map((part) => part.x + part.width));
  const bottom = Math.max(...ground.map((part) => part.y + part.length));
  const covered = ground.some(
    (part) => x >= part.x && x <= part.x + part.width && y >= part.y && y <= part.y + part.length,
  );
  return covered ? Math.min(x - left, right - x, y - top, bottom - y) : -1;
}
