import type { Borders, Cell as FileCell, Style } from "@cj-tech-master/excelts";
import { LINES, type Look, SIDES } from "./book";
import { argb, colourOf } from "./colour";

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

function border(borders: Look["borders"]): Partial<Borders> {
  return Object.fromEntries(
    Object.entries(borders ?? {}).map(([side, { line, colour }]) => [
      side,
      { style: line, ...(colour && { color: argb(colour) }) },
    ]),
  );
}

/** Gives a file's cell a look and leaves alone what a look does not say, such as whether it is locked. */
export function setLook(cell: FileCell, look: Look): void {
  cell.font = {
    ...cell.font,
    bold: look.bold ?? false,
    italic: look.italic ?? false,
    underline: look.underline ?? false,
    ...(look.font && { name: look.font }),
    ...(look.size && { size: look.size }),
    ...(look.colour && { color: argb(look.colour) }),
  };
  if (look.fill) cell.fill = { type: "pattern", pattern: "solid", fgColor: argb(look.fill) };
  else if (cell.fill) cell.fill = { type: "pattern", pattern: "none" };
  cell.numFmt = look.format ?? "General";
  cell.border = border(look.borders);
  const { horizontal: _, vertical: __, ...alignment } = cell.alignment ?? {};
  cell.alignment = {
    ...alignment,
    ...(look.align && { horizontal: look.align }),
    ...(look.vertical && { vertical: look.vertical }),
    wrapText: look.wrap ?? false,
  };
}
