import type { CauseName } from "../../../src/core/bed/causes/cause-names";
import type { BedInput } from "../../../src/core/bed/read-bed";

/** Faults that no cause is named after. */
export const OUTSIDE = ["two weak heads", "one strong head", "a head that does not turn"] as const;
export type Outside = (typeof OUTSIDE)[number];

/** What a bed is to be made with. */
export interface Wish {
  fault: CauseName | Outside;
  /** Cans, from and to. */
  cans: [number, number];
  arcs?: "full" | "matched" | "unmatched";
  /** Share of the cans that are not read. */
  missing?: number;
  /** Cans and heads that are elsewhere than typed, standard deviation [m]. */
  cansOff?: number;
  headsOff?: number;
  /** A second fault, put on as well. */
  also?: "one weak head" | "wind" | "pressure falls along the line";
  /** Scatter over that of the standard world. */
  harder?: number;
}

/** A simulated bed with what is known of it. */
export interface MadeBed {
  input: BedInput;
  fault: Wish["fault"];
  /** The heads at fault, from 0, in the order of the bed's heads. */
  heads: number[];
  /** Output of the weak head. */
  output: number;
  /** Way that pressure falls towards or wind carries, unit vector. */
  towards?: [number, number];
  /** What is true at the heads, for gauge, bucket and wind log. */
  truth: HeadTruth;
}

export interface HeadTruth {
  /** Flow of each head over that of a sound full circle, and its pressure over that of the maker. */
  flows: number[];
  pressures: number[];
  /** Shift by wind [parts of the throw] and its way [rad]. */
  wind: { shift: number; way: number };
  /** Way that pressure falls, from the supply. */
  falls?: [number, number];
}
