import { isMain } from "../../../xlsx/parts/namespaces";
import { childOf, childrenOf, within, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { foreignIn } from "../book/foreign";
import { oddNotation } from "../book/notations";
import { BUILT_IN } from "./built-in-formats";
import { NOT_LETTERS } from "./fonts";

/** Formats that mean the same wherever they are listed. */
const FIXED_FORMATS = [1, 2, 3, 4, 9, 10, 11, 49];
const EACH_ONCE = ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "dxfs", "colors"];
const ITEMS = ["font", "fill", "border", "xf", "patternFill", "gradientFill"];
const MANY = ["stop", "color"];

const COLOURS = ["color", "fgColor", "bgColor"];
const GIVEN_AS = ["rgb", "theme", "indexed", "auto"];
/** How a theme gives a colour that every program shows alike. */
const PLAIN_COLOURS = ["srgbClr", "sysClr"];
const SYSTEM = ["window", "windowText"];

/** Whether a theme gives a colour by something else than red, green and blue, or the ink and paper of a window. */
const isOddTheme = (theme: XmlElement | null): boolean =>
  [...(theme ? within(theme) : [])]
    .filter(({ name }) => name === "clrScheme")
    .some(({ children }) =>
      children.some(({ children: colours }) => {
        const [colour, more] = colours;
        if (!colour || more || !PLAIN_COLOURS.includes(colour.name) || colour.children.length > 0) return true;
        return colour.name === "sysClr" && !SYSTEM.includes(colour.given.get("val") ?? "");
      }),
    );

/** Whether a theme has a font of signs for any country. */
const hasSigns = (theme: XmlElement | null): boolean =>
  [...(theme ? within(theme) : [])].some(({ given }) => NOT_LETTERS.test(given.get("typeface") ?? ""));

const LEFT_TO_STYLE = ["numFmtId", "fontId", "fillId", "borderId"];

/** Whether a look leaves out what its named style gives, which programs take from there or from the first of the list. */
function leavesOut(root: XmlElement): boolean {
  const xfs = (list: string) => childrenOf(childOf(root, isMain, list), isMain, "xf").map(({ given }) => given);
  const styles = xfs("cellStyleXfs");
  return xfs("cellXfs").some((given) => {
    const style = styles[Number(given.get("xfId") ?? 0)];
    return LEFT_TO_STYLE.some((id) => !given.has(id) && Number(style?.get(id) ?? 0) !== 0);
  });
}

/** What in the styles and the theme programs read in one way or in another. */
export function twofoldIn(root: XmlElement | undefined, theme: XmlElement | null): string {
  if (isOddTheme(theme)) return "has a theme whose colours programs show in different ways";
  if (hasSigns(theme)) return "has a theme whose fonts are of signs on some machines";
  if (!root) return "";
  const all = [...within(root)];
  if (all.some(({ space }) => isMain(space) && space !== root.space)) {
    return "lists looks in two forms of the file, of which programs read one or both";
  }
  if (all.some(({ name, given }) => COLOURS.includes(name) && GIVEN_AS.filter((one) => given.has(one)).length > 1)) {
    return "gives a colour twice, of which programs read one or the other";
  }
  if (leavesOut(root)) return "leaves looks to its named styles, which programs read in different ways";
  if (foreignIn(root)) return "lists looks that only some programs read";
  const odd = oddNotation(all);
  if (odd !== "") return `writes a look in a way that programs read differently (${odd})`;
  const twice = (of: XmlElement, but: readonly string[] = []) => {
    const names = of.children.map(({ name }) => name).filter((name) => !but.includes(name));
    return new Set(names).size < names.length;
  };
  const listed = root.children.filter(({ name }) => EACH_ONCE.includes(name)).map(({ name }) => name);
  if (new Set(listed).size < listed.length) return "lists its looks twice, of which programs read one or the other";
  if (all.some((one) => ITEMS.includes(one.name) && twice(one, one.name === "gradientFill" ? MANY : []))) {
    return "gives a look two values, of which programs read one or the other";
  }
  const formats = all.filter(({ name, given }) => name === "numFmt" && given.has("numFmtId"));
  const ids = childrenOf(
    root.children.find(({ name }) => name === "numFmts"),
    isMain,
    "numFmt",
  ).map(({ given }) => given.get("numFmtId"));
  const other = formats.some(({ given }) => {
    const id = Number(given.get("numFmtId"));
    return FIXED_FORMATS.includes(id) && given.get("formatCode") !== BUILT_IN[id];
  });
  return new Set(ids).size < ids.length || other ? "gives a number format two meanings" : "";
}
