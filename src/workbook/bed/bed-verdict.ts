import { type BedCauses, causes, type Doubt, headsInReach } from "../../core/bed/causes/causes";
import { measuredWords } from "../../core/bed/causes/measured-words";
import { headName, nextCheck, placeName, whereOf } from "../../core/bed/causes/next-check";
import { type BedInput, readBed } from "../../core/bed/read-bed";
import { capital } from "../form/capital";
import type { WorkbookBed } from "./bed-of-workbook";
import { insideWords } from "./outer-heads";
import { weightWords } from "./weight-words";

/** A head that is marked on the map. */
export interface MarkedHead {
  x: number;
  y: number;
  number: number;
}

/** What the cans and the heads of a bed say together, in words. */
export interface BedVerdict {
  /** The cause with its weight, or that none can be told. */
  sentence: string;
  /** The next check at the bed. */
  next: string;
  /** What was measured at the heads and used; "" for nothing. */
  measured: string;
  /** Causes of 5 % or more, with where they are. */
  likely: string[];
  /** The head in question. */
  head?: MarkedHead;
  /** The leading cause; certain where no doubt is left. */
  lead: { cause: string; where: string; weight: number; certain: boolean };
}

/** The cans of a bed, laid out as in it. */
export type BedCans = Pick<BedInput, "grid" | "across" | "along">;

/** Causes that weigh less [%] are not listed. */
const LISTED = 5;
const WHY: Readonly<Record<Exclude<Doubt, "outside">, string>> = {
  cans: "fewer than 16 cans",
  weight: "no cause reaches 60 %",
  rest: "the cans differ from every fit by more than reading error",
  "second fault": "a second head looks weak",
  measured: "what was measured at the heads does not fit the cans",
};
const OUTSIDE = {
  arcs: "the heads on the edge seem to throw another part of the circle than typed",
  head: "one head looks too strong or does not turn",
  heads: "several heads look weak",
} as const;

function whyNot(doubt: Doubt, { outside }: BedCauses): string {
  if (doubt !== "outside") return WHY[doubt];
  if (outside!.what !== "can") return OUTSIDE[outside!.what];
  return `the can at ${placeName(outside!.can)} does not fit the others`;
}

function whereIn({ bed }: BedCauses, one: BedCauses["causes"][number]): string {
  if (one.cause === "heads inside the edge") return insideWords(bed);
  const where = whereOf(bed, one);
  return where && one.head !== undefined ? headName(bed.heads[one.head]!) : where;
}

function told(found: BedCauses): string {
  const { cause, weight } = found.causes[0]!;
  const where = whereIn(found, found.causes[0]!);
  const lead = `${cause}${where ? `, ${where}` : ""} (${weightWords(weight)})`;
  if (found.doubts.length === 0) return `${capital(lead)}.`;
  return `Cannot tell: ${found.doubts.map((doubt) => whyNot(doubt, found)).join("; ")}. Leading: ${lead}.`;
}

/** What a reading of a bed says, in words. */
export function verdictOf(found: BedCauses): BedVerdict {
  const lead = found.causes[0]!;
  const head = lead.head !== undefined && headsInReach(found.bed) ? found.bed.heads[lead.head] : undefined;
  return {
    sentence: told(found),
    next: nextCheck(found),
    measured: found.measured ? measuredWords(found.bed.heads, found.measured).join("; ") : "",
    likely: found.causes
      .filter(({ weight }) => weight >= LISTED)
      .map((one) => [`${one.cause}: ${weightWords(one.weight)}`, whereIn(found, one)].filter(Boolean).join(", ")),
    ...(head && { head: { x: head.x, y: head.y, number: head.number } }),
    lead: { cause: lead.cause, where: whereIn(found, lead), weight: lead.weight, certain: found.doubts.length === 0 },
  };
}

/** Reads the causes of a bed from its cans, and from the heads and measurements of its workbook. */
export function causesOf(
  cans: BedCans,
  { input, measured }: Required<Pick<WorkbookBed, "input" | "measured">>,
): BedCauses {
  return causes(readBed({ ...cans, ...input }), measured);
}
