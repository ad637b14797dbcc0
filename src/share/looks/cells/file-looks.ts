import { isMain } from "../../../xlsx/parts/namespaces";
import { onlyRelation, relationsOf, textOf } from "../../../xlsx/parts/relations";
import type { FileBook } from "../../../xlsx/parts/workbook-file";
import { childOf, childrenOf, isOn, within, type XmlElement, xmlTree } from "../../../xlsx/parts/xml-tree";
import { BUILT_IN } from "./built-in-formats";
import { colourOf, themeColours } from "./colours";
import { isStrange } from "./fonts";
import { twofoldIn } from "./twofold";

/** How a cell looks, as far as looks can hide or change what it says. */
export interface Look {
  format: string;
  font: string;
  /** Its signs are not letters. */
  signs: boolean;
  /** [points]. */
  size: number;
  colour: string;
  struck: boolean;
  raised: boolean;
  /** Its letters are drawn as edges or with a shadow. */
  hollow: boolean;
  /** `rrggbb`; "pattern" where it is not one colour. */
  fill: string;
  crossed: boolean;
  /** Thick lines around it, which can be read as signs. */
  edged: boolean;
  /** It has a line or a fill, so that it takes room on a printed page. */
  drawn: boolean;
  across: string;
  turned: boolean;
  indent: number;
  /** Its signs run from right to left. */
  backwards: boolean;
  wrapped: boolean;
  shrunk: boolean;
  /** A button that opens a list lies over it. */
  button: boolean;
  /** Its formula is not shown above the sheet while the sheet is protected. */
  secret: boolean;
}

/** Formats that a file need not list and that programs of different countries show in different ways. */
const UNLISTED = '"a number format that each country shows its own way"';
/** Up to here a number means a format that programs know themselves, whatever a file lists for it. */
const LAST_KNOWN = 163;
const SIDES = ["left", "right", "top", "bottom", "start", "end"];
const THIN = ["none", "hair", "thin", "dotted", "dashed", "dashDot", "dashDotDot"];
export const isThick = (style: string | undefined): boolean => !THIN.includes(style ?? "none");
const SYMBOL_CHARSET = "2";
const flag = (element: XmlElement | undefined) => element !== undefined && isOn(element.given.get("val") ?? "1");

/** The looks that a file's cells number, and of its conditional formats. */
export interface FileLooks {
  cells: readonly Look[];
  /** Styles that conditional formats lay over cells. */
  laid: readonly XmlElement[];
  theme: readonly string[];
  indexed: readonly string[];
  /** Size of the font by which widths of columns are measured [points]. */
  usualSize: number;
  /** Its days are counted from 1904. */
  from1904: boolean;
  /** Why the looks can be read in more than one way; "" where they cannot. */
  twofold: string;
}

const isFilled = (element: XmlElement | undefined) =>
  (element?.children ?? []).some(
    ({ name, given }) => name === "gradientFill" || (given.get("patternType") ?? "none") !== "none",
  );

function fillOf(element: XmlElement | undefined, colour: (of: XmlElement | undefined, auto: string) => string): string {
  const pattern = childOf(element, isMain, "patternFill");
  if (!pattern) return element && element.children.length > 0 ? "pattern" : "ffffff";
  const type = pattern.given.get("patternType") ?? "none";
  if (type === "none") return "ffffff";
  const ink = childOf(pattern, isMain, "fgColor");
  return type === "solid" && ink ? colour(ink, "ffffff") : "pattern";
}

/** The fonts of a theme's texts and headings. */
function themeFonts(theme: XmlElement | null): Record<string, string | undefined> {
  const all = theme ? [...within(theme)] : [];
  const latin = (name: string) =>
    all
      .find((one) => one.name === name)
      ?.children.find((one) => one.name === "latin")
      ?.given.get("typeface");
  return { minor: latin("minorFont"), major: latin("majorFont") };
}

