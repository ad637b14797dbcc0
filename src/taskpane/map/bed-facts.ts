import type { Snapshot } from "../../hosts/snapshot";
import { BED_CELLS, bedOfWorkbook, type WorkbookBed } from "../../workbook/bed/bed-of-workbook";
import { cellsOf, namedCells, numberIn, textIn } from "../workbook/named";
import type { MapFacts } from "./bed-map";

const TITLE_NAMES = ["Site_Name", "Block_Name", "By_Area", "Used_MAR", "Used_CU", "Used_DU"] as const;
export const BED_NAMES: readonly string[] = [...TITLE_NAMES, ...BED_CELLS];

/** What the workbook says of the bed, as far as it is filled in. */
export interface BedFacts extends Pick<MapFacts, "width" | "length" | "heads" | "mean"> {
  title: string;
  /** Compass bearing of the length [deg]. */
  bearing?: number | undefined;
  /** Its heads and what was measured at them; left out where the cans are not the workbook's. */
  bed?: WorkbookBed;
  /** The figures as the sheets have them. */
  reported?: { mean?: number | undefined; cu?: number | undefined; du?: number | undefined };
}

export function bedFacts(snapshot: Snapshot): BedFacts {
  const found = namedCells(snapshot, BED_NAMES);
  const bed = bedOfWorkbook(cellsOf(snapshot));
  const title = [textIn(found.Site_Name), textIn(found.Block_Name)].filter(Boolean).join(", ");
  return {
    title: title || "The bed from above",
    width: numberIn(found.Bed_Width_m),
    length: numberIn(found.Bed_Length_m),
    bearing: numberIn(found.Bed_Bearing_deg),
    mean: found.By_Area?.value === true ? numberIn(found.Used_MAR) : undefined,
    heads: bed.heads,
    bed,
    reported: {
      mean: numberIn(found.Used_MAR),
      cu: numberIn(found.Used_CU),
      du: numberIn(found.Used_DU),
    },
  };
}
