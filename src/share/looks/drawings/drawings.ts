import { cellAt } from "../../../cells/places";
import { areaOf } from "../../../cells/sheet-area";
import { isMain, isRelations } from "../../../xlsx/parts/namespaces";
import { relationsOf, textOf } from "../../../xlsx/parts/relations";
import type { BookSheet, FileBook } from "../../../xlsx/parts/workbook-file";
import { childrenOf, within, type XmlElement, xmlTree } from "../../../xlsx/parts/xml-tree";
import { added, type Finding, misleading } from "../../finding";
import { shortened } from "../../shortened";
import { foreignIn, isDrawn } from "../book/foreign";
import { FAR, isFarOff } from "../sheets/far-beside";
import type { OwnSheet } from "../sheets/own-sheet";
import { chartFindings, inOwnOrder } from "./charts";

const NOTE = "a note";
/** Shapes of the older drawings, which also draw the notes. */
const VML_SHAPES = ["shape", "rect", "roundrect", "oval", "line", "polyline", "curve", "arc", "image", "group"];
const KNOWN_RELATIONS = [
  "drawing",
  "comments",
  "vmlDrawing",
  "printerSettings",
  "customProperty",
  "hyperlink",
  "threadedComment",
  "person",
];

interface Placed {
  what: string;
  chart: string | null;
  /** What its frame says or does beside showing it; "" for nothing. */
  frame: string;
  /** What it is called where it is chosen. */
  name: string;
  /** Cells that it covers; null where its place is not by cells. */
  box: { top: number; left: number; bottom: number; right: number } | null;
}

