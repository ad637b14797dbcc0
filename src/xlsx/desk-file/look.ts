import type { Borders, Style } from "@cj-tech-master/excelts";
import { LINES, type Look, SIDES } from "./book";
import { colourOf } from "./colour";

const ALIGNMENTS = ["left", "center", "right"] as const;
const HEIGHTS = ["top", "middle", "bottom"] as const;

function bordersOf(border: Partial<Borders> | undefined): Look["borders"] {
  const found = SIDES.flatMap((side) => {
    const given = border?.[side];
    const line = LINES.find((one) => one === given?.style);
    const colour = colourOf(given?.color);
    return line ? [[side, { line, ...(colour && { colour }) }] as const] : [];
  });
  return found.length > 0 ? Object.fromEntries(found) : undefined;
}

type Dressed = { [part in keyof Style]?: Style[part] | undefined };

/** The look of a style, whether of a file's cell or of a conditional format. */
export function lookOf({ font, fill, alignment, numFmt, border }: Dressed): Look | undefined {
  const colour = colourOf(font?.color);
  const solid = fill?.type === "pattern" && fill.pattern === "solid" ? fill : undefined;
  const filled = colourOf(solid?.fgColor) ?? colourOf(solid?.bgColor);
  const align = ALIGNMENTS.find((one) => one === alignment?.horizontal);
  const vertical = HEIGHTS.find((one) => one === alignment?.vertical);
  const format = typeof numFmt === "string" ? numFmt : numFmt?.formatCode;
  const borders = bordersOf(border);
  const look: Look = {
    ...(font?.name && { font: font.name }),
    ...(font?.bold && { bold: true }),
    ...(font?.italic && { italic: true }),
    ...(font?.underline && font.underline !== "none" && { underline: true }),
    ...(font?.strike && { struck: true }),
    ...(font?.size && { size: font.size }),
    ...(colour && { colour }),
    ...(filled && { fill: filled }),
    ...(format && format !== "General" && { format }),
    ...(align && { align }),
    ...(vertical && { vertical }),
    ...(borders && { borders }),
    ...(alignment?.wrapText && { wrap: true }),
  };
  return Object.keys(look).length > 0 ? look : undefined;
}
