import { useEffect, useState } from "react";
import { type Cause, likelyCauses } from "../../core/pattern/causes";
import { type Seen, seen } from "../../core/pattern/seen";
import type { Host } from "../../hosts/host";
import type { Answer } from "../answer/answer";
import { words } from "../parts/words";
import { type BedFacts, bedFacts } from "./bed-facts";
import { findSource, type Spacings, type Way } from "./find-source";
import type { Source } from "./source";

/** A map that can be drawn, or what it lacks. */
export interface MapState {
  source: Source | null;
  facts: BedFacts | null;
  seen: Seen | null;
  causes: readonly Cause[];
  problem: string;
}

const NOTHING: MapState = { source: null, facts: null, seen: null, causes: [], problem: "" };

async function mapOf(host: Host, way: Way, answer: Answer, spacings: Spacings | null): Promise<MapState> {
  const source = await findSource(host, way, answer, spacings);
  const own: BedFacts = { title: "The bed from above" };
  const facts = way === "audit" ? await bedFacts(host) : own;
  const found = seen(source.field, facts.bearing, facts.mean);
  return { source, facts, seen: found, causes: likelyCauses(found.pattern), problem: "" };
}

/** Follows the cans and keeps the newest map. */
export function useMap(host: Host, way: Way, answer: Answer | null, spacings: Spacings | null): MapState {
  const [state, setState] = useState(NOTHING);
  const [across, along] = [spacings?.across, spacings?.along];
  useEffect(() => {
    if (!answer) return;
    let newest = true;
    const given = across !== undefined && along !== undefined ? { across, along } : null;
    mapOf(host, way, answer, given)
      .catch((reason): MapState => ({ ...NOTHING, problem: words(reason) }))
      .then((next) => {
        if (newest) setState(next);
      });
    return () => {
      newest = false;
    };
  }, [host, way, answer, across, along]);
  return state;
}
