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
] as const;

const ARCS: Record<string, LayoutEntries["arcs"]> = {
  "full circles": "full",
  "part circles, matched": "matched",
  "part circles, same nozzle": "unmatched",
};

/** The layout to begin with: the workbook's own, as far as it is filled in. */
export async function firstLayout(host: Host): Promise<LayoutEntries> {
  const found = await readNamed(host, NAMES);
  const text = (name: (typeof NAMES)[number], otherwise: string) => {
    const value = numberIn(found[name]);
    return value === undefined ? otherwise : String(Number(value.toPrecision(6)));
  };
  return {
    ...FIRST_LAYOUT,
    width: text("Bed_Width_m", FIRST_LAYOUT.width),
    length: text("Bed_Length_m", FIRST_LAYOUT.length),
    spacing: text("Head_Spacing_m", FIRST_LAYOUT.spacing),
    rowSpacing: text("Row_Spacing_m", FIRST_LAYOUT.rowSpacing),
    radius: text("Head_Spacing_m", FIRST_LAYOUT.radius),
    flow: text("Flow_Mean_Lh", FIRST_LAYOUT.flow),
    depth: text("Net_Depth_mm", FIRST_LAYOUT.depth),
    arrangement: ARRANGEMENT_OF[textIn(found.Head_Layout)] ?? FIRST_LAYOUT.arrangement,
    arcs: ARCS[textIn(found.Head_Arc)] ?? FIRST_LAYOUT.arcs,
  };
}
