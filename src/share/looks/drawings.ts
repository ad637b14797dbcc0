import { cellAt } from "../../cells/places";
import { areaOf } from "../../cells/sheet-area";
import { kindOf } from "../../xlsx/parts/namespaces";
import { relationsOf, textOf } from "../../xlsx/parts/relations";
import type { BookSheet, FileBook } from "../../xlsx/parts/workbook-file";
import { within, type XmlElement, xmlTree } from "../../xlsx/parts/xml-tree";
import { added, type Finding, misleading } from "../finding";
import type { OwnSheet } from "./own-sheet";

const NOTE = "a note";
const KNOWN_RELATIONS = [
  "drawing",
  "comments",
  "vmlDrawing",
  "printerSettings",
  "hyperlink",
  "threadedComment",
  "person",
];

interface Placed {
  what: string;
  chart: string | null;
  /** Cells that it covers; null where its place is not by cells. */
  box: { top: number; left: number; bottom: number; right: number } | null;
}

const childNamed = (parent: XmlElement | undefined, name: string) => parent?.children.find((one) => one.name === name);
const numberIn = (parent: XmlElement | undefined, name: string) => Number(childNamed(parent, name)?.text ?? Number.NaN);
const WIDTH_OF_A_COLUMN_EMU = 500_000;
const HEIGHT_OF_A_ROW_EMU = 190_000;

function boxOf(anchor: XmlElement): Placed["box"] {
  const [from, to, extent] = ["from", "to", "ext"].map((name) => childNamed(anchor, name));
  const [top, left] = [numberIn(from, "row"), numberIn(from, "col")];
  if (!Number.isFinite(top) || !Number.isFinite(left)) return null;
  if (to) return { top: top + 1, left: left + 1, bottom: numberIn(to, "row") + 1, right: numberIn(to, "col") + 1 };
  const size = (name: string, one: number) => Math.ceil(Number(extent?.given.get(name) ?? 0) / one);
  return {
    top: top + 1,
    left: left + 1,
    bottom: top + 1 + size("cy", HEIGHT_OF_A_ROW_EMU),
    right: left + 1 + size("cx", WIDTH_OF_A_COLUMN_EMU),
  };
}

function placedIn({ parts }: FileBook, part: string): Placed[] {
  const relations = relationsOf(parts, part);
  return xmlTree(textOf(parts, part)).children.map((anchor) => {
    const inside = [...within(anchor)];
    const chart = inside.find(({ name }) => name === "chart");
    const id = chart && [...chart.raw].find(([name]) => name.endsWith(":id"))?.[1];
    const relation = relations.find((one) => one.id === id && one.kind === "chart");
    const picture = inside.some(({ name }) => name === "pic");
    return {
      what: relation ? "a chart" : picture ? "a picture" : "a drawing or text box",
      chart: relation?.part ?? null,
      box: boxOf(anchor),
    };
  });
}

const places = (own: OwnSheet) => new Set(own.used.map(({ row, column }) => cellAt(row, column)));

function coversFigures(own: OwnSheet, box: NonNullable<Placed["box"]>, last: { row: number; column: number }): boolean {
  const used = places(own);
  for (let row = box.top; row <= Math.min(box.bottom, last.row); row += 1) {
    for (let column = box.left; column <= Math.min(box.right, last.column); column += 1) {
      if (used.has(cellAt(row, column))) return true;
    }
  }
  return false;
}

/** The references that a chart draws, in their order, and the words of its titles. */
function drawnBy({ parts }: FileBook, part: string) {
  const all = [...within(xmlTree(textOf(parts, part)))];
  const references = all.filter(({ name }) => name === "f").map(({ text }) => text.trim().replaceAll("'", ""));
  const words = all.filter(({ name }) => name === "t").map(({ text }) => text);
  const bent = all.some(
    ({ name, given }) => name === "logBase" || (name === "orientation" && given.get("val") === "maxMin"),
  );
  const bounds = all.some(({ name }) => name === "min" || name === "max");
  return { references, words: words.join(" "), bent: bent || bounds };
}

function ownReferences(own: OwnSheet, index: number): Set<string> {
  const chart = own.charts[index];
  const at = (range: string) => {
    const area = areaOf(range, own.name);
    return area ? `${area.top} ${area.left} ${area.bottom} ${area.right}` : range;
  };
  return new Set(
    chart?.series.flatMap(({ name, across, values }) => [
      ...(name.startsWith("=") ? [at(name.slice(1))] : []),
      at(across),
      at(values),
    ]) ?? [],
  );
}

