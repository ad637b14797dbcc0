import type { Figure } from "../copy-report";
import { changed, type Finding } from "../finding";
import { readable } from "../looks/cells/shown";

/** The figures that do not agree, as findings. */
export function figureFindings(figures: readonly Figure[]): Finding[] {
  return figures.flatMap(({ place, label, unit, stated, recomputed, agrees }) => {
    if (agrees) return [];
    const [was, is] = [recomputed, stated].map((value) =>
      typeof value === "number" ? `${readable(value)} ${unit}`.trim() : readable(value),
    ) as [string, string];
    return [changed(place, `${label} is stated as ${is}, and the readings give ${was}`, was, is)];
  });
}
