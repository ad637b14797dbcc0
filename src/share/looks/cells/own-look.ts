import type { CellSpec } from "../../../workbook/form/sheet-spec";
import { styleOf } from "../../../workbook/form/style";
import { isThick, type Look } from "./file-looks";

const rgb = (colour: { argb?: string } | undefined, automatic: string) =>
  colour?.argb ? colour.argb.slice(-6).toLowerCase() : automatic;

const known = new WeakMap<object, Look>();

/** How a cell of the workbook's own sheets looks. */
export function ownLook(spec: CellSpec): Look {
  const style = styleOf(spec);
  const before = known.get(style);
  if (before) return before;
  const { font = {}, fill, alignment = {}, border, numFmt } = style;
  const paper = fill && fill.type === "pattern" ? (fill.fgColor as { argb?: string } | undefined) : undefined;
  const look: Look = {
    format: typeof numFmt === "string" ? numFmt : "General",
    font: font.name ?? "Calibri",
    signs: false,
    size: font.size ?? 11,
    colour: rgb(font.color as { argb?: string } | undefined, "000000"),
    struck: false,
    raised: false,
    hollow: false,
    fill: rgb(paper, "ffffff"),
    crossed: false,
    edged: [border?.left, border?.right, border?.top, border?.bottom].some((side) => isThick(side?.style)),
    drawn: paper !== undefined || border !== undefined,
    across: alignment.horizontal ?? "general",
    turned: false,
    indent: alignment.indent ?? 0,
    backwards: false,
    wrapped: alignment.wrapText === true,
    shrunk: alignment.shrinkToFit === true,
    button: false,
    secret: false,
  };
  known.set(style, look);
  return look;
}
