import { isOn, within, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { isStrange } from "../cells/fonts";

/** What charts of the workbook are made of, and what programs add to them without showing anything else. */
const PARTS: ReadonlySet<string> = new Set(
  [
    "chartSpace chart plotArea barChart lineChart scatterChart catAx valAx dateAx legend title autoTitleDeleted lang",
    "roundedCorners style printSettings headerFooter pageMargins pageSetup protection clrMapOvr date1904",
    "ser idx order tx strRef numRef f strCache numCache ptCount pt v formatCode cat val xVal yVal spPr invertIfNegative",
    "marker symbol size smooth barDir grouping varyColors gapWidth overlap scatterStyle axId dLbls numFmt txPr",
    "showLegendKey showVal showCatName showSerName showPercent showBubbleSize showLeaderLines separator dLblPos",
    "scaling orientation delete axPos majorGridlines majorTickMark minorTickMark tickLblPos crossAx crosses",
    "crossBetween auto lblAlgn lblOffset noMultiLvlLbl legendPos layout manualLayout layoutTarget xMode yMode wMode",
    "hMode x y w h overlay plotVisOnly dispBlanksAs rich bodyPr lstStyle p pPr r rPr defRPr endParaRPr t latin ea cs",
    "ln solidFill noFill srgbClr schemeClr sysClr prstClr lumMod lumOff alpha prstDash round miter bevel headEnd tailEnd",
    "effectLst spAutoFit noAutofit normAutofit extLst ext uniqueId AlternateContent Choice Fallback",
    "dataDisplayOptions16 dispNaAsBlank",
  ].flatMap((names) => names.split(" ")),
);

/** The first part of a chart that the workbook's charts do not have. */
export const strangePart = (all: readonly XmlElement[]): string | undefined =>
  all.find(({ name }) => !PARTS.has(name))?.name;

/** [hundredths of a point]. */
const LARGEST_LETTERS = 2800;
const MOST_SPREAD = 300;
const WORDS = ["rPr", "defRPr", "endParaRPr"];
const FONTS = ["latin", "ea", "cs"];

/** Whether words of a chart are huge, struck out, raised, spread apart, from right to left, or in another font than letters. */
export function areOddWords({ name, given }: XmlElement): boolean {
  if (FONTS.includes(name)) {
    const font = given.get("typeface") ?? "";
    return given.get("charset") === "2" || (font !== "" && !font.startsWith("+") && isStrange(font));
  }
  if (name === "pPr") return isOn(given.get("rtl"));
  if (!WORDS.includes(name)) return false;
  return (
    Number(given.get("sz") ?? 0) > LARGEST_LETTERS ||
    (given.get("strike") ?? "noStrike") !== "noStrike" ||
    Number(given.get("baseline") ?? 0) !== 0 ||
    (given.get("cap") ?? "none") !== "none" ||
    Math.abs(Number(given.get("spc") ?? 0)) > MOST_SPREAD
  );
}

const USUAL_MAP: Readonly<Record<string, string>> = { bg1: "lt1", tx1: "dk1", bg2: "lt2", tx2: "dk2" };
/** [English metric units]: 3 points. */
const THICKEST_LINE = 38_100;
const MOST_OFFSET = 200;
/** Styles of charts by number, to which newer programs add a hundred; those after this one are on a dark ground. */
const LAST_ON_PAPER = 40;
const CHOSEN_BY_NEWER = 100;

/** Whether a setting of a chart changes what it draws: gaps, days, lines, columns below nought, words far from an axis. */
export function isOddSetting({ name, given }: XmlElement): boolean {
  const value = given.get("val") ?? "";
  switch (name) {
    case "clrMapOvr":
      return [...given].some(([of, to]) => to !== (USUAL_MAP[of] ?? of));
    case "ln":
      return Number(given.get("w") ?? 0) > THICKEST_LINE;
    case "lblOffset":
      return Number(value) > MOST_OFFSET;
    case "style":
      return Number(value) % CHOSEN_BY_NEWER > LAST_ON_PAPER;
    case "dispBlanksAs":
      return value !== "gap";
    case "date1904":
    case "invertIfNegative":
    case "plotVisOnly":
      return given.has("val") ? isOn(value) : true;
    default:
      return false;
  }
}

const AXES = ["catAx", "valAx", "dateAx"];
export const UPWARDS = ["l", "r"];
/** A program writes so for a title without words. */
export const NO_WORDS = "None";
const squeezed = (text: string) => text.replace(/\s+/g, "");

/** Whether an axis has another title than the workbook's. */
export function saysOther(axis: XmlElement, [across, up]: readonly [across: string, up: string]): boolean {
  if (!AXES.includes(axis.name)) return false;
  const child = (name: string) => axis.children.find((one) => one.name === name);
  const wanted = UPWARDS.includes(child("axPos")?.given.get("val") ?? "b") ? up : across;
  const title = child("title");
  const words = title ? [...within(title)].map(({ name, text }) => (name === "t" ? text : "")).join("") : "";
  return squeezed(words) !== squeezed(wanted) && !(wanted === "" && words.trim() === NO_WORDS);
}
