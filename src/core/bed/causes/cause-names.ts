/** What may be the matter with a bed, in the order of ties. */
export const CAUSES = [
  "nothing wrong found",
  "one weak head",
  "pressure falls along the line",
  "wind",
  "pressure too low",
  "heads inside the edge",
  "one line of heads",
  "no heads in the corners",
  "heads too far apart",
] as const;

export type CauseName = (typeof CAUSES)[number];
/** What the places of the heads alone may show. */
export type MapCause = Extract<
  CauseName,
  | "nothing wrong found"
  | "heads inside the edge"
  | "one line of heads"
  | "no heads in the corners"
  | "heads too far apart"
>;
