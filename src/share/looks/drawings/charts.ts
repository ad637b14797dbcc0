import { relationsOf, textOf } from "../../../xlsx/parts/relations";
import type { FileBook } from "../../../xlsx/parts/workbook-file";
import { within, type XmlElement, xmlTree } from "../../../xlsx/parts/xml-tree";
import { added, type Finding, misleading } from "../../finding";
import { shortened } from "../../shortened";
import { foreignIn, isDrawn } from "../book/foreign";
import { contrast } from "../cells/colours";
import type { OwnSheet } from "../sheets/own-sheet";
import { areColumnsOtherwise, isAltered, isFaint, isLabelled, isLaidOtherwise, isTurned } from "./chart-looks";
import { areOddWords, isOddSetting, NO_WORDS, saysOther, strangePart, UPWARDS } from "./chart-parts";
import { isArranged, isEdgedOtherwise, isFilledWith, keepsOther, rangeOn } from "./chart-series";

/** Formats that show a number or a day as it is: no scale, no further digits or words. */
const PLAIN_FORMAT = /^(General|@|[#,0]*0(\.0+)?|(?=.*[ymd])([ymd]|\\?[-/. :])+)?$/i;
const DAYS = /[ymd]/i;
/** Some programs write the name of a series as a formula. */
const IN_QUOTES = /^".*"$/s;
const LITERAL = ["numLit", "strLit"];
const LAID_OVER = ["userShapes", "trendline", "errBars", "view3D", "upDownBars", "dPt"];
/** What programs put beside a chart: styles for a person to choose from. */
const CHART_RELATIONS = /\/(chartStyle|chartColorStyle)$/;
const FILLED_IN = ["blipFill", "gradFill", "pattFill"];
/** A series that programs leave out by a list of their own. */
const LEFT_OUT = /^filtered\w*Series$/;
const KINDS = { bar: "barChart", line: "lineChart", scatter: "scatterChart" } as const;
/** Where programs put what others do not read; what is in it is looked at by its name. */
const APART = ["extLst", "AlternateContent"];
const LEAST_LETTERS = 600;
const PAPER = "ffffff";

const childNamed = (parent: XmlElement | undefined, name: string) => parent?.children.find((one) => one.name === name);

interface Drawn {
  references: string[];
  /** Words that stand in the chart itself, none of a cell. */
  words: string[];
  /** An axis was bent: turned, cut or on another scale. */
  bent: boolean;
  literal: boolean;
  laidOver: boolean;
  otherFormat: boolean;
  /** Elements of its series. */
  series: XmlElement[];
  /** What it is drawn as: barChart and the like, and how its columns are put together. */
  kinds: string[];
  grouping: string;
  /** Something of it is not drawn: an axis, a series, words in tiny letters. */
  leftOut: boolean;
  /** A picture or a pattern is in it. */
  filledIn: boolean;
  legend: boolean;
  /** All that it is made of. */
  all: XmlElement[];
}

const WORDS_IN = ["txPr", "rPr", "defRPr"];
const BEHIND = ["chartSpace", "plotArea"];
const LIGHT = 1.6;
const WHITE = ["bg1", "lt1"];

/** Whether words are of nearly the colour of paper, or what is behind a chart is of another. */
function isUnreadable(element: XmlElement): boolean {
  const onPaper = (from: XmlElement) =>
    [...within(from)]
      .filter(({ name }) => name === "srgbClr")
      .map(({ given }) => contrast(given.get("val") ?? "", PAPER));
  if (WORDS_IN.includes(element.name)) return onPaper(element).some((reads) => !(reads >= LIGHT));
  if (!BEHIND.includes(element.name)) return false;
  const fill = childNamed(childNamed(element, "spPr"), "solidFill");
  if (!fill) return false;
  const ofTheme = fill.children.some(
    ({ name, given }) => name === "schemeClr" && !WHITE.includes(given.get("val") ?? ""),
  );
  return ofTheme || onPaper(fill).some((reads) => !(reads < LIGHT));
}

/** Whether the numbers of an axis that goes upwards are written as days. */
const showsDaysUpwards = (axis: XmlElement): boolean =>
  axis.name === "valAx" &&
  UPWARDS.includes(childNamed(axis, "axPos")?.given.get("val") ?? "") &&
  DAYS.test((childNamed(axis, "numFmt")?.given.get("formatCode") ?? "").replace(/general/i, ""));

/** What a chart draws. */
function drawnBy({ parts }: FileBook, part: string): Drawn {
  const chart = xmlTree(textOf(parts, part));
  const all = [chart, ...within(chart)];
  const formulas = all.filter(({ name }) => name === "f").map(({ text }) => text.trim());
  const has = (...names: string[]) => all.some(({ name }) => names.includes(name));
  return {
    references: formulas.filter((text) => !IN_QUOTES.test(text)).map((text) => text.replaceAll("'", "")),
    words: [
      ...all.flatMap(({ name, text }) => (name === "t" && text.trim() !== "" ? [text.trim()] : [])),
      ...formulas.filter((text) => IN_QUOTES.test(text)).map((text) => text.slice(1, -1)),
      ...all.flatMap(({ name, children }) =>
        name === "tx" ? children.filter((one) => one.name === "v").map(({ text }) => text) : [],
      ),
    ],
    bent:
      has("logBase", "min", "max", "crossesAt", "majorUnit", "tickLblSkip") ||
      all.some(({ name, given }) => name === "crosses" && given.get("val") !== "autoZero") ||
      all.some(({ name, given }) => name === "orientation" && given.get("val") === "maxMin"),
    literal: has(...LITERAL),
    laidOver: has(...LAID_OVER),
    otherFormat:
      has("dispUnits") ||
      all.some(({ name, given }) => name === "numFmt" && !PLAIN_FORMAT.test(given.get("formatCode") ?? "")) ||
      all.some(showsDaysUpwards),
    series: all.filter(({ name }) => name === "ser"),
    kinds: all.filter(({ name }) => /^\w+Chart$/.test(name)).map(({ name }) => name),
    grouping: all.find(({ name }) => name === "grouping")?.given.get("val") ?? "standard",
    leftOut:
      all.some(({ name }) => LEFT_OUT.test(name)) ||
      all.some(({ name, given }) => name === "tickLblPos" && given.get("val") === "none") ||
      all.some(({ name, given }) => name === "delete" && given.get("val") !== "0" && given.get("val") !== "false") ||
      all.some(({ given }) => Number(given.get("sz") ?? LEAST_LETTERS) < LEAST_LETTERS),
    filledIn: has(...FILLED_IN) || all.some(isUnreadable),
    legend: has("legend"),
    all,
  };
}

function ownReferences(own: OwnSheet, index: number): Set<string> {
  return new Set(
    own.charts[index]?.series.flatMap(({ name, across, values }) => [
      ...(name.startsWith("=") ? [rangeOn(name.slice(1), own.name)] : []),
      rangeOn(across, own.name),
      rangeOn(values, own.name),
    ]) ?? [],
  );
}

/** What a chart's references lead to, on the sheet that it should draw. */
const drawnCells = (references: readonly string[], own: OwnSheet): Set<string> =>
  new Set(references.map((reference) => rangeOn(reference, own.name)));

const isSame = (one: ReadonlySet<string>, other: ReadonlySet<string>) =>
  one.size === other.size && [...one].every((cells) => other.has(cells));

/** The charts of a file in the order of the workbook's own, by what they draw; programs change the order. */
export function inOwnOrder<T extends { chart: string }>(book: FileBook, own: OwnSheet, charts: readonly T[]): T[] {
  const left = charts.map((placed) => ({ placed, cells: drawnCells(drawnBy(book, placed.chart).references, own) }));
  const found = own.charts.map((_, index) => {
    const at = left.findIndex(({ cells }) => isSame(cells, ownReferences(own, index)));
    return at < 0 ? undefined : left.splice(at, 1)[0]!.placed;
  });
  return found.flatMap((placed) => placed ?? left.shift()?.placed ?? []);
}

/** What of the charts of a sheet is other than the workbook's: cells, words, scales and colours. */
export function chartFindings(book: FileBook, own: OwnSheet, charts: readonly string[]): Finding[] {
  return charts.flatMap((part, index) => {
    const { references, words, bent, literal, laidOver, otherFormat, series, ...drawing } = drawnBy(book, part);
    const here = drawnCells(references, own);
    const wanted = ownReferences(own, index);
    const { title = "", axes = ["", ""] as const, series: drawn = [], type = "bar", stacked } = own.charts[index] ?? {};
    const said = (when: boolean, what: string, was = "", is = "") =>
      when ? [misleading(own.name, what, was, is)] : [];
    const all = words.join(" ");
    const strange = words.filter(
      (word) => ![title, ...axes, ...drawn.map(({ name }) => name), NO_WORDS].some((known) => known.includes(word)),
    );
    const otherKind =
      drawing.kinds.join() !== KINDS[type] ||
      (type === "bar" && (drawing.grouping === "stacked") !== !!stacked) ||
      (type === "bar" && areColumnsOtherwise(drawing.all, !!stacked));
    const colours = series.map((one) => [...within(one)].map(({ given }) => given.get("val")?.toLowerCase()));
    const otherColour =
      drawn.some(({ colour }, i) => !colours[i]?.includes(colour.slice(1).toLowerCase())) ||
      drawing.all.some(isAltered) ||
      (type === "bar" &&
        drawn.some(
          ({ colour }, i) => !series[i] || !isFilledWith(colour, series[i]) || isEdgedOtherwise(colour, series[i]),
        ));
    const isOwn = own.charts[index] !== undefined;
    const arranged = !isOwn || isArranged(own.charts[index]!, own.name, series);
    const strangely = strangePart(drawing.all) ?? foreignIn(drawing.all[0]!, isDrawn, APART)?.name;
    const unread = drawing.all.some(
      (one) => isTurned(one) || areOddWords(one) || (WORDS_IN.includes(one.name) && isFaint(one)),
    );
    return [
      ...said(literal || !isSame(here, wanted), `the chart "${title}" draws other cells than the workbook's`),
      ...said(
        isSame(here, wanted) && !arranged,
        `the series of the chart "${title}" are exchanged or in another order`,
      ),
      ...said(drawing.all.some(isOddSetting), `the chart "${title}" is set to draw other than the workbook's`),
      ...said(
        isOwn && drawing.all.some((one) => saysOther(one, axes)),
        `an axis of the chart "${title}" has another title`,
      ),
      ...said(
        strangely !== undefined,
        `the chart "${title}" has a part that the workbook's does not have (${strangely})`,
      ),
      ...said(title !== "" && !all.includes(title), "a chart has another title", title, shortened(all, 60)),
      ...said(strange.length > 0, `the chart "${title}" says "${shortened(strange[0] ?? "", 60)}"`, "", strange[0]),
      ...said(otherKind, `the chart "${title}" is drawn in another way than the workbook's`),
      ...said(drawing.leftOut || (drawn.length > 1 && !drawing.legend), `a part of the chart "${title}" is not shown`),
      ...said(isLaidOtherwise(drawing.all), `a part of the chart "${title}" is tiny, out of the chart or over another`),
      ...said(unread, `words of the chart "${title}" are turned or hard to see`),
      ...said(isLabelled(drawing.all), `words or numbers are written on what the chart "${title}" draws`),
      ...said(drawing.filledIn, `the chart "${title}" has a picture or a pattern in it`),
      ...said(bent, `an axis of the chart "${title}" was set by hand`),
      ...said(otherFormat, `the chart "${title}" shows its numbers in another format`),
      ...said(
        relationsOf(book.parts, part).some(({ type }) => !CHART_RELATIONS.test(type)),
        `the chart "${title}" points to a part that the workbook does not have`,
      ),
      ...said(laidOver, `something is laid over the chart "${title}"`),
      ...said(otherColour, `the chart "${title}" draws its series in other colours`),
      ...(keepsOther(book, series)
        ? [added(own.name, `the chart "${title}" keeps numbers or words from before its cells changed`)]
        : []),
    ];
  });
}
