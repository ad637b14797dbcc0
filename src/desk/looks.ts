import type { IStyleData, Nullable } from "@univerjs/core";
import type { Look } from "../hosts/xlsx-book";

const ALIGNMENTS = { left: 1, center: 2, right: 3 } as const;
const WRAP = 3;

/** A look as the grid stores it. */
export function styleOf(look: Look): IStyleData {
  return {
    ...(look.bold && { bl: 1 }),
    ...(look.italic && { it: 1 }),
    ...(look.size && { fs: look.size }),
    ...(look.colour && { cl: { rgb: look.colour } }),
    ...(look.fill && { bg: { rgb: look.fill } }),
    ...(look.format && { n: { pattern: look.format } }),
    ...(look.align && { ht: ALIGNMENTS[look.align] }),
    ...(look.wrap && { tb: WRAP }),
  };
}

const hex = (colour: Nullable<string>): string | undefined =>
  colour && /^#[0-9a-f]{6}$/i.test(colour) ? colour.toLowerCase() : undefined;

/** The look of a grid's style; formats that the grid itself derived from a formula are not the cell's. */
export function lookOfStyle(style: Nullable<IStyleData>): Look {
  if (!style) return {};
  const colour = hex(style.cl?.rgb);
  const fill = hex(style.bg?.rgb);
  const align = (["left", "center", "right"] as const).find((one) => ALIGNMENTS[one] === style.ht);
  return {
    ...(style.bl === 1 && { bold: true }),
    ...(style.it === 1 && { italic: true }),
    ...(style.fs && { size: style.fs }),
    ...(colour && { colour }),
    ...(fill && { fill }),
    ...(style.n?.pattern && { format: style.n.pattern }),
    ...(align && { align }),
    ...(style.tb === WRAP && { wrap: true }),
  };
}
