import type { RegisteredAudit } from "./registered-audit";

/** Classes of the mean wind of a test [m/s]: up to this; the last one has no end. */
export const WIND_CLASSES = ["up to 2.2 m/s", "up to 4 m/s", "over 4 m/s"] as const;
const WIND_ENDS_MS = [2.2, 4];

/** The kinds of SC that can be compared, since their name says all about them. */
export const COMPARED_KINDS = ["driest can", "low quarter"] as const;
export const SHARE_KIND = "share of pots";

/** Said of two audits of one basis. */
export const SAME_BASIS = "same basis";

/** Why two audits may not be compared; what differs follows. */
export const WHY_NOT = {
  grid: "different grid",
  gridUnknown: "the grid of one of the tests is not known",
  cans: "different number of cans read",
  cansUnknown: "the cans read in one of the tests are not known",
  wind: "different wind class",
  windUnknown: "the wind of one of the tests is not known",
  kind: "different SC kind",
  kindUnknown: "the SC kind of one of the tests is not known",
  share: "an SC for a share of pots is not compared: the share may differ",
} as const;

/**
 * Class of the mean wind of a test.
 *
 * @param wind Mean wind [m/s], 0 or more
 * @returns One of WIND_CLASSES; an end belongs to the class below it
 * @source Irrigation Association, Recommended Audit Guidelines (2009): test at or under 2.2 m/s; Yacoubi and others (2012):
 * stop above 4 m/s
 * @example windClass(2.2) // "up to 2.2 m/s"
 */
export function windClass(wind: number): (typeof WIND_CLASSES)[number] {
  const place = WIND_ENDS_MS.findIndex((end) => wind <= end);
  return WIND_CLASSES[place < 0 ? WIND_ENDS_MS.length : place]!;
}

const plainGrid = (grid: string) => grid.replaceAll(" ", "").replaceAll("×", "x").toLowerCase();
const both = (why: string, one: unknown, other: unknown) => `${why}: ${one} and ${other}`;

/**
 * Whether two audits of a block are on the same basis, so that their figures can be compared.
 *
 * The grid of cans, the cans read, the class of the wind and the kind of SC must be known and the same: the SC of the
 * driest can grows with the number of cans, wind pushes the pattern, and kinds of SC are different measures.
 *
 * @param earlier The one before
 * @param later The one after
 * @returns SAME_BASIS, or why they may not be compared, in words
 * @source own reasoning
 */
export function basis(earlier: RegisteredAudit, later: RegisteredAudit): string {
  if (earlier.grid === null || later.grid === null) return WHY_NOT.gridUnknown;
  if (plainGrid(earlier.grid) !== plainGrid(later.grid)) return both(WHY_NOT.grid, earlier.grid, later.grid);
  if (earlier.cans === null || later.cans === null) return WHY_NOT.cansUnknown;
  if (earlier.cans !== later.cans) return both(WHY_NOT.cans, earlier.cans, later.cans);
  if (earlier.wind === null || later.wind === null) return WHY_NOT.windUnknown;
  if (earlier.wind !== later.wind) return both(WHY_NOT.wind, earlier.wind, later.wind);
  if (earlier.kind === null || later.kind === null) return WHY_NOT.kindUnknown;
  if (earlier.kind !== later.kind) return both(WHY_NOT.kind, earlier.kind, later.kind);
  return later.kind === SHARE_KIND ? WHY_NOT.share : SAME_BASIS;
}
