import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

const CHART_PARTS = /^xl\/(charts|chartex)\//;
const CONTENT_TYPES = "[Content_Types].xml";

type Parts = Record<string, Uint8Array>;

const relationsOf = (part: string) => part.replace(/([^/]+)$/, "_rels/$1.rels");

/** A part as a document that can be changed and written back. */
function changed(parts: Parts, part: string, change: (page: Document) => void): void {
  const bytes = parts[part];
  if (!bytes) return;
  const page = new DOMParser().parseFromString(strFromU8(bytes), "application/xml");
  change(page);
  const text = new XMLSerializer().serializeToString(page.documentElement);
  parts[part] = strToU8(`<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${text}`);
}

const elements = (page: Document, name: string) => [...page.getElementsByTagNameNS("*", name)];

function removeRelations(parts: Parts, part: string, unwanted: (target: string) => boolean): string[] {
  const ids: string[] = [];
  changed(parts, relationsOf(part), (page) => {
    for (const relation of elements(page, "Relationship")) {
      if (!unwanted(relation.getAttribute("Target") ?? "")) continue;
      ids.push(relation.getAttribute("Id") ?? "");
      relation.remove();
    }
  });
  return ids;
}

/** Takes the charts out of a drawing; true where nothing is left in it. */
function emptied(parts: Parts, drawing: string): boolean {
  let left = 0;
  changed(parts, drawing, (page) => {
    for (const anchor of [...page.documentElement.children]) {
      if (anchor.getElementsByTagNameNS("*", "chart").length > 0) anchor.remove();
    }
    left = page.documentElement.children.length;
  });
  removeRelations(parts, drawing, (target) => target.includes("chart"));
  return left === 0;
}

/** Takes an empty drawing off the sheets that show it. */
function removeDrawing(parts: Parts, drawing: string): void {
  const name = drawing.slice(drawing.lastIndexOf("/") + 1);
  for (const sheet of Object.keys(parts).filter((part) => /^xl\/worksheets\/[^/]+\.xml$/.test(part))) {
    const ids = removeRelations(parts, sheet, (target) => target.endsWith(`drawings/${name}`));
    if (ids.length === 0) continue;
    changed(parts, sheet, (page) => {
      for (const element of elements(page, "drawing")) element.remove();
    });
  }
  delete parts[drawing];
  delete parts[relationsOf(drawing)];
}

/** A copy of an .xlsx file without its charts, all else as it was; null where it has none. */
export function withoutCharts(file: Uint8Array): Uint8Array | null {
  const parts = unzipSync(file);
  const charts = Object.keys(parts).filter((part) => CHART_PARTS.test(part));
  if (charts.length === 0) return null;
  for (const part of charts) delete parts[part];
  for (const drawing of Object.keys(parts).filter((part) => /^xl\/drawings\/[^/]+\.xml$/.test(part))) {
    if (emptied(parts, drawing)) removeDrawing(parts, drawing);
  }
  changed(parts, CONTENT_TYPES, (page) => {
    for (const one of elements(page, "Override")) {
      if (!parts[(one.getAttribute("PartName") ?? "").slice(1)]) one.remove();
    }
  });
  return zipSync(parts);
}
