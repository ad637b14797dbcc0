import { InputError } from "../errors";
import { mean } from "../readings";
import { type CanField, ratesRead } from "./can-field";
import { type Edge, edgeName, edgesOf, isLong } from "./edges";
import { partsOfBed } from "./parts-of-bed";

/** Share of the mean under which a can counts as dry here. */
const DRY_SHARE = 0.75;
const FEWEST_A_SIDE = 3;

/** Where the dry cans of a bed are. */
export type Pattern =
  | "none"
  | "one corner"
  | "corners"
  | "one edge"
  | "long edges"
  | "short edges"
  | "edges"
  | "one place"
  | "spread";

export interface Seen {
  pattern: Pattern;
  /** Cans under three quarters of the mean. */
  dry: number;
  /** Cans that were read. */
  cans: number;
  sentence: string;
}

interface Can {
  row: number;
  column: number;
  edges: Edge[];
}

function dryCans(field: CanField, m: number): Can[] {
  return field.rates.flatMap((line, row) =>
    line.flatMap((rate, column) =>
      rate !== null && rate < DRY_SHARE * m ? [{ row, column, edges: edgesOf(field, row, column) }] : [],
    ),
  );
}

/** Whether one can walk from each to each by cans that touch, corners included. */
function touching(cans: readonly Can[]): boolean {
  const left = new Set(cans.slice(1));
  const reached = [cans[0]!];
  for (const can of reached) {
    for (const other of left) {
      if (Math.abs(other.row - can.row) > 1 || Math.abs(other.column - can.column) > 1) continue;
      left.delete(other);
      reached.push(other);
    }
  }
  return left.size === 0;
}

function patternOf(field: CanField, cans: readonly Can[]): Pattern {
  if (cans.length === 0) return "none";
  const all = (rule: (can: Can) => boolean) => cans.every(rule);
  if (field.across.length >= FEWEST_A_SIDE && field.along.length >= FEWEST_A_SIDE) {
    if (all(({ edges }) => edges.length === 2)) return cans.length === 1 ? "one corner" : "corners";
    if (sharedEdge(cans)) return "one edge";
    if (all(({ edges }) => edges.some((edge) => isLong(field, edge)[0] && !isLong(field, edge)[1])))
      return "long edges";
    if (all(({ edges }) => edges.some((edge) => isLong(field, edge)[1] && !isLong(field, edge)[0])))
      return "short edges";
    if (all(({ edges }) => edges.length > 0)) return "edges";
  }
  return touching(cans) ? "one place" : "spread";
}

function sharedEdge(cans: readonly Can[]): Edge | undefined {
  return (["top", "bottom", "left", "right"] as const).find((edge) => cans.every(({ edges }) => edges.includes(edge)));
}

function where(field: CanField, cans: readonly Can[], pattern: Pattern, bearing: number | undefined): string {
  const all = cans.length > 1 ? "all " : "";
  switch (pattern) {
    case "one edge":
      return `${all}on ${edgeName(field, sharedEdge(cans)!, bearing)}`;
    case "one corner":
      return "in one corner";
    case "corners":
      return "all in the corners";
    case "long edges":
      return "all on the long edges";
    case "short edges":
      return "all on the short edges";
    case "edges":
      return "all on the edges";
    case "one place":
      return cans.length > 1 ? "all in one place inside the bed" : "inside the bed";
    default:
      return `${cans.filter(({ edges }) => edges.length > 0).length} of them on the edges`;
  }
}

/**
 * What is seen on a coverage map, in sentences: edges against the middle, one half against the other, then dry cans.
 *
 *     a can is dry where r < 3/4 m        r: its rate; m: mean of the bed
 *
 * @param field Cans of a bed
 * @param bearing Compass bearing of its length, from the first row to the last [deg]; left out where it is not known
 * @param average Mean of the bed, m [unit of the rates], more than 0; left out: that of the cans read
 * @returns The dry cans, their pattern, and both in words
 * @throws InputError if the bearing is not from 0 to 360, or fewer than 2 cans were read
 * @source own rule, the patterns and their causes from memory
 * @example seen({ across: [0, 1, 2], along: [0, 1, 2], rates: [[1, 9, 9], [9, 9, 9], [9, 9, 9]] }).pattern // "one corner"
 */
export function seen(field: CanField, bearing?: number, average?: number): Seen {
  if (bearing !== undefined && !(bearing >= 0 && bearing <= 360)) {
    throw new InputError("bearing", "be from 0 to 360 deg", bearing);
  }
  const rates = ratesRead(field);
  const ofCans = mean(rates, 2);
  const dry = dryCans(field, average ?? ofCans);
  const pattern = patternOf(field, dry);
  const facts = { pattern, dry: dry.length, cans: rates.length };
  const parts = partsOfBed(field);
  if (pattern === "none") return { ...facts, sentence: `${parts}No can gets under three quarters of the mean.` };
  const gets = dry.length === 1 ? "gets" : "get";
  const sentence = `${parts}${dry.length} of ${rates.length} cans ${gets} under three quarters of the mean, ${where(field, dry, pattern, bearing)}.`;
  return { ...facts, sentence };
}
