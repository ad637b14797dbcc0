import type { BedHead, BedPlace } from "./bed-heads";
import { type Shape, shapeAt } from "./shapes";

/** How the shift by wind grows from the head to the end of the throw: equal, growing, growing steeply, or largest for the fine drops near it. */
export const DRIFTS = [
  { at: () => 1, slope: () => 0 },
  { at: (u: number) => 0.3 + 0.9 * u, slope: () => 0.9 },
  { at: (u: number) => 0.1 + 1.1 * u * u, slope: (u: number) => 2.2 * u },
  { at: (u: number) => 1.4 - 0.8 * u, slope: () => -0.8 },
] as const;

/** Water that is carried off: the shift in parts of the throw, and how it grows. */
export interface Wind {
  x: number;
  y: number;
  drift: number;
}

/** What each head does: its output over that of a sound one, and its throw. */
export interface HeadState {
  outputs: ArrayLike<number>;
  /** [m] */
  throws: ArrayLike<number>;
  wind?: Wind;
}

/** Slack of an angle [cosine], so that a can on the straight line of a half circle is wetted. */
const SLACK = 1e-9;
/** Least stretch of the ground by drift; keeps the rate finite where the law folds over. */
const LEAST_STRETCH = 0.3;

/** Where a drop at a place came down without wind, from its head, over the throw; and its rate over that there. */
export interface Origin {
  u: number;
  share: number;
}

/** Origin of the water that one head brings to a place; share 0 where it brings none. */
export function originOf(head: BedHead, throwM: number, place: BedPlace, wind: Wind | undefined, into: Origin): void {
  let dx = (place.x - head.x) / throwM;
  let dy = (place.y - head.y) / throwM;
  into.share = 0;
  let stretch = 1;
  if (wind) {
    const [px, py] = [dx, dy];
    const drift = DRIFTS[wind.drift]!;
    let far = 1;
    for (let turn = 0; turn < (wind.drift === 0 ? 1 : 4); turn += 1) {
      dx = px - wind.x * far;
      dy = py - wind.y * far;
      far = drift.at(Math.min(1, Math.sqrt(dx * dx + dy * dy)));
    }
    const r = Math.sqrt(dx * dx + dy * dy);
    if (r > 0) stretch = Math.max(LEAST_STRETCH, 1 + (drift.slope(Math.min(1, r)) * (wind.x * dx + wind.y * dy)) / r);
  }
  const square = dx * dx + dy * dy;
  if (!(square < 1)) return;
  const u = Math.sqrt(square);
  if (head.arc < 360 && u > 0) {
    const turned = (head.faces * Math.PI) / 180;
    const along = (dx * Math.cos(turned) + dy * Math.sin(turned)) / u;
    if (along < Math.cos((head.arc * Math.PI) / 360) - SLACK) return;
  }
  into.u = u;
  into.share = head.times / (throwM * throwM * stretch);
}

/**
 * Overlap of the heads at places of a bed, one column a shape.
 *
 *     c(place) = sum over heads of output times p(u) / R²        u: distance over throw; R: throw; p: shape
 */
export function overlapColumns(
  heads: readonly BedHead[],
  places: readonly BedPlace[],
  { outputs, throws, wind }: HeadState,
  shapes: readonly Shape[],
): Float64Array[] {
  const columns = shapes.map(() => new Float64Array(places.length));
  const origin: Origin = { u: 0, share: 0 };
  heads.forEach((head, k) => {
    const output = outputs[k] as number;
    const throwM = throws[k] as number;
    if (output === 0) return;
    for (let i = 0; i < places.length; i += 1) {
      originOf(head, throwM, places[i]!, wind, origin);
      if (origin.share === 0) continue;
      const scale = output * origin.share;
      for (let s = 0; s < shapes.length; s += 1) {
        columns[s]![i] = (columns[s]![i] as number) + scale * shapeAt(shapes[s]!, origin.u);
      }
    }
  });
  return columns;
}
