import { zipSync } from "fflate";
import { edited, withoutElements } from "./edits";
import { isRelations } from "./namespaces";
import { type FilePackage, openPackage } from "./package";
import { relationsOf, relationsPart, textOf } from "./relations";
import { removeParts } from "./remove-parts";
import { within, xmlTree } from "./xml-tree";

const CHARTS = ["chart", "chartEx"];

type Parts = FilePackage["parts"];

const write = (parts: Parts, part: string, text: string) => parts.set(part, new TextEncoder().encode(text));

/** Takes the charts out of a drawing; answers whether nothing is left in it. */
function emptied(parts: Parts, drawing: string): boolean {
  const xml = textOf(parts, drawing);
  const { children } = xmlTree(xml);
  const charts = new Set(
    relationsOf(parts, drawing)
      .filter(({ kind }) => CHARTS.includes(kind))
      .map(({ id }) => id),
  );
  const unwanted = children.filter((anchor) =>
    [...within(anchor)].some((one) => one.name === "chart" && charts.has(one.spaced(isRelations, "id") ?? "")),
  );
  write(
    parts,
    drawing,
    edited(
      xml,
      unwanted.map(({ start, end }) => ({ start, end, text: "" })),
    ),
  );
  removeParts(parts, drawing, ({ kind }) => CHARTS.includes(kind));
  return unwanted.length === children.length;
}

/** Takes the part of a drawing off the sheet that shows it. */
function removeDrawing(parts: Parts, sheet: string, drawing: string, id: string): void {
  const xml = textOf(parts, sheet);
  const shown = [...within(xmlTree(xml, (name) => name === "sheetData"))].filter(
    (one) => one.name === "drawing" && one.spaced(isRelations, "id") === id,
  );
  write(
    parts,
    sheet,
    edited(
      xml,
      shown.map(({ start, end }) => ({ start, end, text: "" })),
    ),
  );
  removeParts(parts, sheet, ({ part }) => part === drawing);
}

/** Takes out what only the parts of a removed part led to, and what is said of parts that are gone. */
function removeUnreached(parts: Parts): void {
  const reached = new Set<string>();
  const reach = (from: string) => {
    for (const { part } of relationsOf(parts, from)) {
      if (part === "" || reached.has(part)) continue;
      reached.add(part);
      reach(part);
    }
  };
  reach("");
  for (const part of [...parts.keys()]) {
    if (part === "[Content_Types].xml" || part.endsWith(".rels") || reached.has(part)) continue;
    parts.delete(part);
    parts.delete(relationsPart(part));
  }
  const types = textOf(parts, "[Content_Types].xml");
  const kept = withoutElements(types, "Override", (given) => !parts.has((given.get("PartName") ?? "").slice(1)));
  write(parts, "[Content_Types].xml", kept);
}

/** A copy of an .xlsx file without its charts, all else as it was; null where it has none. */
export function withoutCharts(file: Uint8Array): Uint8Array | null {
  const { parts, sheets } = openPackage(file);
  let found = false;
  for (const { part: sheet } of sheets) {
    for (const { id, kind, part: drawing } of relationsOf(parts, sheet)) {
      if (kind !== "drawing" || !relationsOf(parts, drawing).some((one) => CHARTS.includes(one.kind))) continue;
      found = true;
      if (emptied(parts, drawing)) removeDrawing(parts, sheet, drawing, id);
    }
  }
  if (!found) return null;
  removeUnreached(parts);
  return zipSync(Object.fromEntries(parts));
}
