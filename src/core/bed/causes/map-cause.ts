import type { BedHead, BedPlace } from "../bed-heads";
import type { ReadBed } from "../read-bed";
import type { MapCause } from "./cause-names";
import { fittedAt, GROUND_SIDE, groundOf } from "./ground";
import type { Fitted } from "./setting";

/** An edge, corners or gaps are clearly under the middle where they get less than this part of it. */
const CLEARLY_UNDER = 0.85;
/** So are gaps under this part of what is caught near heads; and the driest tenth of the ground under this part of the mean. */
const GAPS_UNDER = 0.95;
const TENTH_UNDER = 0.75;
/** Heads are far apart where the throw is under this part of the spacing. */
const FAR_APART = 0.87;
/** A head this near a side [parts of the throw] is on it. */
const ON_SIDE = 0.1;
/** Heads further than this from a side [parts of the spacing] are not set inside it: some are missing. */
const HALF_A_GAP = 0.75;
/** A head this near a corner [parts of the widest gap] serves it. */
const AT_CORNER = 0.5;
/** Heads whose line is not wider than this [parts of the throw] are in one line. */
const LINE = 0.1;

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function nearest(place: BedPlace, heads: readonly BedHead[]): number {
  return Math.min(...heads.map(({ x, y }) => Math.hypot(place.x - x, place.y - y)));
}

/** The fitted rates of the places that a rule picks. */
function ratesWhere(rates: Float64Array, rule: (column: number, row: number) => boolean): number[] {
  return Array.from(rates).filter((_, i) => rule(i % GROUND_SIDE, Math.floor(i / GROUND_SIDE)));
}

const inMiddle = (i: number) => i >= GROUND_SIDE / 4 && i < (3 * GROUND_SIDE) / 4;
const LAST = GROUND_SIDE - 1;

/** Furthest that a place of the bed is from its nearest head [m]. */
function widestGap({ heads, width, length }: ReadBed): number {
  const parts = 2 * GROUND_SIDE;
  let widest = 0;
  for (let i = 0; i <= parts; i += 1) {
    for (let j = 0; j <= parts; j += 1) {
      widest = Math.max(widest, nearest({ x: (width * i) / parts, y: (length * j) / parts }, heads));
    }
  }
  return widest;
}

/** What the places of the heads and the plain fit show together. */
export function mapCause(bed: ReadBed, fitted: Fitted, throwM: number): MapCause {
  const arrangedInset = !bed.typedHeads && bed.arrangement === "inset";
  const { heads, width, length } = bed;
  const ground = groundOf(bed);
  const rates = fittedAt(bed, fitted, ground);
  const middle = mean(ratesWhere(rates, (column, row) => inMiddle(column) && inMiddle(row)));
  const under = (values: number[]) => values.length > 0 && mean(values) < CLEARLY_UNDER * middle;
  const xs = heads.map(({ x }) => x);
  const ys = heads.map(({ y }) => y);
  const spread = (values: number[]) => Math.max(...values) - Math.min(...values);
  const open = (gap: number, spacing: number) => gap > ON_SIDE * throwM && gap < HALF_A_GAP * spacing;
  const sides = [
    { open: open(Math.min(...xs), bed.spacing), rule: (column: number) => column === 0 },
    { open: open(width - Math.max(...xs), bed.spacing), rule: (column: number) => column === LAST },
    { open: open(Math.min(...ys), bed.rowSpacing), rule: (_: number, row: number) => row === 0 },
    { open: open(length - Math.max(...ys), bed.rowSpacing), rule: (_: number, row: number) => row === LAST },
  ];
  const edges = sides.map(({ rule }) => under(ratesWhere(rates, rule)));
  if (Math.min(spread(xs), spread(ys)) <= LINE * throwM && edges.some(Boolean)) {
    return arrangedInset ? "heads inside the edge" : "one line of heads";
  }
  if (sides.some((side, i) => side.open && edges[i])) return "heads inside the edge";

  const distances = ground.map((place) => nearest(place, heads));
  const furthest = Math.max(...distances);
  const widest = widestGap(bed);
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: 0, y: length },
    { x: width, y: length },
  ].filter((corner) => nearest(corner, heads) > AT_CORNER * widest);
  const near = GROUND_SIDE / 12;
  const inCorner =
    ({ x, y }: BedPlace) =>
    (column: number, row: number) =>
      (x === 0 ? column < near : column > LAST - near) && (y === 0 ? row < near : row > LAST - near);
  if (corners.length > 1 && under(corners.flatMap((corner) => ratesWhere(rates, inCorner(corner))))) {
    return "no heads in the corners";
  }
  const square = Math.SQRT2 * widest;
  const apart = Math.min(1.15 * square, Math.max(square, bed.spacing, bed.rowSpacing));
  if (throwM < FAR_APART * apart) {
    const far = mean(Array.from(rates).filter((_, i) => distances[i]! > 0.85 * furthest));
    const close = mean(Array.from(rates).filter((_, i) => distances[i]! < 0.3 * widest));
    const driest = mean(
      Array.from(rates)
        .sort((one, other) => one - other)
        .slice(0, rates.length / 10),
    );
    if (far < GAPS_UNDER * close || driest < TENTH_UNDER * mean(Array.from(rates))) return "heads too far apart";
  }
  return "nothing wrong found";
}
