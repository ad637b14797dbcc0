import type { Pattern } from "./seen";

/** What a pattern often comes from, how to make sure, and what mends it. */
export interface Cause {
  likely: string;
  check: string;
  mend: string;
}

const INSET: Cause = {
  likely: "the heads are inside the bed",
  check: "measure from the bed's edge to the first heads",
  mend: "move heads to the border, with part circles that throw inwards",
};
const ONE_LINE: Cause = {
  likely: "one line of heads down the middle, or a short throw",
  check: "see whether the throw reaches the long edges",
  mend: "side lines, more throw or a flatter profile",
};
const CORNERS: Cause = {
  likely: "no quarter circles in the corners",
  check: "look which heads reach the corner cans",
  mend: "heads of 90° in the corners, or no crop there",
};
const WIND: Cause = {
  likely: "wind during the test, or weak heads on that side",
  check: "the wind log; pressure and bucket flow at the heads of that side",
  mend: "test and water at night, a windbreak; mend the heads or the pipe",
};
const WEAK_HEAD: Cause = {
  likely: "a blocked, worn or stopped head, or leaves above the cans",
  check: "bucket flow against the neighbouring heads (under 90 % is weak)",
  mend: "clean or replace the head",
};
const PRESSURE: Cause = {
  likely: "pressure too low or too high for the nozzle, or friction along the pipe",
  check: "gauge at the first and the last head (over 20 % apart is too much)",
  mend: "fewer heads a valve, larger pipe, a regulator, or the right nozzle",
};

const BY_PATTERN: Record<Pattern, Cause[]> = {
  none: [],
  "one corner": [WEAK_HEAD, CORNERS],
  corners: [CORNERS],
  "one edge": [WIND, INSET],
  "long edges": [ONE_LINE, INSET],
  "short edges": [INSET],
  edges: [INSET, ONE_LINE],
  "one place": [WEAK_HEAD],
  spread: [PRESSURE, WEAK_HEAD],
};

/** Likely causes of a pattern, likeliest first; to be checked at the heads before anything is bought. Common practice, no source. */
export function likelyCauses(pattern: Pattern): readonly Cause[] {
  return BY_PATTERN[pattern];
}