/** The looks of the styles and the theme of a file. */
export function fileLooks({ parts, main, workbook }: Pick<FileBook, "parts" | "main" | "workbook">): FileLooks {
  const relations = relationsOf(parts, main);
  const treeOf = (kind: string) => {
    const part = onlyRelation(relations, kind)?.part;
    return part && parts.has(part) ? xmlTree(textOf(parts, part)) : null;
  };
  const root = treeOf("styles") ?? undefined;
  const themeTree = treeOf("theme");
  const [theme, scheme] = [themeColours(themeTree), themeFonts(themeTree)];
  const list = (name: string, item: string) => childrenOf(childOf(root, isMain, name), isMain, item);
  const indexed = list("colors", "indexedColors")
    .flatMap(({ children }) => children)
    .map(({ given }) => (given.get("rgb") ?? "").slice(-6).toLowerCase());
  const colour = (of: XmlElement | undefined, automatic: string) => colourOf(of, theme, indexed, automatic);
  const formats = new Map(
    list("numFmts", "numFmt")
      .map(({ given }) => [given.get("numFmtId") ?? "", given.get("formatCode") ?? "General"] as const)
      .map(([id, code]) => [id, Number(id) > LAST_KNOWN || BUILT_IN[Number(id)] === code ? code : UNLISTED] as const),
  );
  const [fonts, fills, borders] = [list("fonts", "font"), list("fills", "fill"), list("borders", "border")];
  const cells = list("cellXfs", "xf").map((xf): Look => {
    const given = (name: string) => Number(xf.given.get(name) ?? 0);
    const font = fonts[given("fontId")];
    const part = (name: string) => childOf(font, isMain, name);
    const border = borders[given("borderId")];
    const fill = fills[given("fillId")];
    const align = childOf(xf, isMain, "alignment")?.given;
    const named = part("name")?.given.get("val") ?? "Calibri";
    const name = scheme[part("scheme")?.given.get("val") ?? ""] ?? named;
    const diagonal = childOf(border, isMain, "diagonal")?.given.get("style") ?? "none";
    return {
      format: formats.get(String(given("numFmtId"))) ?? BUILT_IN[given("numFmtId")] ?? UNLISTED,
      font: isStrange(named) ? named : name,
      signs: isStrange(name) || isStrange(named) || part("charset")?.given.get("val") === SYMBOL_CHARSET,
      size: Number(part("sz")?.given.get("val") ?? 11),
      colour: colour(part("color"), "000000"),
      struck: flag(part("strike")),
      raised: !["baseline", undefined].includes(part("vertAlign")?.given.get("val")),
      hollow: flag(part("outline")) || flag(part("shadow")),
      fill: fillOf(fill, colour),
      crossed:
        diagonal !== "none" && (isOn(border?.given.get("diagonalUp")) || isOn(border?.given.get("diagonalDown"))),
      edged: SIDES.some((name) => isThick(childOf(border, isMain, name)?.given.get("style"))),
      drawn: isFilled(fill) || (border?.children ?? []).some((side) => (side.given.get("style") ?? "none") !== "none"),
      across: align?.get("horizontal") ?? "general",
      turned: Number(align?.get("textRotation") ?? 0) !== 0,
      indent: Number(align?.get("indent") ?? 0),
      backwards: align?.get("readingOrder") === "2",
      wrapped: isOn(align?.get("wrapText")),
      shrunk: isOn(align?.get("shrinkToFit")),
      button: isOn(xf.given.get("pivotButton")),
      secret: isOn(childOf(xf, isMain, "protection")?.given.get("hidden")),
    };
  });
  const laid = list("dxfs", "dxf");
  const usual = list("cellStyles", "cellStyle")
    .find(({ given }) => given.get("builtinId") === "0")
    ?.given.get("xfId");
  const usualFont = list("cellStyleXfs", "xf")[Number(usual ?? 0)]?.given.get("fontId");
  const sizes = [fonts[0], fonts[Number(usualFont ?? 0)]].map((font) =>
    Number(childOf(font, isMain, "sz")?.given.get("val") ?? 11),
  );
  const usualSize = sizes.find((size) => size !== 11) ?? 11;
  const from1904 = isOn(childOf(workbook, isMain, "workbookPr")?.given.get("date1904"));
  return { cells, laid, theme, indexed, usualSize, from1904, twofold: twofoldIn(root, themeTree) };
}

const LARGEST_LAID = 15.4;
const LEAST_LAID = 8.25;
const RAISED = ["superscript", "subscript"];
/** What a conditional format may be made of without doing more than colour. */
const LAID =
  "font b i u color name family charset scheme fill patternFill fgColor bgColor border left right top bottom start end vertical horizontal diagonal numFmt strike condense extend protection".split(
    " ",
  );

/** Whether an element of a conditional format does more than colour: programs write a usual font and size. */
function isOddLaid({ name, given }: XmlElement): boolean {
  const value = given.get("val") ?? "";
  if (isThick(given.get("style"))) return true;
  if (name === "sz") return !(Number(value) >= LEAST_LAID && Number(value) <= LARGEST_LAID);
  if (name === "name") return isStrange(value);
  if (name === "vertAlign") return RAISED.includes(value);
  if (name === "charset") return value === SYMBOL_CHARSET;
  if (name === "alignment") return given.size > 0;
  if (name === "patternFill") return !["solid", "none"].includes(given.get("patternType") ?? "solid");
  return !LAID.includes(name);
}

/** The colours that a conditional format lays over a cell, as `rrggbb`; null where it leaves them. */
export function laidColours({ laid, theme, indexed }: FileLooks, index: number) {
  const style = laid[index];
  const parts = style ? [...within(style)] : [];
  const font = parts.find(({ name }) => name === "font");
  const fill = parts.find(({ name }) => name === "patternFill");
  const ink = childOf(font, isMain, "color");
  const paper = childOf(fill, isMain, "bgColor") ?? childOf(fill, isMain, "fgColor");
  return {
    colour: ink ? colourOf(ink, theme, indexed, "000000") : null,
    fill: paper ? colourOf(paper, theme, indexed, "ffffff") : null,
    odd: parts.some(isOddLaid) || flag(childOf(font, isMain, "strike")),
    format: parts.find(({ name }) => name === "numFmt")?.given.get("formatCode") ?? null,
  };
}
