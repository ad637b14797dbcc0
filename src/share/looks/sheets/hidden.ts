import { columnLetters } from "../../../cells/letters";
import { addressParts } from "../../../cells/sheet-area";
import { isMain } from "../../../xlsx/parts/namespaces";
import type { BookSheet } from "../../../xlsx/parts/workbook-file";
import { childOf, childrenOf, isOn, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { type Finding, misleading } from "../../finding";
import type { OwnSheet } from "./own-sheet";

/** A column without a width of its own may be narrower, by the font of another program; one with its own is full of text. */
const NARROW = 0.85;
const NARROWER_THAN_SET = 0.93;
/** A row without a height of its own may be lower, in the font of another program; one with its own is full of text. */
const LOW = 0.75;
const LOWER_THAN_SET = 0.94;
/** How many times its own room a sheet may take before a page that holds it is too small to read. */
const MOST_ROOM = 1.8;
const WIDE = 3;
const USUAL_WIDTH = 8.43;
const USUAL_DIGITS = 9;
export const USUAL_HEIGHT = 15;
const LEAST_HEIGHT = 6;
/** Programs make a row as tall as its text needs, in a font of their own. */
const TALLEST = 300;
const SPOKEN = "shows above its texts how they are spoken";

interface Column {
  width: number;
  hidden: boolean;
  grouped: boolean;
  spoken: boolean;
}

/** The width of columns that are not listed: said itself, or by the digits that they have room for. */
function usualWidth(frame: XmlElement): number {
  const format = childOf(frame, isMain, "sheetFormatPr")?.given;
  const digits = Number(format?.get("baseColWidth") ?? USUAL_DIGITS);
  return Number(format?.get("defaultColWidth") ?? Math.min(USUAL_WIDTH, digits));
}

/** The columns of a file by number, as far as the sheet of the workbook uses them. */
export function columnsOf(frame: XmlElement, last: number): Column[] {
  const usual = usualWidth(frame);
  const columns = Array.from(
    { length: last },
    (): Column => ({ width: usual, hidden: false, grouped: false, spoken: false }),
  );
  for (const { given } of childrenOf(childOf(frame, isMain, "cols"), isMain, "col")) {
    const to = Math.min(last, Number(given.get("max")));
    for (let at = Number(given.get("min")); at <= to; at += 1) {
      columns[at - 1] = {
        width: Number(given.get("width") ?? usual),
        hidden: isOn(given.get("hidden")),
        grouped: Number(given.get("outlineLevel") ?? 0) > 0,
        spoken: isOn(given.get("phonetic")),
      };
    }
  }
  return columns;
}

/** Whether the columns are listed in their order, each once: programs read the first or the last of two. */
function listsOnce(frame: XmlElement): boolean {
  const listed = childrenOf(childOf(frame, isMain, "cols"), isMain, "col").map(({ given }) => given);
  return listed.every((given, i) => i === 0 || Number(given.get("min")) > Number(listed[i - 1]!.get("max")));
}

const sum = (sizes: readonly number[]) => sizes.reduce((all, size) => all + size, 0);

function columnFindings(own: OwnSheet, frame: XmlElement): Finding[] {
  if (!listsOnce(frame)) return [misleading(own.name, "lists a column twice, of which programs read one or the other")];
  const last = Math.max(own.widths.length, ...own.used.map(({ column }) => column));
  const used = new Set(own.used.map(({ column }) => column));
  const columns = columnsOf(frame, last);
  const seen = columns.map(({ width, hidden }, index) => (hidden || own.hidden.has(index + 1) ? 0 : width));
  const wide = columns.map((_, index) => (own.hidden.has(index + 1) ? 0 : (own.widths[index] ?? USUAL_WIDTH)));
  if (sum(seen) > MOST_ROOM * sum(wide)) return [misleading(own.name, "its columns are so wide that its pages shrink")];
  return columns.flatMap(({ width, hidden, grouped, spoken }, index) => {
    if (!used.has(index + 1) || own.hidden.has(index + 1)) return [];
    const where = `${own.name}, column ${columnLetters(index + 1)}`;
    const wanted = own.widths[index] ?? USUAL_WIDTH;
    if (hidden || width === 0) return [misleading(where, "is hidden", "in sight", "hidden", "column")];
    if (grouped) return [misleading(where, "is in a group that can be folded away", "", "grouped", "column")];
    if (spoken) return [misleading(where, SPOKEN, "", "", "column")];
    if (width < (own.widths[index] === undefined ? NARROW : NARROWER_THAN_SET) * wanted)
      return [misleading(where, "is too narrow", `${wanted}`, `${width}`, "column")];
    if (width > WIDE * wanted + 2) return [misleading(where, "is far too wide", `${wanted}`, `${width}`, "column")];
    return [];
  });
}

function rowFindings(own: OwnSheet, sheet: BookSheet, frame: XmlElement): Finding[] {
  if (sheet.rows.some(({ number }, i) => i > 0 && number <= sheet.rows[i - 1]!.number)) {
    return [misleading(own.name, "lists a row twice, of which programs read one or the other")];
  }
  const used = new Set(own.used.map(({ row }) => row));
  const format = childOf(frame, isMain, "sheetFormatPr")?.given;
  const usual = Number(format?.get("defaultRowHeight") ?? USUAL_HEIGHT);
  const listed = new Map(sheet.rows.map((row) => [row.number, row.given]));
  const allHidden = isOn(format?.get("zeroHeight"));
  const rows = Array.from({ length: Math.max(...used) }, (_, index) => index + 1);
  const heights = rows.map((row) =>
    isOn(listed.get(row)?.get("hidden")) ? 0 : Number(listed.get(row)?.get("ht") ?? usual),
  );
  const tall = rows.find((row, index) => !used.has(row) && heights[index]! > TALLEST);
  if (tall !== undefined)
    return [misleading(`${own.name}, row ${tall}`, "is far too tall", "", `${heights[tall - 1]} pt`)];
  if (sum(heights) > MOST_ROOM * sum(rows.map((row) => own.heights[row] ?? USUAL_HEIGHT)))
    return [misleading(own.name, "its rows are so tall that its pages shrink or its end is far down")];
  return [...used].flatMap((row) => {
    const given = listed.get(row);
    const where = `${own.name}, row ${row}`;
    const wanted = own.heights[row] ?? USUAL_HEIGHT;
    const height = Number(given?.get("ht") ?? usual);
    if (isOn(given?.get("hidden")) || height === 0 || (!given && allHidden)) {
      return [misleading(where, "is hidden", "in sight", "hidden", "row")];
    }
    if (Number(given?.get("outlineLevel") ?? 0) > 0) {
      return [misleading(where, "is in a group that can be folded away", "", "grouped", "row")];
    }
    if (isOn(given?.get("ph"))) return [misleading(where, SPOKEN, "", "", "row")];
    if (height > TALLEST && wanted <= TALLEST) {
      return [misleading(where, "is far too tall", `${wanted} pt`, `${height} pt`, "row")];
    }
    if (height < LEAST_HEIGHT || height < (row in own.heights ? LOWER_THAN_SET : LOW) * wanted) {
      return [misleading(where, "is too low", `${wanted} pt`, `${height} pt`, "row")];
    }
    return [];
  });
}

/** Merged cells other than the sheet's own: only the first of merged cells is seen. */
function mergeFindings(own: OwnSheet, frame: XmlElement): Finding[] {
  const merged = childrenOf(childOf(frame, isMain, "mergeCells"), isMain, "mergeCell").map(
    ({ given }) => given.get("ref") ?? "",
  );
  const wanted = new Set(own.merges);
  const here = new Set(merged);
  return [
    ...merged
      .filter((ref) => !wanted.has(ref) && coversUsed(own, ref))
      .map((ref) =>
        misleading(`${own.name}!${ref}`, "cells are merged, which hides all but the first", "", ref, "merged"),
      ),
    ...own.merges
      .filter((ref) => !here.has(ref))
      .map((ref) => misleading(`${own.name}!${ref}`, "merged cells were taken apart", ref, "", "unmerged")),
  ];
}

/** Merged cells beside a text hide what runs on over them. */
function coversUsed(own: OwnSheet, ref: string): boolean {
  const [first = "", last = first] = ref.split(":");
  const [from, to] = [addressParts(first), addressParts(last)];
  const bottom = Math.max(...own.used.map(({ row }) => row));
  return from.row <= bottom && to.row >= 1;
}

/** Rows, columns and cells of a sheet that cannot be seen. */
export function hiddenFindings(own: OwnSheet, sheet: BookSheet, frame: XmlElement): Finding[] {
  return [...columnFindings(own, frame), ...rowFindings(own, sheet, frame), ...mergeFindings(own, frame)];
}
