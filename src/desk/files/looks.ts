import type { IBorderData, IStyleData, Nullable } from "@univerjs/core";
import { LINES, type Look, SIDES } from "../../xlsx/desk-file/book";

const ALIGNMENTS = { left: 1, center: 2, right: 3 } as const;
const HEIGHTS = { top: 1, middle: 2, bottom: 3 } as const;
const EDGES = { top: "t", left: "l", bottom: "b", right: "r" } as const;
const BLACK = "#000000";
const WRAP = 3;

function edges(borders: NonNullable<Look["borders"]>): IBorderData {
  return Object.fromEntries(
    SIDES.flatMap((side) => {
      const line = borders[side];
      return line ? [[EDGES[side], { s: LINES.indexOf(line.line) + 1, cl: { rgb: line.colour ?? BLACK } }]] : [];
    }),
  );
}

/** A look as the grid stores it. */
export function styleOf(look: Look): IStyleData {
  return {
    ...(look.font && { ff: look.font }),
    ...(look.bold && { bl: 1 }),
    ...(look.italic && { it: 1 }),
    ...(look.underline && { ul: { s: 1 } }),
    ...(look.struck && { st: { s: 1 } }),
    ...(look.size && { fs: look.size }),
    ...(look.colour && { cl: { rgb: look.colour } }),
    ...(look.fill && { bg: { rgb: look.fill } }),
    ...(look.format && { n: { pattern: look.format } }),
    ...(look.align && { ht: ALIGNMENTS[look.align] }),
    ...(look.vertical && { vt: HEIGHTS[look.vertical] }),
    ...(look.borders && { bd: edges(look.borders) }),
    ...(look.wrap && { tb: WRAP }),
  };
}

const hex = (colour: Nullable<string>): string | undefined =>
  colour && /^#[0-9a-f]{6}$/i.test(colour) ? colour.toLowerCase() : undefined;

function bordersOf(edges: Nullable<IBorderData>): Look["borders"] {
  const found = SIDES.flatMap((side) => {
    const edge = edges?.[EDGES[side]];
    const line = edge && LINES[edge.s - 1];
    const colour = hex(edge?.cl?.rgb);
    return line ? [[side, { line, ...(colour && { colour }) }] as const] : [];
  });
  return found.length > 0 ? Object.fromEntries(found) : undefined;
}

/** The look of a grid's style; formats that the grid itself derived from a formula are not the cell's. */
export function lookOfStyle(style: Nullable<IStyleData>): Look {
  if (!style) return {};
  const colour = hex(style.cl?.rgb);
  const fill = hex(style.bg?.rgb);
  const align = (["left", "center", "right"] as const).find((one) => ALIGNMENTS[one] === style.ht);
  const vertical = (["top", "middle", "bottom"] as const).find((one) => HEIGHTS[one] === style.vt);
  const borders = bordersOf(style.bd);
  return {
    ...(style.ff && { font: style.ff }),
    ...(style.bl === 1 && { bold: true }),
    ...(style.it === 1 && { italic: true }),
    ...(style.ul?.s === 1 && { underline: true }),
    ...(style.st?.s === 1 && { struck: true }),
    ...(style.fs && { size: style.fs }),
    ...(colour && { colour }),
    ...(fill && { fill }),
    ...(style.n?.pattern && { format: style.n.pattern }),
    ...(align && { align }),
    ...(vertical && { vertical }),
    ...(borders && { borders }),
    ...(style.tb === WRAP && { wrap: true }),
  };
}