/** Charts are named by programs in each language: a word or two and a number. */
const USUAL_NAME = /^([\p{L}\p{M}'-]+ ?){0,3}\d{0,4}$/u;
const childNamed = (parent: XmlElement | undefined, name: string) => parent?.children.find((one) => one.name === name);
const PLACE = /^\s*-?\d+\s*$/;
const numberIn = (parent: XmlElement | undefined, name: string) => {
  const text = childNamed(parent, name)?.text ?? "";
  return PLACE.test(text) ? Number(text) : Number.NaN;
};
const WIDTH_OF_A_COLUMN_EMU = 500_000;
const HEIGHT_OF_A_ROW_EMU = 190_000;

const CORNERS = ["from", "to", "ext", "pos", "col", "row", "colOff", "rowOff"];

/** How far from its cell a corner may be [EMU]: further is no place by cells. */
const MOST_OFFSET_EMU = 20_000_000;

function boxOf(anchor: XmlElement): Placed["box"] {
  const names = [anchor, ...anchor.children].map(({ children }) => children.map(({ name }) => name));
  if (names.some((all) => CORNERS.some((name) => all.indexOf(name) !== all.lastIndexOf(name)))) return null;
  const [from, to, extent] = ["from", "to", "ext"].map((name) => childNamed(anchor, name));
  const offsets = [from, to].flatMap((corner) => ["colOff", "rowOff"].map((name) => numberIn(corner, name)));
  if (offsets.some((offset) => offset < 0 || offset > MOST_OFFSET_EMU)) return null;
  const [top, left] = [numberIn(from, "row"), numberIn(from, "col")];
  if (!Number.isFinite(top) || !Number.isFinite(left)) return null;
  if (to) {
    const [bottom, right] = [numberIn(to, "row"), numberIn(to, "col")];
    if (!(bottom >= top && right >= left)) return null;
    return { top: top + 1, left: left + 1, bottom: bottom + 1, right: right + 1 };
  }
  const size = (name: string, one: number) => Math.ceil(Number(extent?.given.get(name) ?? 0) / one);
  return {
    top: top + 1,
    left: left + 1,
    bottom: top + 1 + size("cy", HEIGHT_OF_A_ROW_EMU),
    right: left + 1 + size("cx", WIDTH_OF_A_COLUMN_EMU),
  };
}

/** What makes an anchor more than the frame of one chart. */
const BESIDE_CHART = ["sp", "cxnSp", "grpSp", "contentPart", "AlternateContent"];
const OFF = ["0", "false"];

/** What the frame of a chart does beside showing it. */
function frameSaid(inside: readonly XmlElement[]): string {
  const given = (name: string, of: string) => inside.find((one) => one.name === name)?.given.get(of) ?? "";
  if (OFF.includes(given("clientData", "fPrintsWithSheet"))) return "is not printed";
  if (inside.some(({ name }) => name === "hlinkClick" || name === "hlinkHover"))
    return "leads elsewhere when it is chosen";
  const turned = ["rot", "flipH", "flipV"].some((name) => !["", "0", "false"].includes(given("xfrm", name)));
  if (turned) return "is turned";
  if (given("graphicFrame", "macro") !== "") return "runs something when it is chosen";
  const words = given("cNvPr", "descr") || given("cNvPr", "title");
  return words === "" ? "" : `says "${shortened(words, 60)}" to those who hear it`;
}

function placedIn({ parts }: FileBook, part: string): Placed[] {
  const relations = relationsOf(parts, part);
  return xmlTree(textOf(parts, part)).children.flatMap((anchor) => {
    const inside = [...within(anchor)];
    if (inside.length > 0 && inside.filter(({ name }) => name === "cNvPr").every(isHidden) && inside.some(isHidden))
      return [];
    const charts = inside.filter(({ name }) => name === "chart");
    const id = charts[0]?.spaced(isRelations, "id");
    const relation = relations.find((one) => one.id === id && one.kind === "chart");
    const picture = inside.some(({ name }) => name === "pic");
    const more =
      foreignIn(anchor, isDrawn) !== undefined ||
      picture ||
      charts.length > 1 ||
      inside.some(({ name }) => BESIDE_CHART.includes(name));
    return {
      frame: frameSaid(inside),
      name: inside.find((one) => one.name === "cNvPr")?.given.get("name") ?? "",
      what: relation && !more ? "a chart" : picture ? "a picture" : "a drawing or text box",
      chart: more ? null : (relation?.part ?? null),
      box: boxOf(anchor),
    };
  });
}

const isHidden = ({ name, given }: XmlElement) => name === "cNvPr" && ["1", "true"].includes(given.get("hidden") ?? "");

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

interface Box {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

const chartBox = (range: string): Box => {
  const { top, left, bottom, right } = areaOf(range, "")!;
  return { top, left, bottom, right };
};
const meets = (one: Box, other: Box) =>
  one.top <= other.bottom && one.bottom >= other.top && one.left <= other.right && one.right >= other.left;

/** Whether a chart is where the workbook has it, but for a row or column, and no smaller than half of that. */
function isInPlace(own: Box, box: Box | null): boolean {
  if (!box) return false;
  const inside =
    box.top >= own.top - 1 && box.left >= own.left - 1 && box.bottom <= own.bottom + 2 && box.right <= own.right + 2;
  return (
    inside && 2 * (box.bottom - box.top) >= own.bottom - own.top && 2 * (box.right - box.left) >= own.right - own.left
  );
}

/** Whether a shape of the older drawings is a note, which its style has to hide: some programs show it otherwise. */
const isNote = ({ children }: XmlElement) =>
  children.some(({ name, given }) => name === "ClientData" && given.get("ObjectType") === "Note");

/** Whether a style hides a shape, and says nothing else of that. */
function isHiddenBy(style: string): boolean {
  const said = style.split(";").flatMap((one) => (/^\s*visibility\s*:/i.test(one) ? [one.split(":")[1]!.trim()] : []));
  return said.length > 0 && said.every((one) => one.toLowerCase() === "hidden");
}

/** Cells with notes, and whether a note is always open. */
function noteFindings(book: FileBook, own: OwnSheet, sheet: BookSheet): Finding[] {
  const relations = relationsOf(book.parts, sheet.part);
  const trees = (kind: string) =>
    relations
      .filter((one) => one.kind === kind && book.parts.has(one.part))
      .map(({ part }) => xmlTree(textOf(book.parts, part)));
  const talks = relations.some(({ type }) => type.endsWith("/threadedComment"));
  const notes = trees("comments").flatMap((tree) => [...within(tree)].filter(({ name }) => name === "comment"));
  const vml = trees("vmlDrawing").flatMap((tree) => [...within(tree)]);
  const open = vml.some(
    (shape) => shape.name === "Visible" || (isNote(shape) && !isHiddenBy(shape.given.get("style") ?? "")),
  );
  const drawn = vml.filter(({ name }) => VML_SHAPES.includes(name));
  const controls = vml.filter(({ name, given }) => name === "ClientData" && given.get("ObjectType") !== "Note");
  const shapes = [...drawn.filter((shape) => !isNote(shape)), ...controls];
  return [
    ...notes.map(({ given }) => added(`${own.name}!${given.get("ref") ?? ""}`, `has ${NOTE}`, "", "", NOTE)),
    ...(talks && notes.length === 0 ? [added(own.name, "has remarks of a conversation", "", "", NOTE)] : []),
    ...(open ? [misleading(own.name, "a note is always open and can lie over figures")] : []),
    ...(shapes.length > 0 ? [misleading(own.name, "holds form controls or drawings laid over its cells")] : []),
  ];
}

function otherRelations(book: FileBook, own: OwnSheet, sheet: BookSheet): Finding[] {
  return relationsOf(book.parts, sheet.part)
    .filter(
      ({ kind, type, part }) =>
        (!KNOWN_RELATIONS.includes(kind) && !/threadedComment$/.test(type)) || (part !== "" && !book.parts.has(part)),
    )
    .map(({ kind }) =>
      misleading(own.name, `carries something that Canfall's own workbook does not${kind ? ` (${kind})` : ""}`),
    );
}

/** What is drawn over a sheet's cells, and what its charts draw. */
export function drawingFindings(book: FileBook, own: OwnSheet, sheet: BookSheet, frame: XmlElement): Finding[] {
  const last = {
    row: Math.max(...own.used.map(({ row }) => row)),
    column: Math.max(...own.used.map(({ column }) => column)),
  };
  const asked = childrenOf(frame, isMain, "drawing").map((one) => one.spaced(isRelations, "id"));
  const placed = relationsOf(book.parts, sheet.part)
    .filter(({ id, kind, part }) => kind === "drawing" && asked.includes(id) && book.parts.has(part))
    .flatMap(({ part }) => placedIn(book, part));
  const charts = placed.flatMap((one) =>
    one.chart && book.parts.has(one.chart) ? [{ ...one, chart: one.chart, one }] : [],
  );
  const kept = inOwnOrder(book, own, charts);
  const loose = placed.filter((placed) => !kept.some(({ one }) => one === placed));
  const boxes = own.charts.map(({ over }) => chartBox(over));
  const moved = kept.filter(({ box }, index) => !isInPlace(boxes[index]!, box));
  return [
    ...loose.map(({ what, box }) => {
      const where = box ? `${own.name}!${cellAt(box.top, box.left)}` : own.name;
      return !box ||
        what === "a drawing or text box" ||
        coversFigures(own, box, last) ||
        boxes.some((chart) => meets(chart, box))
        ? misleading(where, `${what} lies over its cells`, "", "", "over")
        : isFarOff(own, sheet, frame, box.bottom, box.right)
          ? misleading(where, `${what} ${FAR}`)
          : added(where, `${what} was put beside its cells`, "", "", "beside");
    }),
    ...moved.map(() => misleading(own.name, "a chart is in another place, or too small to read")),
    ...kept.flatMap(({ frame: said }) => (said === "" ? [] : [misleading(own.name, `a chart ${said}`)])),
    ...kept.flatMap(({ name }) =>
      USUAL_NAME.test(name)
        ? []
        : [added(own.name, `a chart is called "${shortened(name, 60)}", which is shown where it is chosen`)],
    ),
    ...(kept.length < own.charts.length ? [added(own.name, "a chart of the workbook was taken away")] : []),
    ...chartFindings(
      book,
      own,
      kept.map(({ chart }) => chart),
    ),
    ...noteFindings(book, own, sheet),
    ...otherRelations(book, own, sheet),
  ];
}
