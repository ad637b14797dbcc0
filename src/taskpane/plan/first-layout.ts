import type { Host } from "../../hosts/host";
import { ARRANGEMENT_OF } from "../../workbook/bed/head-layout";
import { numberIn, readNamed, textIn } from "../workbook/named";
import { FIRST_LAYOUT, type LayoutEntries } from "./layout-entries";

const NAMES = [
  "Bed_Width_m",
  "Bed_Length_m",
  "Head_Spacing_m",
  "Row_Spacing_m",
  "Head_Layout",
  "Head_Arc",
  "Flow_Mean_Lh",
  "Net_Depth_mm",
  "Head_Throw_m",
] as const;

const ARCS: Record<string, LayoutEntries["arcs"]> = {
  "full circles": "full",
  "part circles, matched": "matched",
  "part circles, same nozzle": "unmatched",
};

const OF_BED = [
  "Bed_Width_m",
  "Bed_Length_m",
  "Head_Spacing_m",
  "Row_Spacing_m",
  "Head_Throw_m",
  "Flow_Mean_Lh",
] as const;

/** The layout to begin with, and whether all of it is the workbook's own bed. */
export interface FirstLayout {
  entries: LayoutEntries;
  own: boolean;
}

/** The layout to begin with: the workbook's own, as far as it is filled in. */
export async function firstLayout(host: Host): Promise<FirstLayout> {
  const found = await readNamed(host, NAMES);
  const text = (name: (typeof NAMES)[number], otherwise: string) => {
    const value = numberIn(found[name]);
    return value === undefined ? otherwise : String(Number(value.toPrecision(6)));
  };
  const entries: LayoutEntries = {
    ...FIRST_LAYOUT,
    width: text("Bed_Width_m", FIRST_LAYOUT.width),
    length: text("Bed_Length_m", FIRST_LAYOUT.length),
    spacing: text("Head_Spacing_m", FIRST_LAYOUT.spacing),
    rowSpacing: text("Row_Spacing_m", FIRST_LAYOUT.rowSpacing),
    radius: text("Head_Throw_m", text("Head_Spacing_m", FIRST_LAYOUT.radius)),
    flow: text("Flow_Mean_Lh", FIRST_LAYOUT.flow),
    depth: text("Net_Depth_mm", FIRST_LAYOUT.depth),
    arrangement: ARRANGEMENT_OF[textIn(found.Head_Layout)] ?? FIRST_LAYOUT.arrangement,
    arcs: ARCS[textIn(found.Head_Arc)] ?? FIRST_LAYOUT.arcs,
  };
  const own =
    OF_BED.every((name) => numberIn(found[name]) !== undefined) && textIn(found.Head_Layout) in ARRANGEMENT_OF;
  return { entries, own };
}
