import type { BedPlace } from "../../core/bed/bed-heads";

/** Distance to the nearest other head that half of the heads have at most [m]; 1 for a single head. */
export function typicalSpacing(heads: readonly BedPlace[]): number {
  const nearest = heads
    .map((head) =>
      Math.min(...heads.filter((other) => other !== head).map(({ x, y }) => Math.hypot(x - head.x, y - head.y))),
    )
    .filter((distance) => Number.isFinite(distance) && distance > 0)
    .sort((one, other) => one - other);
  return nearest[Math.floor(nearest.length / 2)] ?? 1;
}
