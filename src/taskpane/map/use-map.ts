import { useMemo } from "react";
import { type Seen, seen } from "../../core/pattern/seen";
import type { Host } from "../../hosts/host";
import type { Snapshot } from "../../hosts/snapshot";
import type { Answer } from "../answer/answer";
import { words } from "../parts/words";
import type { Reading } from "../workbook/reading";
import { useWatched } from "../workbook/use-watched";
import { BED_NAMES, type BedFacts, bedFacts } from "./bed-facts";
import { type BedVerdict, bedVerdict } from "./bed-verdict";
import { AUDIT_NAMES, findSource, type Spacings, type Way } from "./find-source";
import type { Source } from "./source";

/** A map that can be drawn, or what it lacks. */
export interface MapState {
  source: Source | null;
  facts: BedFacts | null;
  seen: Seen | null;
  /** What the heads and the cans say together; null without a layout of heads or a throw. */
  verdict: BedVerdict | null;
  /** Why there is no verdict. */
  noVerdict: string;
  problem: string;
}

const NOTHING: MapState = { source: null, facts: null, seen: null, verdict: null, noVerdict: "", problem: "" };

/** What a map is drawn from; the selection comes with every snapshot. */
const CELLS: Reading<Snapshot> = { wants: { names: [...AUDIT_NAMES, ...BED_NAMES] }, read: (snapshot) => snapshot };

/** The verdict, or what it lacks. */
function verdictOf({ field }: Source, { stand }: BedFacts, radius?: number): Pick<MapState, "verdict" | "noVerdict"> {
  if (!stand) {
    return { verdict: null, noVerdict: "Fill in the bed, layout and spacings on the sheet Block to see the cause." };
  }
  if (radius === undefined) return { verdict: null, noVerdict: "Type the throw of a head to see the cause." };
  try {
    return { verdict: bedVerdict(field, stand, radius), noVerdict: "" };
  } catch (reason) {
    return { verdict: null, noVerdict: words(reason) };
  }
}

function mapOf(snapshot: Snapshot, way: Way, answer: Answer, spacings: Spacings | null, radius?: number): MapState {
  try {
    const source = findSource(snapshot, way, answer, spacings);
    const facts: BedFacts = way === "audit" ? bedFacts(snapshot) : { title: "The bed from above" };
    const found = seen(source.field, facts.bearing, facts.mean);
    return { source, facts, seen: found, ...verdictOf(source, facts, radius), problem: "" };
  } catch (reason) {
    return { ...NOTHING, problem: words(reason) };
  }
}

/** Follows the cans: the newest map. */
export function useMap(
  host: Host,
  way: Way,
  answer: Answer | null,
  spacings: Spacings | null,
  radius?: number,
): MapState {
  const { found: snapshot, failure } = useWatched(host, CELLS);
  const [across, along] = [spacings?.across, spacings?.along];
  return useMemo(() => {
    if (failure) return { ...NOTHING, problem: failure };
    if (!answer || !snapshot) return NOTHING;
    const given = across !== undefined && along !== undefined ? { across, along } : null;
    return mapOf(snapshot, way, answer, given, radius);
  }, [failure, snapshot, way, answer, across, along, radius]);
}
