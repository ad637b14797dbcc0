import type { Plan } from "../../core/layout/coverage";
import { gapCount } from "../../core/layout/gaps";
import { reachesBorder } from "../../core/layout/heads";
import { figure } from "../parts/figure";

const ARRANGEMENTS = { border: "border", inset: "inset", centre: "centre line", staggered: "staggered" } as const;
const ARCS = { full: "full circles", matched: "matched arcs", unmatched: "unmatched arcs" } as const;

/** A layout in a few words: `border, matched arcs, 4.00 × 3.75 m`. */
export function layoutName(plan: Plan): string {
  const { arrangement, arcs, width, length, spacing, rowSpacing } = plan;
  const [across, along] = [width / gapCount(width, spacing), length / gapCount(length, rowSpacing)];
  const gaps = arrangement === "centre" ? `${figure(along)} m` : `${figure(across)} × ${figure(along)} m`;
  const kind = reachesBorder(arrangement) ? `, ${ARCS[arcs]}` : "";
  return `${ARRANGEMENTS[arrangement]}${kind}, ${gaps}`;
}
