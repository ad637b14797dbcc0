import { positive } from "../checks";
import { InputError } from "../errors";
import { type Cells, cellsOfBed } from "./cells";
import { checkArcs, type Head, headCounts, heads, headTotal, type Stand } from "./heads";
import { type Coverage, overlap } from "./overlap";
import type { Profile } from "./profile";

/** Cells that all heads together may wet, counted once a head. */
const MOST_WETTED = 100_000_000;
/** Cells that a throw may be long. */
const FINEST = 1000;

/** A layout: where heads are, what each throws, and how finely the bed is cut. */
export interface Plan extends Stand {
  profile: Profile;
  /** Side of a cell that is asked for [m]. */
  cell: number;
}

/** A plan's heads and what they bring. */
export interface PlannedCoverage extends Coverage {
  heads: Head[];
}

/**
 * Coverage of a layout.
 *
 *     the heads of the plan, then their overlap
 *
 * @param plan Bed [m], spacings [m], arrangement, arcs, profile and cell [m]
 * @returns Heads, rates [mm/h] and water inside and outside [L/h]
 * @throws InputError before any work if a number is not more than 0, the cell is longer than the throw, or there would be
 * too many cells or heads
 * @source own reasoning
 * @example coverage({ width: 4, length: 4, spacing: 4, rowSpacing: 4, arrangement: "border", arcs: "full",
 *   profile: namedProfile("triangular", 4, 400), cell: 0.5 }).heads.length // 4
 */
export function coverage(plan: Plan): PlannedCoverage {
  const cells = checkedCells(plan);
  const placed = heads(plan, plan.profile.flow);
  return { heads: placed, ...overlap(cells, placed, plan.profile) };
}

/** The cells of a plan that is not too much work. */
export function checkedCells(plan: Plan): Cells {
  const { width, length, spacing, rowSpacing, profile, cell } = plan;
  positive("width", width, "m");
  positive("length", length, "m");
  positive("spacing", spacing, "m");
  positive("row_spacing", rowSpacing, "m");
  checkArcs(plan);
  const cells = cellsOfBed(width, length, cell);
  const reach = profile.distances[profile.distances.length - 1] as number;
  if (!(Math.min(cell, Math.max(cells.cellWidth, cells.cellLength)) <= reach)) {
    throw new InputError("cell", `be at most the throw, ${reach} m`, cell);
  }
  if (!(Math.min(cells.cellWidth, cells.cellLength) * FINEST >= reach)) {
    throw new InputError("cell", `be at least a thousandth of the throw, ${reach / FINEST} m`, cell);
  }
  const wetted = (1 + (2 * reach) / cells.cellWidth) * (1 + (2 * reach) / cells.cellLength);
  if (!(headTotal(plan) * wetted <= MOST_WETTED)) {
    const rule = "be larger, the spacing wider or the throw shorter (at most 1e8 wetted cells over all heads)";
    throw new InputError("cell", rule, cell);
  }
  return cells;
}

/** What a person should know of a plan that is allowed; "" where there is nothing. */
export function caution({ width, length, spacing, rowSpacing, profile, ...stand }: Plan): string {
  const [across, along] = headCounts({ ...stand, arrangement: "inset", width, length, spacing, rowSpacing });
  const gap = Math.max(stand.arrangement === "centre" ? 0 : width / across, length / along);
  const reach = profile.distances[profile.distances.length - 1] as number;
  return reach < gap / 2 ? `the throw, ${reach} m, is shorter than half the head spacing, ${gap / 2} m` : "";
}
