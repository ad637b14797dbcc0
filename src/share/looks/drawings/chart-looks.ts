import { within, type XmlElement } from "../../../xlsx/parts/xml-tree";

const childNamed = (parent: XmlElement | undefined, name: string) => parent?.children.find((one) => one.name === name);
const valOf = (element: XmlElement | undefined) => element?.given.get("val");
const numberIn = (parent: XmlElement, name: string) => Number(valOf(childNamed(parent, name)) ?? Number.NaN);
const isOff = (element: XmlElement) => ["0", "false"].includes(valOf(element) ?? "");

/** The least width and height of what is drawn, in shares of the chart; programs leave it over a half. */
const LEAST_PLOT = [0.4, 0.3] as const;
const LEAST_LEGEND = [0.1, 0.03] as const;
/** How near to the far edges a title or legend may begin, and how far from its own place it may be moved. */
const LAST_START = 0.95;
const MOST_MOVED = 0.05;

/** Whether what lies in a chart by a manual layout is tiny or out of the chart. */
function isLaidAway({ name, children }: XmlElement): boolean {
  const layout = children
    .filter((one) => one.name === "layout")
    .flatMap((one) => one.children)
    .find((one) => one.name === "manualLayout");
  if (!layout) return false;
  const byEdge = (mode: string) => valOf(childNamed(layout, mode)) === "edge";
  const least = name === "plotArea" ? LEAST_PLOT : name === "legend" ? LEAST_LEGEND : [0, 0];
  return [
    { start: numberIn(layout, "x"), size: numberIn(layout, "w"), mode: "xMode", sizeMode: "wMode", least: least[0]! },
    { start: numberIn(layout, "y"), size: numberIn(layout, "h"), mode: "yMode", sizeMode: "hMode", least: least[1]! },
  ].some(({ start, size, mode, sizeMode, least }) => {
    const length = byEdge(sizeMode) ? size - start : size;
    if (length < least) return true;
    return byEdge(mode) ? start < -MOST_MOVED || start > LAST_START - least : Math.abs(start) > MOST_MOVED;
  });
}

const isOver = (element: XmlElement) => element.children.some((one) => one.name === "overlay" && !isOff(one));

/** Whether what is drawn, a title or the key is tiny, laid out of the chart, or over what is drawn. */
export const isLaidOtherwise = (all: readonly XmlElement[]): boolean =>
  all.some((one) => ["plotArea", "title", "legend"].includes(one.name) && (isLaidAway(one) || isOver(one)));

/** Turns that programs give words of a chart by themselves [1/60000 °]: none, on its side along an axis, as it fits. */
const TURNS = ["0", "-5400000", "-2700000", "-60000000"];
export const isTurned = ({ name, given }: XmlElement): boolean =>
  name === "bodyPr" && (!TURNS.includes(given.get("rot") ?? "0") || (given.get("vert") ?? "horz") !== "horz");

const CHANGES = /^(lum|sat|hue|alpha|red|green|blue)\w*$|^(tint|shade|comp|inv|gray|gamma|invGamma)$/;
const WHOLE = 100_000;
/** Whether a colour is made lighter, darker or seen through by what stands in it. */
export const isAltered = ({ name, children }: XmlElement): boolean =>
  name === "srgbClr" &&
  children.some((one) => CHANGES.test(one.name) && !(one.name === "alpha" && Number(valOf(one)) === WHOLE));

/** Theme colours that words have by themselves; no other one is read on paper for sure. */
const DARK = ["tx1", "dk1", "tx2", "dk2"];
const MOST_LIGHTENED = 50_000;
/** Whether words have no colour, one that is altered, or one of the theme that is light. */
export function isFaint(words: XmlElement): boolean {
  if (childNamed(words, "noFill")) return true;
  return [...within(words)].some((colour) => {
    if (isAltered(colour)) return true;
    if (colour.name === "prstClr") return valOf(colour) !== "black";
    if (colour.name === "sysClr") return valOf(colour) !== "windowText";
    if (colour.name !== "schemeClr") return false;
    const lightened = colour.children.some(
      (one) =>
        (one.name === "lumOff" && Number(valOf(one)) > MOST_LIGHTENED) ||
        (one.name === "alpha" && Number(valOf(one)) !== WHOLE) ||
        one.name === "tint",
    );
    return lightened || !DARK.includes(valOf(colour) ?? "");
  });
}

const MOST_GAP = 250;
const MOST_OVERLAP = 50;
/** Whether columns are hair-thin, lie behind each other, or stacked ones do not lie upon each other. */
export function areColumnsOtherwise(all: readonly XmlElement[], stacked: boolean): boolean {
  const given = (name: string) => all.filter((one) => one.name === name).map((one) => Number(valOf(one) ?? 0));
  const overlaps = given("overlap");
  return (
    given("gapWidth").some((gap) => !(gap <= MOST_GAP)) ||
    all.some((one) => one.name === "barDir" && valOf(one) === "bar") ||
    (stacked ? overlaps.join() !== "100" : overlaps.some((overlap) => !(Math.abs(overlap) <= MOST_OVERLAP)))
  );
}

const LABELS = ["showVal", "showCatName", "showSerName", "showPercent", "showBubbleSize"];
/** Whether words or numbers are written on what is drawn; programs write that none are. */
export const isLabelled = (all: readonly XmlElement[]): boolean =>
  all.some((one) => LABELS.includes(one.name) && !isOff(one));
