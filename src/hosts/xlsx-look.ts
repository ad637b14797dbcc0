import type { Cell as FileCell } from "@cj-tech-master/excelts";
import type { Look } from "./xlsx-book";

const ALIGNMENTS = ["left", "center", "right"] as const;

const colourOf = (argb: string | undefined): string | undefined =>
  argb?.length === 8 ? `#${argb.slice(2)}` : undefined;
const argb = (colour: string): { argb: string } => ({ argb: `FF${colour.replace("#", "").toUpperCase()}` });

/** The look of a file's cell. */
export function lookOf(cell: FileCell): Look | undefined {
  const { font, fill, alignment, numFmt } = cell;
  const colour = colourOf(font?.color?.argb);
  const filled = fill?.type === "pattern" && fill.pattern === "solid" ? colourOf(fill.fgColor?.argb) : undefined;
  const align = ALIGNMENTS.find((one) => one === alignment?.horizontal);
  const format = typeof numFmt === "string" ? numFmt : numFmt?.formatCode;
  const look: Look = {
    ...(font?.bold && { bold: true }),
    ...(font?.italic && { italic: true }),
    ...(font?.size && { size: font.size }),
    ...(colour && { colour }),
    ...(filled && { fill: filled }),
    ...(format && format !== "General" && { format }),
    ...(align && { align }),
    ...(alignment?.wrapText && { wrap: true }),
  };
  return Object.keys(look).length > 0 ? look : undefined;
}

/** Gives a file's cell a look and leaves alone what a look does not say, such as borders. */
export function setLook(cell: FileCell, look: Look): void {
  cell.font = {
    ...cell.font,
    bold: look.bold ?? false,
    italic: look.italic ?? false,
    ...(look.size && { size: look.size }),
    ...(look.colour && { color: argb(look.colour) }),
  };
  if (look.fill) cell.fill = { type: "pattern", pattern: "solid", fgColor: argb(look.fill) };
  else if (cell.fill) cell.fill = { type: "pattern", pattern: "none" };
  cell.numFmt = look.format ?? "General";
  const { horizontal: _, ...alignment } = cell.alignment ?? {};
  cell.alignment = { ...alignment, ...(look.align && { horizontal: look.align }), wrapText: look.wrap ?? false };
}
