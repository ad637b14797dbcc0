import type { Worksheet } from "@cj-tech-master/excelts";
import type { ShadeSpec } from "./sheet-spec";

const argb = (colour: string) => ({ argb: `FF${colour.slice(1).toUpperCase()}` });

/** Puts the looks that follow from a formula on a sheet. */
export function writeShades(sheet: Worksheet, shades: readonly ShadeSpec[]): void {
  shades.forEach(({ range, formula, fill, colour, bold }, index) => {
    const style = {
      ...(fill && { fill: { type: "pattern" as const, pattern: "solid" as const, bgColor: argb(fill) } }),
      ...((colour || bold) && { font: { ...(colour && { color: argb(colour) }), ...(bold && { bold }) } }),
    };
    sheet.addConditionalFormatting({
      ref: range,
      rules: [{ type: "expression", priority: index + 1, formulae: [formula], style }],
    });
  });
}
