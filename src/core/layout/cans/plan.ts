import { positive } from "../../checks";
import { InputError } from "../../errors";
import { MOST_ACROSS, MOST_ALONG } from "../../pattern/can-field";
import { meetsHeads } from "./spacing";

const FEWEST_CANS = 24;
/** Lines of cans each way, so that one is inside the edges. */
const FEWEST_LINES = 3;
const WIDEST_M = 3;
const NARROWEST_M = 0.2;
const DEFAULT_EDGE_M = 0.3;
const SLACK = 1e-9;

/** A direction of the bed: how its sizes are called, and the most cans that are along it. */
interface Direction {
  side: string;
  heads: string;
  most: number;
}

const ACROSS: Direction = { side: "width", heads: "head_spacing", most: MOST_ACROSS };
const ALONG: Direction = { side: "length", heads: "head_row_spacing", most: MOST_ALONG };

/** A bed on which cans are set out. */
export interface CanBed {
  /** Width and length of the bed [m]. */
  width: number;
  length: number;
  /** Distance between heads across the width [m]; null where they are in one line along the length. */
  headSpacing: number | null;
  /** Distance between heads along the length [m]; null where there is one. */
  headRowSpacing: number | null;
  /** From the edge of the bed to the outer cans [m]; 0.3 where nothing is said. */
  edge?: number;
}

/** Cans in straight lines over a bed, the outer ones near its edges and corners. */
export interface CanPlan {
  width: number;
  length: number;
  /** Places across the width [m], from one edge. */
  across: number[];
  /** Places along the length [m], from one end. */
  along: number[];
  count: number;
  /** Distance between cans across the width [m]. */
  spacing: number;
  /** Distance between cans along the length [m]. */
  rowSpacing: number;
  /** What could not be kept, in words. */
  warnings: string[];
}

/** One of the ways to divide a side. */
interface Line {
  cans: number;
  spacing: number;
}

/**
 * Plan of the cans for a test.
 *
 *     e, e + s, e + 2 s ... size - e each way        e: edge; s = (size - 2 e) / (n - 1); n: cans in the line
 *
 * At least 24 cans, 3 to 20 across and 3 to 30 along, at most 3 m apart, and s not near a half or the whole of the head
 * spacing; of all such plans that with the fewest cans, then with the squarest. On a bed too large for it the cans are
 * further apart, and the warnings say so.
 *
 * @param bed Bed [m], head spacings [m] and edge [m]
 * @returns Places, number of cans, spacings [m] and warnings
 * @throws InputError if a size is not more than 0, or the edge not less than half of a side
 * @source Landscape Management, How to do an irrigation audit: 24 or more cans, 0.3 to 0.6 m inside the edge; University of
 * Maryland, nursery irrigation course, 4.3: at most 3 m apart
 * @example canPlan({ width: 8.6, length: 8.6, headSpacing: 5, headRowSpacing: 5 }).count // 25
 */
export function canPlan({ width, length, headSpacing, headRowSpacing, edge = DEFAULT_EDGE_M }: CanBed): CanPlan {
  positive("edge", edge, "m");
  const acrossLines = lines(width, headSpacing, edge, ACROSS);
  const alongLines = lines(length, headRowSpacing, edge, ALONG);
  const [across, along] = best(acrossLines, alongLines);
  const warnings = [apart(across.spacing, "across the width"), apart(along.spacing, "along the length")];
  return {
    width,
    length,
    across: places(across, edge),
    along: places(along, edge),
    count: across.cans * along.cans,
    spacing: across.spacing,
    rowSpacing: along.spacing,
    warnings: warnings.filter((warning) => warning !== ""),
  };
}

/** The divisions of a side that keep clear of the heads, and where one can, at most 3 m apart. */
function lines(size: number, headSpacing: number | null, edge: number, { side, heads, most }: Direction): Line[] {
  const inner = positive(side, size, "m") - 2 * edge;
  if (!(inner > 0)) throw new InputError("edge", `be less than half the ${side}, ${size / 2} m`, edge);
  if (headSpacing !== null) positive(heads, headSpacing, "m");
  const all = Array.from({ length: most - FEWEST_LINES + 1 }, (_, i) => {
    const cans = FEWEST_LINES + i;
    return { cans, spacing: inner / (cans - 1) };
  });
  const clear = headSpacing === null ? all : all.filter(({ spacing }) => !meetsHeads(spacing, headSpacing));
  const near = clear.filter(({ spacing }) => spacing <= WIDEST_M + SLACK);
  return near.length > 0 ? near : clear.slice(-1);
}

function best(acrossLines: Line[], alongLines: Line[]): [Line, Line] {
  const pairs = acrossLines.flatMap((across) => alongLines.map((along): [Line, Line] => [across, along]));
  const enough = pairs.filter(([across, along]) => across.cans * along.cans >= FEWEST_CANS);
  return enough.reduce((best, pair) => (worth(pair) < worth(best) ? pair : best));
}

/** Fewer cans first, then squarer: the ratio of the spacings adds less than a can. */
function worth([across, along]: [Line, Line]): number {
  const [short, long] = [across.spacing, along.spacing].sort((a, b) => a - b) as [number, number];
  return across.cans * along.cans + 1 - short / long;
}

function places({ cans, spacing }: Line, edge: number): number[] {
  return Array.from({ length: cans }, (_, i) => edge + i * spacing);
}

function apart(spacing: number, where: string): string {
  const stand = `cans are ${spacing.toFixed(2)} m apart ${where}`;
  if (spacing > WIDEST_M + SLACK) return `${stand}, more than 3 m: measure the bed in parts for a closer look`;
  return spacing < NARROWEST_M ? `${stand}, hardly more than a can: leave out the lines between` : "";
}
