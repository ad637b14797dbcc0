import { useMemo } from "react";
import { type Seen, seen } from "../../core/pattern/seen";
import type { Host } from "../../hosts/host";
import type { Snapshot } from "../../hosts/snapshot";
import type { Answer } from "../answer/answer";
import { words } from "../parts/task/words";
import type { Reading } from "../workbook/reading";
import { useWatched } from "../workbook/use-watched";
import type { Ask } from "./bed/bed-messages";
import { BED_NAMES, type BedFacts, bedFacts } from "./bed-facts";
import { AUDIT_NAMES, findSource, type Spacings, type Way } from "./find-source";
import type { Source } from "./source";

/** A map that can be drawn, or what it lacks. */
export interface MapState {
  source: Source | null;
  facts: BedFacts | null;
  seen: Seen | null;
  /** The bed that can be read for its cause; null while something is lacking. */
  ask: Ask | null;
  problem: string;
}

const NOTHING: MapState = { source: null, facts: null, seen: null, ask: null, problem: "" };

/** What a map is drawn from; the selection comes with every snapshot. */
const CELLS: Reading<Snapshot> = {
  wants: { names: [...AUDIT_NAMES, ...BED_NAMES] },
  read: (snapshot) => snapshot,
};

function askOf({ field: { rates, across, along } }: Source, { bed }: BedFacts): Ask | null {
  if (!bed?.input) return null;
  return { input: { grid: rates, across, along, ...bed.input }, measured: bed.measured, slow: true };
}

function mapOf(snapshot: Snapshot, way: Way, answer: Answer, spacings: Spacings | null): MapState {
  try {
    const source = findSource(snapshot, way, answer, spacings);
    const facts: BedFacts = way === "audit" ? bedFacts(snapshot) : { title: "The bed from above" };
    return {
      ...{ source, facts, problem: "" },
      seen: seen(source.field, facts.bearing, facts.mean),
      ask: askOf(source, facts),
    };
  } catch (reason) {
    return { ...NOTHING, problem: words(reason) };
  }
}

/** Follows the cans: the newest map. */
export function useMap(host: Host, way: Way, answer: Answer | null, spacings: Spacings | null): MapState {
  const { found: snapshot, failure } = useWatched(host, CELLS);
  const [across, along] = [spacings?.across, spacings?.along];
  return useMemo(() => {
    if (failure) return { ...NOTHING, problem: failure };
    if (!answer || !snapshot) return NOTHING;
    const given = across !== undefined && along !== undefined ? { across, along } : null;
    return mapOf(snapshot, way, answer, given);
  }, [failure, snapshot, way, answer, across, along]);
}
