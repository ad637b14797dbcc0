import { LAST_COLUMN } from "../../cells/box";
import { cellAt } from "../../cells/places";
import { areaOf } from "../../cells/sheet-area";
import type { Frozen, Place } from "../desk-file/book";
import { type Edit, tagEdit } from "../parts/edits";
import { escapedAttribute } from "../parts/escaped";
import { isMain } from "../parts/namespaces";
import { before } from "../parts/sheet-order";
import { childOf, childrenOf, type XmlElement } from "../parts/xml-tree";

const PIXELS_A_CHARACTER = 7;
const CELL_PADDING_PX = 5;

interface Columns {
  min: number;
  max: number;
  raw: ReadonlyMap<string, string>;
}

function columnsOf(cols: XmlElement | undefined): Columns[] {
  return childrenOf(cols, isMain, "col").map(({ given, raw }) => ({
    min: Number(given.get("min")),
    max: Math.min(Number(given.get("max")), LAST_COLUMN),
    raw,
  }));
}

/** The style that a column gives its cells, as a number. */
export function columnStyle(root: XmlElement, column: number): number {
  const found = columnsOf(childOf(root, isMain, "cols")).find(({ min, max }) => min <= column && column <= max);
  return Number(found?.raw.get("style") ?? 0);
}

/** Gives one column other attributes; the columns that shared its entry keep theirs. */
function dressed(all: Columns[], column: number, changes: Readonly<Record<string, string>>): Columns[] {
  const found = all.find(({ min, max }) => min <= column && column <= max);
  const raw = new Map([...(found?.raw ?? []), ...Object.entries(changes)]);
  const changed = { min: column, max: column, raw };
  if (!found) return [...all, changed].sort((one, other) => one.min - other.min);
  return all.flatMap((one) => {
    if (one !== found) return [one];
    const before = one.min < column ? [{ ...one, max: column - 1 }] : [];
    const after = one.max > column ? [{ ...one, min: column + 1 }] : [];
    return [...before, changed, ...after];
  });
}

/** The edits that give columns their widths in pixels and hide or show them, by column from 0. */
export function columnEdits(
  root: XmlElement,
  widths: Readonly<Record<number, number>>,
  hidden: Readonly<Record<number, boolean>>,
): Edit[] {
  const places = new Set([...Object.keys(widths), ...Object.keys(hidden)].map(Number));
  if (places.size === 0) return [];
  const p = root.prefix;
  const cols = childOf(root, isMain, "cols");
  let all = columnsOf(cols);
  for (const place of places) {
    const [pixels, away] = [widths[place], hidden[place]];
    all = dressed(all, place + 1, {
      ...(pixels !== undefined && {
        width: String((pixels - CELL_PADDING_PX) / PIXELS_A_CHARACTER),
        customWidth: "1",
      }),
      ...(away !== undefined && { hidden: away ? "1" : "0" }),
    });
  }
  const texts = all.map(({ min, max, raw }) => {
    const given = new Map([...raw, ["min", String(min)], ["max", String(max)]]);
    return `<${p}col${[...given].map(([name, value]) => ` ${name}="${escapedAttribute(value)}"`).join("")}/>`;
  });
  const text = `<${p}cols>${texts.join("")}</${p}cols>`;
  if (cols) return [{ start: cols.start, end: cols.end, text }];
  const { start } = childOf(root, isMain, "sheetData")!;
  return [{ start, end: start, text }];
}

/** The edits that keep other rows and columns in view. */
export function frozenEdits(xml: string, root: XmlElement, { rows, columns }: Frozen): Edit[] {
  const p = root.prefix;
  const split = [columns > 0 ? ` xSplit="${columns}"` : "", rows > 0 ? ` ySplit="${rows}"` : ""].join("");
  const active = rows > 0 ? (columns > 0 ? "bottomRight" : "bottomLeft") : "topRight";
  const corner = `topLeftCell="${cellAt(rows + 1, columns + 1)}"`;
  const pane = rows + columns > 0 ? `<${p}pane${split} ${corner} activePane="${active}" state="frozen"/>` : "";
  const views = childOf(root, isMain, "sheetViews");
  const view = childOf(views, isMain, "sheetView");
  if (!view) {
    const before = root.children.filter(({ name }) => name === "sheetPr" || name === "dimension").at(-1);
    const at = before?.end ?? root.openEnd;
    if (pane === "" || views) return [];
    const text = `<${p}sheetViews><${p}sheetView workbookViewId="0">${pane}</${p}sheetView></${p}sheetViews>`;
    return [{ start: at, end: at, text }];
  }
  const kept = view.children.filter(
    ({ name, given }) => name !== "pane" && !(name === "selection" && given.has("pane")),
  );
  const inside = pane + kept.map(({ start, end }) => xml.slice(start, end)).join("");
  const open = tagEdit(view, {}).text.replace(/\/>$/, ">");
  return [{ start: view.start, end: view.end, text: `${open}${inside}</${p}sheetView>` }];
}

/** The edit that states a larger used range, which some programs read no further than; none where it holds all cells. */
export function dimensionEdits(root: XmlElement, cells: readonly { row: number; column: number }[]): Edit[] {
  const stated = childOf(root, isMain, "dimension");
  const area = areaOf(stated?.given.get("ref") ?? "", "");
  if (!stated || !area || cells.length === 0) return [];
  let { top, left, bottom, right } = area;
  for (const { row, column } of cells) {
    [top, bottom] = [Math.min(top, row), Math.max(bottom, row)];
    [left, right] = [Math.min(left, column), Math.max(right, column)];
  }
  const same = top === area.top && left === area.left && bottom === area.bottom && right === area.right;
  return same ? [] : [tagEdit(stated, { ref: `${cellAt(top, left)}:${cellAt(bottom, right)}` })];
}

/** What comes before the merged cells in a sheet's part. */
const BEFORE_MERGES = before("mergeCells");

/** The edits that merge these cells of a sheet and no others. */
export function mergeEdits(root: XmlElement, merges: readonly Place[]): Edit[] {
  const p = root.prefix;
  const held = childOf(root, isMain, "mergeCells");
  const texts = merges.map(({ startRow, startColumn, endRow, endColumn }) => {
    const ref = `${cellAt(startRow + 1, startColumn + 1)}:${cellAt(endRow + 1, endColumn + 1)}`;
    return `<${p}mergeCell ref="${ref}"/>`;
  });
  const text = texts.length === 0 ? "" : `<${p}mergeCells count="${texts.length}">${texts.join("")}</${p}mergeCells>`;
  if (held) return [{ start: held.start, end: held.end, text }];
  const at = root.children.filter(({ name }) => BEFORE_MERGES.includes(name)).at(-1)!.end;
  return text === "" ? [] : [{ start: at, end: at, text }];
}
