import { LINES, type Look, SIDES } from "../desk-file/book";
import { type Edit, edited, tagEdit } from "../parts/edits";
import { escapedAttribute } from "../parts/escaped";
import { isMain } from "../parts/namespaces";
import { childOf, type XmlElement, xmlTree } from "../parts/xml-tree";

const USUAL_FORMATS: Record<string, number> = {
  General: 0,
  "0": 1,
  "0.00": 2,
  "#,##0": 3,
  "#,##0.00": 4,
  "0%": 9,
  "0.00%": 10,
  "@": 49,
};
const FIRST_OWN_FORMAT = 164;
const FONT_PARTS: Partial<Record<keyof Look, string[]>> = {
  font: ["name", "family", "charset", "scheme"],
  bold: ["b"],
  italic: ["i"],
  underline: ["u"],
  struck: ["strike"],
  size: ["sz"],
  colour: ["color"],
};
const BORDER_ORDER = ["left", "right", "top", "bottom"] as const;

type List = "fonts" | "fills" | "borders" | "cellXfs" | "numFmts";

const rgb = (colour: string): string => `rgb="FF${colour.replace("#", "").toUpperCase()}"`;

/** The styles of a file, to which looks made at the desk are added; what is there stays as it is. */
export class Styles {
  private readonly root: XmlElement;
  private readonly p: string;
  private readonly added: Record<List, string[]> = { fonts: [], fills: [], borders: [], cellXfs: [], numFmts: [] };
  private readonly made = new Map<string, number>();

  constructor(private readonly xml: string) {
    this.root = xmlTree(xml);
    this.p = this.root.prefix;
  }

  private list(name: List): XmlElement | undefined {
    return childOf(this.root, isMain, name);
  }

  private raw({ start, end }: XmlElement): string {
    return this.xml.slice(start, end);
  }

  private add(list: List, text: string): number {
    const there = this.list(list)?.children.length ?? 0;
    const at = this.added[list].indexOf(text);
    return there + (at < 0 ? this.added[list].push(text) - 1 : at);
  }

  /** The number of the style that has all of `base` but what differs between two looks. */
  styled(base: number, was: Look, look: Look): number {
    const parts = [...new Set([...Object.keys(was), ...Object.keys(look)])] as (keyof Look)[];
    const changed = parts.filter((part) => JSON.stringify(was[part]) !== JSON.stringify(look[part]));
    if (changed.length === 0) return base;
    const key = JSON.stringify([base, changed.sort().map((part) => [part, look[part]])]);
    const known = this.made.get(key);
    if (known !== undefined) return known;
    const index = this.make(base, new Set(changed), look);
    this.made.set(key, index);
    return index;
  }

  private make(base: number, changed: Set<keyof Look>, look: Look): number {
    const xf = this.list("cellXfs")?.children[base];
    const attributes = new Map(xf?.raw ?? [["xfId", "0"]]);
    const set = (name: string, value: number, apply: string) => {
      attributes.set(name, String(value));
      attributes.set(apply, "1");
    };
    if ([...changed].some((part) => FONT_PARTS[part])) {
      set("fontId", this.add("fonts", this.font(Number(xf?.given.get("fontId") ?? 0), changed, look)), "applyFont");
    }
    if (changed.has("fill")) set("fillId", this.fill(look), "applyFill");
    if (changed.has("borders"))
      set("borderId", this.border(Number(xf?.given.get("borderId") ?? 0), look), "applyBorder");
    if (changed.has("format")) set("numFmtId", this.format(look.format ?? "General"), "applyNumberFormat");
    const aligned = changed.has("align") || changed.has("vertical") || changed.has("wrap");
    if (aligned) attributes.set("applyAlignment", "1");
    const inside = aligned
      ? this.aligned(xf, changed, look)
      : (xf?.children.map((one) => this.raw(one)).join("") ?? "");
    const given = [...attributes].map(([name, value]) => ` ${name}="${escapedAttribute(value)}"`).join("");
    const { p } = this;
    return this.add("cellXfs", inside === "" ? `<${p}xf${given}/>` : `<${p}xf${given}>${inside}</${p}xf>`);
  }

