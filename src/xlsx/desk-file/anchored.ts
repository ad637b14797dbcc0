import { textOf } from "../parts/relations";
import { xmlTree } from "../parts/xml-tree";

/** What a sheet holds at fixed rows and columns beside its cells, by the element of its part. */
const KINDS: Record<string, string> = {
  conditionalFormatting: "conditional formats",
  dataValidations: "data checks",
  hyperlinks: "links",
  drawing: "charts and shapes",
  legacyDrawing: "notes",
  tableParts: "tables",
  autoFilter: "filters",
  rowBreaks: "page breaks",
  colBreaks: "page breaks",
  protectedRanges: "protected ranges",
  extLst: "sparklines and newer formats",
};

/** What would stay at its old rows and columns if some were inserted or deleted in a sheet. */
export function anchoredKinds(parts: ReadonlyMap<string, Uint8Array>, sheet: string): string[] {
  const { children } = xmlTree(textOf(parts, sheet), (name) => name === "sheetData");
  return [...new Set(["row heights", ...children.flatMap(({ name }) => KINDS[name] ?? [])])];
}
