/** A term of the product: one word for one thing. */
export interface Term {
  readonly term: string;
  readonly meaning: string;
  /** What is not said for it. */
  readonly not: readonly RegExp[];
}

const term = (name: string, meaning: string, ...not: readonly RegExp[]): Term => ({ term: name, meaning, not });

/** Start of the terms: those of the trade where it has one. */
export const GLOSSARY: readonly Term[] = [
  term("head", "a sprinkler", /\bspinners?\b/i),
  term("throw", "wetted radius: how far a head wets [m]"),
  term("spacing", "distance from head to head, or from row to row [m]", /\bheads apart\b/i),
  term("part circles", "heads that wet less than a full circle; matched: their flow is in proportion to the arc"),
  term("profile", "rate of one head against the distance from it", /\bflatter pattern\b/i),
  term("run-time multiplier", "the SC that the run time is based on"),
  term("equal weight", "every can has the same share in a figure", /\bcounts? alike\b/i, /\bcounted alike\b/i),
  term("area-weighted", "each can has a share in a figure by the area that it is for"),
  term("driest can", "the can with the lowest reading; computed for a layout: the driest cell"),
  term("depth per pulse", "water that the mix takes up before it drains [mm]", /\btake-up\b/i, /\btaken up at once\b/i),
  term("allowed hours", "irrigation window: the hours in which water may run"),
  term("uniformity", "how evenly the water falls", /\bevener\b/i),
  term("calculate", "what a formula does", /\bworked out\b/i, /\bworks out\b/i, /\breckoning\b/i),
  term("leaching fraction", "share of the water that drains from the pot"),
  term("catch can", "a can that is set out to catch the water of a test"),
];

/** What is not said anywhere, whatever is meant. */
export const NOT_SAID: readonly RegExp[] = [/\bfor want of\b/i, /\bendless\b/i, /\bgo(?:es)? by\b/i];
