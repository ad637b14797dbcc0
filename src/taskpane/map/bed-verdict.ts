import { type BedCauses, causes, type Doubt } from "../../core/bed/causes/causes";
import { nextCheck, whereOf } from "../../core/bed/causes/next-check";
import { readBed } from "../../core/bed/read-bed";
import type { Stand } from "../../core/layout/heads";
import type { CanField } from "../../core/pattern/can-field";

/** What the cans and the heads of a bed say together, in words. */
export interface BedVerdict {
  /** The cause with its weight, or that none can be told. */
  sentence: string;
  next: string;
  /** Causes of 5 % or more, with where they are. */
  likely: string[];
  /** The head in question [m]. */
  head?: { x: number; y: number };
}

/** Causes that weigh less [%] are not listed. */
const LISTED = 5;
const WHY: Readonly<Record<Doubt, string>> = {
  cans: "fewer than 16 cans",
  weight: "no cause reaches 60 %",
  rest: "the cans differ from every fit by more than reading error",
  "second fault": "a second head looks weak",
  measured: "what was measured at the heads speaks against it",
  outside: "one head looks too strong or does not turn",
};

function told(found: BedCauses): string {
  const { cause, weight } = found.causes[0]!;
  const where = whereOf(found.bed, found.causes[0]!);
  const lead = `${cause}${where ? `, ${where}` : ""} (${weight.toFixed(0)} %)`;
  if (found.doubts.length === 0) return `${cause === "nothing wrong found" ? "" : "Most likely: "}${lead}.`;
  return `Cannot tell: ${found.doubts.map((doubt) => WHY[doubt]).join("; ")}. Leading: ${lead}.`;
}

/** Reads the bed from its cans, its heads and the throw [m]. */
export function bedVerdict({ rates, across, along }: CanField, stand: Stand, radius: number): BedVerdict {
  const found = causes(readBed({ grid: rates, across, along, ...stand, radius }));
  const lead = found.causes[0]!;
  const head = lead.head !== undefined && whereOf(found.bed, lead) ? found.bed.heads[lead.head] : undefined;
  return {
    sentence: told(found),
    next: nextCheck(found),
    likely: found.causes
      .filter(({ weight }) => weight >= LISTED)
      .map((one) => [`${one.cause}: ${one.weight.toFixed(0)} %`, whereOf(found.bed, one)].filter(Boolean).join(", ")),
    ...(head && { head: { x: head.x, y: head.y } }),
  };
}
