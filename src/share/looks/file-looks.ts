import { isMain } from "../../xlsx/parts/namespaces";
import { onlyRelation, relationsOf, textOf } from "../../xlsx/parts/relations";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { childOf, childrenOf, within, type XmlElement, xmlTree } from "../../xlsx/parts/xml-tree";
import { colourOf, themeColours } from "./colours";

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
  /** `rrggbb`; "pattern" where it is not one colour. */
  fill: string;
  crossed: boolean;
  across: string;
  turned: boolean;
  indent: number;
  wrapped: boolean;
  shrunk: boolean;
}

/** Number formats that a file need not list (ECMA-376 part 1, 18.8.30). */
const BUILT_IN: Readonly<Record<number, string>> = {
  0: "General",
  1: "0",
  2: "0.00",
  3: "#,##0",
  4: "#,##0.00",
  9: "0%",
  10: "0.00%",
  11: "0.00E+00",
  12: "# ?/?",
  13: "# ??/??",
  14: "yyyy-mm-dd",
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "h:mm AM/PM",
  19: "h:mm:ss AM/PM",
  20: "h:mm",
  21: "h:mm:ss",
  22: "yyyy-mm-dd h:mm",
  37: "#,##0 ;(#,##0)",
  38: "#,##0 ;[Red](#,##0)",
  39: "#,##0.00;(#,##0.00)",
  40: "#,##0.00;[Red](#,##0.00)",
  45: "mm:ss",
  46: "[h]:mm:ss",
  47: "mmss.0",
  48: "##0.0E+0",
  49: "@",
};
const SYMBOL_CHARSET = "2";
const SIGN_FONTS = /symbol|dings|marlett|barcode|code ?\d|blank|emoji|icon/i;

export const on = (value: string | undefined): boolean => value === "1" || value === "true" || value === "on";
const flag = (element: XmlElement | undefined) => element !== undefined && on(element.given.get("val") ?? "1");

/** The looks that a file's cells number, and of its conditional formats. */
export interface FileLooks {
  cells: readonly Look[];
  /** Styles that conditional formats lay over cells. */
  laid: readonly XmlElement[];
  theme: readonly string[];
  indexed: readonly string[];
}

function fillOf(element: XmlElement | undefined, colour: (of: XmlElement | undefined, auto: string) => string): string {
  const pattern = childOf(element, isMain, "patternFill");
  if (!pattern) return element && element.children.length > 0 ? "pattern" : "ffffff";
  const type = pattern.given.get("patternType") ?? "none";
  if (type === "none") return "ffffff";
  return type === "solid" ? colour(childOf(pattern, isMain, "fgColor"), "ffffff") : "pattern";
}

/** The looks of the styles and the theme of a file. */
export function fileLooks({ parts, main }: Pick<FileBook, "parts" | "main">): FileLooks {
  const relations = relationsOf(parts, main);
  const treeOf = (kind: string) => {
    const part = onlyRelation(relations, kind)?.part;
    return part && parts.has(part) ? xmlTree(textOf(parts, part)) : null;
  };
  const root = treeOf("styles") ?? undefined;
  const theme = themeColours(treeOf("theme"));
  const list = (name: string, item: string) => childrenOf(childOf(root, isMain, name), isMain, item);
  const indexed = list("colors", "indexedColors")
    .flatMap(({ children }) => children)
    .map(({ given }) => (given.get("rgb") ?? "").slice(-6).toLowerCase());
  const colour = (of: XmlElement | undefined, automatic: string) => colourOf(of, theme, indexed, automatic);
  const formats = new Map(
    list("numFmts", "numFmt").map(
      ({ given }) => [given.get("numFmtId"), given.get("formatCode") ?? "General"] as const,
    ),
  );
  const [fonts, fills, borders] = [list("fonts", "font"), list("fills", "fill"), list("borders", "border")];
  const cells = list("cellXfs", "xf").map((xf): Look => {
    const given = (name: string) => Number(xf.given.get(name) ?? 0);
    const font = fonts[given("fontId")];
    const part = (name: string) => childOf(font, isMain, name);
    const border = borders[given("borderId")];
    const align = childOf(xf, isMain, "alignment")?.given;
    const name = part("name")?.given.get("val") ?? "Calibri";
    const diagonal = childOf(border, isMain, "diagonal")?.given.get("style") ?? "none";
    return {
      format: formats.get(String(given("numFmtId"))) ?? BUILT_IN[given("numFmtId")] ?? "General",
      font: name,
      signs: SIGN_FONTS.test(name) || part("charset")?.given.get("val") === SYMBOL_CHARSET,
      size: Number(part("sz")?.given.get("val") ?? 11),
      colour: colour(part("color"), "000000"),
      struck: flag(part("strike")),
      raised: !["baseline", undefined].includes(part("vertAlign")?.given.get("val")),
      fill: fillOf(fills[given("fillId")], colour),
      crossed: diagonal !== "none" && (on(border?.given.get("diagonalUp")) || on(border?.given.get("diagonalDown"))),
      across: align?.get("horizontal") ?? "general",
      turned: Number(align?.get("textRotation") ?? 0) !== 0,
      indent: Number(align?.get("indent") ?? 0),
      wrapped: on(align?.get("wrapText")),
      shrunk: on(align?.get("shrinkToFit")),
    };
  });
  const laid = list("dxfs", "dxf");
  return { cells, laid, theme, indexed };
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
    struck: flag(childOf(font, isMain, "strike")),
    format: parts.find(({ name }) => name === "numFmt")?.given.get("formatCode") ?? null,
  };
}
