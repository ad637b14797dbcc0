import type { Style } from "@cj-tech-master/excelts";
import { lookOfKind } from "./cell-looks";
import type { CellSpec } from "./sheet-spec";

const made = new Map<string, Partial<Style>>();

/** The style of a cell; cells that look the same share one, which the file writer then calculates once. */
export function styleOf({ kind, bare, format, align, shrink, kept }: CellSpec): Partial<Style> {
  const key = JSON.stringify([kind, bare, format, align, shrink, kept]);
  const before = made.get(key);
  if (before) return before;
  const { fill, border, alignment = {}, ...rest } = lookOfKind(kind, kept);
  const { wrapText, ...oneLine } = alignment;
  const style: Partial<Style> = {
    ...rest,
    ...(!bare && { ...(fill && { fill }), ...(border && { border }) }),
    ...(format && { numFmt: format }),
    alignment: { ...(shrink ? { ...oneLine, shrinkToFit: true } : alignment), ...(align && { horizontal: align }) },
  };
  made.set(key, style);
  return style;
}
