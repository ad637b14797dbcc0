import type { Arcs, Arrangement } from "../../core/layout/heads";
import type { ShapeName } from "../../core/layout/profile";

export type Shape = ShapeName | "measured";

/** A layout as it is typed. */
export interface LayoutEntries {
  /** Bed [m]. */
  width: string;
  length: string;
  /** Heads across the width and along the length [m]. */
  spacing: string;
  rowSpacing: string;
  arrangement: Arrangement;
  arcs: Arcs;
  /** Throw [m]. */
  radius: string;
  /** Flow of a full circle [L/h]. */
  flow: string;
  /** Pressure of that flow, and at the heads [kPa]; both blank where they are the same. */
  statedPressure: string;
  pressure: string;
  shape: Shape;
  /** A distance [m] and a rate a line, where the shape is measured. */
  profile: string;
  /** Side of a cell [m]. */
  cell: string;
  /** Net depth [mm] and flow of the pump [L/h], for run time and load; blank where not wanted. */
  depth: string;
  pump: string;
}

/** What the planner opens with where the workbook says nothing. */
export const FIRST_LAYOUT: LayoutEntries = {
  width: "12",
  length: "30",
  spacing: "4",
  rowSpacing: "4",
  arrangement: "border",
  arcs: "matched",
  radius: "4",
  flow: "160",
  statedPressure: "",
  pressure: "",
  shape: "triangular",
  profile: "",
  cell: "0.25",
  depth: "10",
  pump: "",
};

/** The words of the layouts, for lists and tables. */
export const ARRANGEMENT_WORDS: Record<Arrangement, string> = {
  border: "on the border",
  inset: "half a spacing inside",
  centre: "one middle line",
  staggered: "border, staggered",
};
export const ARCS_WORDS: Record<Arcs, string> = {
  full: "full circles",
  matched: "part circles, matched",
  unmatched: "part circles, unmatched",
};
export const SHAPE_WORDS: Record<Shape, string> = {
  triangular: "triangular",
  uniform: "uniform",
  ring: "ring",
  measured: "measured",
};
/** What a choice means, beside it. */
export const CHOICE_HINTS: Record<Shape | Arcs | Arrangement, string> = {
  triangular: "most at the head",
  uniform: "the same all over",
  ring: "most at 0.7 of the throw",
  measured: "along a line of cans",
  full: "",
  matched: "flow in proportion to the part",
  unmatched: "full flow from each",
  border: "",
  inset: "",
  centre: "",
  staggered: "every second row shifted half a spacing",
};
