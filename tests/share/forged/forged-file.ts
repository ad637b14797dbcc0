import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { cellAt } from "../../../src/cells/places";
import { type FileBook, namedArea, openBook } from "../../../src/xlsx/parts/workbook-file";

const STYLES = "xl/styles.xml";
const WORKBOOK = "xl/workbook.xml";

interface Copy {
  book: FileBook;
  parts: [name: string, text: string][];
}

/** Many files are forged from one copy. */
const read = new WeakMap<Uint8Array, Copy>();

function readOnce(copy: Uint8Array): Copy {
  const parts = () => Object.entries(unzipSync(copy)).map(([name, part]): [string, string] => [name, strFromU8(part)]);
  const known = read.get(copy) ?? { book: openBook(copy), parts: parts() };
  read.set(copy, known);
  return known;
}

/** A share copy taken apart, to be changed as text and put together again. */
export class ForgedFile {
  readonly parts: Map<string, string>;
  private readonly book: FileBook;
  private readonly sheets: ReadonlyMap<string, string>;

  constructor(copy: Uint8Array) {
    const { book, parts } = readOnce(copy);
    this.book = book;
    this.sheets = new Map(book.sheets.map(({ name, part }) => [name, part]));
    this.parts = new Map(parts);
  }

  bytes(): Uint8Array {
    const parts = [...this.parts].map(([name, text]): [string, Uint8Array] => [name, strToU8(text)]);
    return zipSync(Object.fromEntries(parts), { level: 1 });
  }

  part(sheet: string): string {
    return this.sheets.get(sheet)!;
  }

  /** The place of the first cell behind a name. */
  place(name: string): [sheet: string, address: string] {
    const { sheet, top, left } = namedArea(this.book, name)!;
    return [sheet, cellAt(top, left)];
  }

  /** Replaces a piece of a part, which has to be there. */
  change(part: string, from: string | RegExp, to: string): void {
    const text = this.parts.get(part);
    if (text === undefined) throw new Error(`there is no part ${part}`);
    const other = text.replace(from, to);
    if (other === text) throw new Error(`there is no ${from} in ${part}`);
    this.parts.set(part, other);
  }

  onSheet(sheet: string, from: string | RegExp, to: string): void {
    this.change(this.part(sheet), from, to);
  }

  inBook(from: string | RegExp, to: string): void {
    this.change(WORKBOOK, from, to);
  }

  /** Puts a part behind the table of cells and what has to be before it. */
  behind(sheet: string, after: string, xml: string): void {
    const ends = [`</${after}>`, `<${after}[^>]*/>`].join("|");
    this.onSheet(sheet, new RegExp(`(${ends})(?![\\s\\S]*(${ends}))`), `$1${xml}`);
  }

  tag(sheet: string, address: string): string {
    const found = new RegExp(`<c r="${address}"(?:[^>]*/>|[^>]*>[\\s\\S]*?</c>)`).exec(
      this.parts.get(this.part(sheet))!,
    );
    if (!found) throw new Error(`there is no cell ${sheet}!${address}`);
    return found[0];
  }

  cell(sheet: string, address: string, change: (tag: string) => string): void {
    const tag = this.tag(sheet, address);
    const other = change(tag);
    if (other === tag) throw new Error(`nothing changed in ${sheet}!${address}`);
    const text = this.parts.get(this.part(sheet))!;
    this.parts.set(
      this.part(sheet),
      text.replace(tag, () => other),
    );
  }

  value(sheet: string, address: string, value: string | number): void {
    this.cell(sheet, address, (tag) =>
      /<v>/.test(tag) ? tag.replace(/<v>[^<]*<\/v>/, `<v>${value}</v>`) : tag.replace("/>", `><v>${value}</v></c>`),
    );
  }

  /** Text in place of whatever a cell holds. */
  text(sheet: string, address: string, text: string): void {
    this.cell(sheet, address, (tag) => {
      const style = /s="\d+"/.exec(tag)?.[0] ?? "";
      return `<c r="${address}" ${style} t="inlineStr"><is><t>${text}</t></is></c>`;
    });
  }

  /** Gives a cell a style like its own, changed; `look` gets the list items of its font, fill, format and the rest. */
  look(sheet: string, address: string, look: CellLook): void {
    const index = Number(/s="(\d+)"/.exec(this.tag(sheet, address))?.[1] ?? 0);
    const styles = this.parts.get(STYLES)!;
    const items = (list: string, item: string) => {
      const body = new RegExp(`<${list}[^>]*>([\\s\\S]*?)</${list}>`).exec(styles)![1]!;
      return body.match(new RegExp(`<${item}(?:\\s[^>]*)?/>|<${item}(?:\\s[^>]*)?>[\\s\\S]*?</${item}>`, "g"))!;
    };
    const xf = items("cellXfs", "xf")[index]!;
    const number = (name: string) => Number(new RegExp(`${name}="(\\d+)"`).exec(xf)?.[1] ?? 0);
    let other = xf.startsWith("<xf") && xf.endsWith("/>") ? xf.replace(/\/>$/, "></xf>") : xf;
    const add = (list: string, item: string, xml: string): number => {
      const count = items(list, item).length;
      this.change(STYLES, `</${list}>`, `${xml}</${list}>`);
      return count;
    };
    if (look.font) {
      const font = look.font(items("fonts", "font")[number("fontId")]!);
      other = other.replace(/fontId="\d+"/, `fontId="${add("fonts", "font", font)}"`);
    }
    if (look.fill) other = other.replace(/fillId="\d+"/, `fillId="${add("fills", "fill", look.fill)}"`);
    if (look.border) other = other.replace(/borderId="\d+"/, `borderId="${add("borders", "border", look.border)}"`);
    if (look.format) {
      const id = 900 + items("numFmts", "numFmt").length;
      this.change(STYLES, "</numFmts>", `<numFmt numFmtId="${id}" formatCode="${look.format}"/></numFmts>`);
      other = other
        .replace(/ applyNumberFormat="\d"/, "")
        .replace(/numFmtId="\d+"/, `numFmtId="${id}" applyNumberFormat="1"`);
    }
    if (look.align)
      other = `${other.replace(/<alignment[^>]*\/>/, "").replace("</xf>", "")}<alignment ${look.align}/></xf>`;
    const style = add("cellXfs", "xf", other);
    this.change(STYLES, /<(fonts|fills|borders|cellXfs|numFmts) count="\d+"/, "<$1");
    this.cell(sheet, address, (tag) =>
      /s="\d+"/.test(tag) ? tag.replace(/s="\d+"/, `s="${style}"`) : tag.replace("<c ", `<c s="${style}" `),
    );
  }

  /** Adds a part with the relation that leads to it. */
  related(from: string, id: string, type: string, target: string, content: string, outside = false): void {
    const at = from.lastIndexOf("/") + 1;
    const rels = `${from.slice(0, at)}_rels/${from.slice(at)}.rels`;
    const relation = `<Relationship Id="${id}" Type="${type}" Target="${target}"${outside ? ' TargetMode="External"' : ""}/>`;
    const empty =
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>';
    this.parts.set(rels, (this.parts.get(rels) ?? empty).replace("</Relationships>", `${relation}</Relationships>`));
    if (!outside) this.parts.set(resolvedTarget(from, target), content);
  }
}

/** What a forged look changes. */
export interface CellLook {
  font?: (font: string) => string;
  fill?: string;
  border?: string;
  format?: string;
  align?: string;
}

function resolvedTarget(from: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const path = from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") path.pop();
    else path.push(step);
  }
  return path.join("/");
}
