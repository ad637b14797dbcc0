import type { CanField } from "./can-field";

/** The sides of a bed as the can grid is laid out: rows from top to bottom along the length. */
export type Edge = "top" | "bottom" | "left" | "right";

const POINTS = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];
/** What to add to the bearing of the length, which runs from top to bottom, for the way that an edge faces. */
const FACES: Record<Edge, number> = { bottom: 0, left: 90, top: 180, right: 270 };

/** The edges that a can is on. */
export function edgesOf({ across, along }: CanField, row: number, column: number): Edge[] {
  const on: [Edge, boolean][] = [
    ["top", row === 0],
    ["bottom", row === along.length - 1],
    ["left", column === 0],
    ["right", column === across.length - 1],
  ];
  return on.filter(([, stands]) => stands).map(([edge]) => edge);
}

/** What an edge is called: by the compass where the bearing of the length is known [deg], else by its length. */
export function edgeName(field: CanField, edge: Edge, bearing?: number): string {
  if (bearing !== undefined) {
    const turned = (((bearing + FACES[edge]) % 360) + 360) % 360;
    return `the ${POINTS[Math.round(turned / 45) % 8]} edge`;
  }
  const [long, short] = isLong(field, edge);
  if (long === short) return "one edge";
  return long ? "one long edge" : "one short edge";
}

/** Whether an edge is one of the long ones, and whether one of the short ones; both where the bed is square. */
export function isLong({ across, along }: CanField, edge: Edge): [long: boolean, short: boolean] {
  const [width, length] = [across.at(-1)! - across[0]!, along.at(-1)! - along[0]!];
  const runsAlong = edge === "left" || edge === "right";
  return runsAlong ? [length >= width, width >= length] : [width >= length, length >= width];
}
