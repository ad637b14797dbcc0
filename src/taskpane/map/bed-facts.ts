import { InputError } from "../../core/errors";
import { type Arrangement, heads } from "../../core/layout/heads";
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
  "By_Area",
  "Used_MAR",
] as const;

/** What the workbook says of the bed, as far as it is filled in. */
export interface BedFacts extends Pick<MapFacts, "width" | "length" | "heads" | "mean"> {
  title: string;
  /** Compass bearing of the length [deg]. */
  bearing?: number | undefined;
}

/** Where the heads are, or none where that cannot be told. */
function headsOf(width?: number, length?: number, spacing?: number, rowSpacing?: number, arrangement?: Arrangement) {
  if (!width || !length || !spacing || !rowSpacing || !arrangement) return [];
  try {
    return heads({ width, length, spacing, rowSpacing, arrangement, arcs: "full" }, 1);
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
  const title = [textIn(found.Site_Name), textIn(found.Block_Name)].filter(Boolean).join(", ");
  return {
    title: title || "The bed from above",
    width,
    length,
    bearing: number("Bed_Bearing_deg"),
    mean: found.By_Area?.value === true ? number("Used_MAR") : undefined,
    heads: headsOf(width, length, number("Head_Spacing_m"), number("Row_Spacing_m"), arrangement),
  };
}