  private font(id: number, changed: Set<keyof Look>, look: Look): string {
    const { p } = this;
    const gone = new Set([...changed].flatMap((part) => FONT_PARTS[part] ?? []));
    const kept = this.list("fonts")?.children[id]?.children.filter(({ name }) => !gone.has(name)) ?? [];
    const own = [
      changed.has("bold") && look.bold ? `<${p}b/>` : "",
      changed.has("italic") && look.italic ? `<${p}i/>` : "",
      changed.has("struck") && look.struck ? `<${p}strike/>` : "",
      changed.has("underline") && look.underline ? `<${p}u/>` : "",
      ...kept.map((one) => this.raw(one)),
      changed.has("size") && look.size ? `<${p}sz val="${look.size}"/>` : "",
      changed.has("colour") && look.colour ? `<${p}color ${rgb(look.colour)}/>` : "",
      changed.has("font") && look.font ? `<${p}name val="${escapedAttribute(look.font)}"/>` : "",
    ];
    return `<${p}font>${own.join("")}</${p}font>`;
  }

  private fill({ fill }: Look): number {
    if (!fill) return 0;
    const { p } = this;
    const pattern = `<${p}patternFill patternType="solid"><${p}fgColor ${rgb(fill)}/><${p}bgColor indexed="64"/>`;
    return this.add("fills", `<${p}fill>${pattern}</${p}patternFill></${p}fill>`);
  }

  private border(id: number, { borders = {} }: Look): number {
    const { p } = this;
    const base = this.list("borders")?.children[id];
    const sides = BORDER_ORDER.map((side) => {
      const given = borders[side];
      if (!given || !SIDES.includes(side) || !LINES.includes(given.line)) return `<${p}${side}/>`;
      const colour = given.colour ? `<${p}color ${rgb(given.colour)}/>` : "";
      return `<${p}${side} style="${given.line}">${colour}</${p}${side}>`;
    });
    const rest = base?.children.filter(({ name }) => !BORDER_ORDER.some((side) => side === name)) ?? [];
    const attributes = [...(base?.raw ?? [])].map(([name, value]) => ` ${name}="${escapedAttribute(value)}"`).join("");
    const text = `<${p}border${attributes}>${sides.join("")}${rest.map((one) => this.raw(one)).join("")}</${p}border>`;
    return this.add("borders", text);
  }

  private format(code: string): number {
    const usual = USUAL_FORMATS[code];
    if (usual !== undefined) return usual;
    const there = this.list("numFmts")?.children ?? [];
    const known = there.find(({ given }) => given.get("formatCode") === code);
    if (known) return Number(known.given.get("numFmtId"));
    const last = Math.max(FIRST_OWN_FORMAT - 1, ...there.map(({ given }) => Number(given.get("numFmtId") ?? 0)));
    const first = last + 1;
    const given = `formatCode="${escapedAttribute(code)}"/>`;
    const at = this.added.numFmts.findIndex((one) => one.endsWith(given));
    if (at >= 0) return first + at;
    const id = first + this.added.numFmts.length;
    this.added.numFmts.push(`<${this.p}numFmt numFmtId="${id}" ${given}`);
    return id;
  }

  private aligned(xf: XmlElement | undefined, changed: Set<keyof Look>, look: Look): string {
    const { p } = this;
    const held = xf?.children.find(({ name }) => name === "alignment");
    const attributes = new Map(held?.raw ?? []);
    const put = (part: keyof Look, name: string, value: string | undefined) => {
      if (!changed.has(part)) return;
      if (value === undefined) attributes.delete(name);
      else attributes.set(name, value);
    };
    put("align", "horizontal", look.align);
    put("vertical", "vertical", look.vertical === "middle" ? "center" : look.vertical);
    put("wrap", "wrapText", look.wrap ? "1" : undefined);
    const given = [...attributes].map(([name, value]) => ` ${name}="${escapedAttribute(value)}"`).join("");
    const others = xf?.children.filter((one) => one !== held).map((one) => this.raw(one)) ?? [];
    return `<${p}alignment${given}/>${others.join("")}`;
  }

  /** The part with what was added. */
  text(): string {
    const edits: Edit[] = [];
    const { p } = this;
    for (const name of Object.keys(this.added) as List[]) {
      const texts = this.added[name];
      if (texts.length === 0) continue;
      const list = this.list(name);
      if (list) {
        const count = String(list.children.length + texts.length);
        edits.push({ ...tagEdit(list, list.given.has("count") ? { count } : {}) });
        edits.push({ start: list.closeStart, end: list.closeStart, text: texts.join("") });
      } else {
        const { openEnd } = this.root;
        const text = `<${p}${name} count="${texts.length}">${texts.join("")}</${p}${name}>`;
        edits.push({ start: openEnd, end: openEnd, text });
      }
    }
    return edits.length === 0 ? this.xml : edited(this.xml, edits);
  }
}
