/** A term of the product: one word for one thing. */
export interface Term {
  readonly term: string;
  readonly meaning: string;
  /** What is not said for it. */
  readonly not: readonly RegExp[];
}

const term = <Name extends string>(name: Name, meaning: string, ...not: readonly RegExp[]) => ({
  term: name,
  meaning,
  not,
});

/** Start of the terms: those of the trade where it has one. */
export const GLOSSARY = [
  term("application rate", "depth of the water that falls in an hour [mm/h]"),
  term("CU", "coefficient of uniformity: 100 % where all cans are equal, lower the further they are from their mean"),
  term("DU", "distribution uniformity: what the driest quarter gets, in % of the mean"),
  term(
    "SC",
    "scheduling coefficient: run so many times as long as for the mean, and the driest can (or quarter) gets its depth",
  ),
  term("head", "a sprinkler", /\bspinners?\b/i),
  term("throw", "wetted radius: how far a head wets"),
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
] as const satisfies readonly Term[];

export type TermName = (typeof GLOSSARY)[number]["term"];

/** What a term means, in a line. */
export const meaningOf = (name: TermName): string => GLOSSARY.find(({ term }) => term === name)!.meaning;

/** What is not said anywhere, whatever is meant. */
export const NOT_SAID: readonly RegExp[] = [/\bfor want of\b/i, /\bendless\b/i, /\bgo(?:es)? by\b/i];
