import { InputError } from "../../core/errors";
import { type Arcs, heads, type Stand } from "../../core/layout/heads";
import type { Snapshot } from "../../hosts/snapshot";
import { ARRANGEMENT_OF } from "../plan/head-layout";
import { namedCells, numberIn, textIn } from "../workbook/named";
import type { MapFacts } from "./bed-map";

export const BED_NAMES = [
  "Site_Name",
  "Block_Name",
  "Bed_Width_m",
  "Bed_Length_m",
  "Bed_Bearing_deg",
  "Head_Layout",
  "Head_Spacing_m",
  "Row_Spacing_m",
  "Head_Arc",
  "By_Area",
  "Used_MAR",
] as const;

/** What the workbook says of the bed, as far as it is filled in. */
export interface BedFacts extends Pick<MapFacts, "width" | "length" | "heads" | "mean"> {
  title: string;
  /** Compass bearing of the length [deg]. */
  bearing?: number | undefined;
  /** The layout of the heads; left out where an entry of it is missing. */
  stand?: Stand | undefined;
}

const ARCS: Readonly<Record<string, Arcs>> = {
  "part circles, matched": "matched",
  "part circles, same nozzle": "unmatched",
};

/** Where the heads are, or none where that cannot be told. */
function headsOf(stand: Stand | undefined) {
  if (!stand) return [];
  try {
    return heads({ ...stand, arcs: "full" }, 1);
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

export function bedFacts(snapshot: Snapshot): BedFacts {
  const found = namedCells(snapshot, BED_NAMES);
  const number = (name: (typeof BED_NAMES)[number]) => numberIn(found[name]);
  const [width, length] = [number("Bed_Width_m"), number("Bed_Length_m")];
  const arrangement = ARRANGEMENT_OF[textIn(found.Head_Layout)];
  const [spacing, rowSpacing] = [number("Head_Spacing_m"), number("Row_Spacing_m")];
  const arcs = ARCS[textIn(found.Head_Arc)] ?? "full";
  const stand =
    width && length && spacing && rowSpacing && arrangement
      ? { width, length, spacing, rowSpacing, arrangement, arcs }
      : undefined;
  const title = [textIn(found.Site_Name), textIn(found.Block_Name)].filter(Boolean).join(", ");
  return {
    title: title || "The bed from above",
    width,
    length,
    bearing: number("Bed_Bearing_deg"),
    mean: found.By_Area?.value === true ? number("Used_MAR") : undefined,
    stand,
    heads: headsOf(stand),
  };
}
