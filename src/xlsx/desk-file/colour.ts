import type { Color } from "@cj-tech-master/excelts";

/** The theme that spreadsheet programs give a new workbook, in the order in which cells number it. */
const THEME = ["FFFFFF", "000000", "E7E6E6", "44546A", "4472C4", "ED7D31", "A5A5A5", "FFC000", "5B9BD5", "70AD47"];

/** A part of a colour made lighter (tint above 0) or darker (below 0). */
function tinted(part: string, tint: number): string {
  const value = Number.parseInt(part, 16);
  const shade = tint < 0 ? value * (1 + tint) : value + (255 - value) * tint;
  return Math.round(shade).toString(16).padStart(2, "0");
}

/** A file's colour as `#rrggbb`. */
export function colourOf(colour: Partial<Color> | undefined): string | undefined {
  if (colour?.argb?.length === 8) return `#${colour.argb.slice(2)}`;
  const themed = colour?.theme === undefined ? undefined : THEME[colour.theme];
  if (!themed) return undefined;
  const tint = (colour as { tint?: number }).tint ?? 0;
  return `#${themed
    .match(/../g)!
    .map((part) => tinted(part, tint))
    .join("")}`;
}