function chartFindings(book: FileBook, own: OwnSheet, charts: readonly string[]): Finding[] {
  return charts.flatMap((part, index) => {
    const { references, words, bent } = drawnBy(book, part);
    const here = new Set(
      references.map((reference) => {
        const area = areaOf(reference.includes("!") ? reference.replace(/^(.*)!/, "'$1'!") : reference, own.name);
        return area?.sheet === own.name ? `${area.top} ${area.left} ${area.bottom} ${area.right}` : reference;
      }),
    );
    const wanted = ownReferences(own, index);
    const title = own.charts[index]?.title ?? "";
    const found: Finding[] = [];
    if ([...here].some((one) => !wanted.has(one)) || [...wanted].some((one) => !here.has(one))) {
      found.push(misleading(own.name, `the chart "${title}" draws other cells than the workbook's`));
    }
    if (title !== "" && !words.includes(title)) {
      found.push(misleading(own.name, "a chart has another title", title, words.slice(0, 60)));
    }
    if (bent) found.push(misleading(own.name, `an axis of the chart "${title}" was set by hand`));
    return found;
  });
}

/** Cells with notes, and whether a note is always open. */
function noteFindings(book: FileBook, own: OwnSheet, sheet: BookSheet): Finding[] {
  const relations = relationsOf(book.parts, sheet.part);
  const trees = (kind: string) =>
    relations
      .filter((one) => one.kind === kind && book.parts.has(one.part))
      .map(({ part }) => xmlTree(textOf(book.parts, part)));
  const notes = trees("comments").flatMap((tree) => [...within(tree)].filter(({ name }) => name === "comment"));
  const vml = trees("vmlDrawing").flatMap((tree) => [...within(tree)]);
  const open = vml.some(({ name }) => name === "Visible");
  const shapes = vml.filter(({ name, given }) => name === "ClientData" && given.get("ObjectType") !== "Note");
  return [
    ...notes.map(({ given }) => added(`${own.name}!${given.get("ref") ?? ""}`, `has ${NOTE}`, "", "", NOTE)),
    ...(open ? [misleading(own.name, "a note is always open and can lie over figures")] : []),
    ...(shapes.length > 0 ? [misleading(own.name, "holds form controls or drawings laid over its cells")] : []),
  ];
}

function otherRelations(book: FileBook, own: OwnSheet, sheet: BookSheet): Finding[] {
  return relationsOf(book.parts, sheet.part)
    .filter(
      ({ kind, type }) =>
        !KNOWN_RELATIONS.includes(kind) && !/threadedComment$/.test(type) && kindOf(type) !== "comments",
    )
    .map(({ kind }) =>
      misleading(own.name, `points to a part that the workbook does not have${kind ? ` (${kind})` : ""}`),
    );
}

/** What is drawn over a sheet's cells, and what its charts draw. */
export function drawingFindings(book: FileBook, own: OwnSheet, sheet: BookSheet): Finding[] {
  const last = {
    row: Math.max(...own.used.map(({ row }) => row)),
    column: Math.max(...own.used.map(({ column }) => column)),
  };
  const placed = relationsOf(book.parts, sheet.part)
    .filter(({ kind, part }) => kind === "drawing" && book.parts.has(part))
    .flatMap(({ part }) => placedIn(book, part));
  const charts = placed.flatMap(({ chart }) => (chart && book.parts.has(chart) ? [chart] : []));
  const kept = charts.slice(0, own.charts.length);
  const loose = placed.filter(({ chart }) => !chart || !kept.includes(chart));
  return [
    ...loose.map(({ what, box }) => {
      const where = box ? `${own.name}!${cellAt(box.top, box.left)}` : own.name;
      return !box || what === "a drawing or text box" || coversFigures(own, box, last)
        ? misleading(where, `${what} lies over its cells`, "", "", "over")
        : added(where, `${what} was put beside its cells`, "", "", "beside");
    }),
    ...(kept.length < own.charts.length ? [misleading(own.name, "a chart of the workbook is missing")] : []),
    ...chartFindings(book, own, kept),
    ...noteFindings(book, own, sheet),
    ...otherRelations(book, own, sheet),
  ];
}
