import { positive } from "../../core/checks";
import { InputError } from "../../core/errors";
import type { Plan } from "../../core/layout/coverage";
import { reachesBorder } from "../../core/layout/heads";
import { flowAtPressure } from "../../core/layout/pressure";
import { measuredProfile, namedProfile, type Profile } from "../../core/layout/profile";
import { numberOf } from "../parts/fields/typed-number";
import type { LayoutEntries } from "./layout-entries";

/** The flow at the heads' pressure. */
function flowOf({ flow, statedPressure, pressure }: LayoutEntries): number {
  const stated = numberOf("flow", flow);
  if (statedPressure.trim() === "" && pressure.trim() === "") return stated;
  return flowAtPressure(stated, numberOf("pressure", statedPressure), numberOf("other_pressure", pressure));
}

function profileOf(entries: LayoutEntries): Profile {
  const flow = flowOf(entries);
  if (entries.shape !== "measured") return namedProfile(entries.shape, numberOf("radius", entries.radius), flow);
  const lines = entries.profile.split(/\n/).filter((line) => line.trim() !== "");
  const points = lines.map((line, index) => {
    const parts = line.trim().split(/[\s;]+/);
    const place = `line ${index + 1}`;
    if (parts.length !== 2) throw new InputError("profile", "hold a distance and a rate in each line", line, { place });
    return parts.map((part) => numberOf("profile", part, place));
  });
  return measuredProfile(
    points.map(([distance]) => distance!),
    points.map(([, rate]) => rate!),
    flow,
  );
}

/** The plan that was typed; an error names the field that is wrong. */
export function planOf(entries: LayoutEntries): Plan {
  const { arrangement } = entries;
  return {
    width: numberOf("width", entries.width),
    length: numberOf("length", entries.length),
    spacing: numberOf("spacing", entries.spacing),
    rowSpacing: numberOf("row_spacing", entries.rowSpacing),
    arrangement,
    arcs: reachesBorder(arrangement) ? entries.arcs : "full",
    profile: profileOf(entries),
    cell: numberOf("cell", entries.cell),
  };
}

/** A quantity that may be left blank. */
export function optionalQuantity(parameter: string, text: string, unit: string): number | undefined {
  return text.trim() === "" ? undefined : positive(parameter, numberOf(parameter, text), unit);
}
