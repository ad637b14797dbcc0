import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import { cellAt } from "../../cells/places";
import { addressParts } from "../../cells/sheet-area";
import { isPieceOfText, OneText, readValue, refused, type SharedTexts, WHOLE } from "./cell-value";
import type { FileCell, FileRow, SheetContent } from "./file-cell";
import { isMain } from "./namespaces";
import { attributesOf, readXml, type XmlReading, type XmlTag } from "./xml";

const MOST_CELLS = 1_000_000;
const LONGEST_FORMULA = 8192;

interface Master {
  text: string;
  at: string;
}

/** The formula at a cell that shares it with another one further up. */
function sharedFormula({ text, at }: Master, here: string): string {
  return translateFormulaToA1(translateFormulaToR1C1(text, at), here);
}

const ROW = 3;
const CELL = 4;
const CONTENT = 5;

class CellReading implements XmlReading {
  readonly cells = new Map<string, FileCell>();
  readonly rows: FileRow[] = [];
  readonly table = { openEnd: 0, closeStart: 0, end: 0 };
  private readonly masters = new Map<string, Master>();
  private depth = 0;
  private space = "";
  /** 0 before the table of cells, 1 in it, 2 behind it. */
  private phase = 0;
  private row = 0;
  private column = 0;
  private address = "";
  private start = 0;
  private given = new Map<string, string>();
  private formula: Map<string, string> | null = null;
  private formulaText = "";
  private formulaPlace: [number, number] = [0, 0];
  private value: string | null = null;
  private inline: string | null = null;
  private sound = 0;
  private rich = false;
  /** The elements around a piece of an inline text. */
  private readonly pieces: string[] = [];
  private readonly one = new OneText();
  private into: "" | "formula" | "value" | "inline" = "";

  constructor(private readonly texts: SharedTexts) {}

  open(tag: XmlTag, start: number, end: number): void {
    this.depth += 1;
    if (this.depth === 1 && !(tag.local === "worksheet" && isMain(tag.uri))) throw refused("hold sheets", tag.local);
    if (this.depth === 1) this.space = tag.uri;
    if (this.depth === 2 && tag.local === "sheetData" && isMain(tag.uri)) {
      if (this.phase > 0) throw refused("hold one table of cells a sheet", "two");
      this.phase = 1;
      this.table.openEnd = end;
    } else if (this.phase === 1) this.openInside(tag, start, end);
  }

  private openInside(tag: XmlTag, start: number, end: number): void {
    const { local: name } = tag;
    if (tag.uri !== this.space) throw refused("hold nothing but cells in the table of a sheet", tag.name, this.address);
    if (this.depth === ROW && name === "row") this.openRow(tag, start, end);
    else if (this.depth === CELL && name === "c") this.openCell(tag, start);
    else if (this.depth === CONTENT) this.openContent(tag, start);
    else if (this.depth > CONTENT && this.inline !== null) {
      this.pieces.length = this.depth - CONTENT - 1;
      const parent = this.pieces.at(-1) ?? "is";
      if (!isPieceOfText(name, parent)) throw refused("hold texts of nothing but text", tag.name, this.address);
      this.one.open(name, parent);
      this.pieces.push(name);
      if (name === "rPh") this.sound = this.depth;
      else if (name === "rPr") this.rich = true;
      else if (name === "t" && this.sound === 0) this.into = "inline";
    } else if (this.depth <= CELL && name !== "extLst") throw refused("hold rows of cells", tag.name);
  }

  private openRow(tag: XmlTag, start: number, end: number): void {
    const number = tag.attributes.r?.value ?? String(this.row + 1);
    if (!WHOLE.test(number)) throw refused("hold rows with a number", number);
    this.row = Number(number);
    this.column = 0;
    const style = ["1", "true"].includes(tag.attributes.customFormat?.value ?? "")
      ? Number(tag.attributes.s?.value ?? 0)
      : 0;
    const given = attributesOf(tag);
    this.rows.push({ number: this.row, given, start, openEnd: end, closeStart: end, end, ...(style > 0 && { style }) });
  }

  private openCell(tag: XmlTag, start: number): void {
    this.given = attributesOf(tag);
    this.address = this.given.get("r") ?? cellAt(this.row, this.column + 1);
    const place = addressParts(this.address);
    if (place.row !== this.row) throw refused("hold cells in their rows", this.address, `row ${this.row}`);
    this.column = place.column;
    if (this.cells.has(this.address)) throw refused("hold each cell once", this.address);
    this.start = start;
    this.formula = null;
    this.formulaText = "";
    this.value = null;
    this.inline = null;
    this.rich = false;
  }

  private openContent(tag: XmlTag, start: number): void {
    const { local: name } = tag;
    const taken = name === "f" ? this.formula : name === "v" ? this.value : name === "is" ? this.inline : null;
    if (taken !== null) throw refused("hold one value a cell", "two", this.address);
    if (name === "f") {
      this.formula = attributesOf(tag);
      this.formulaPlace = [start, start];
      this.into = "formula";
    } else if (name === "v") {
      this.value = "";
      this.into = "value";
    } else if (name === "is") {
      this.inline = "";
      this.one.begin();
    } else if (name !== "extLst") throw refused("hold nothing but a value in a cell", tag.name, this.address);
  }

  text(text: string): void {
    if (this.into === "formula") this.formulaText += text;
    else if (this.into === "value") this.value += text;
    else if (this.into === "inline") this.inline += text;
  }

  close(tag: XmlTag, start: number, end: number): void {
    if (this.phase === 1) {
      this.into = "";
      if (this.depth === this.sound) this.sound = 0;
      else if (this.depth === CELL && tag.local === "c") this.closeCell(end);
      else if (this.depth === ROW && tag.local === "row") Object.assign(this.rows.at(-1)!, { closeStart: start, end });
      else if (this.depth === CONTENT && tag.local === "f") this.formulaPlace[1] = end;
      else if (this.depth === 2) {
        this.phase = 2;
        Object.assign(this.table, { closeStart: start, end });
      }
    }
    this.depth -= 1;
  }

  private closeCell(end: number): void {
    const { given, address } = this;
    const cell: FileCell = { value: null, given, start: this.start, end };
    const { value, inline, rich } = this;
    readValue(cell, given.get("t") ?? "n", { value, inline, rich, address }, this.texts);
    if (this.formula) this.readFormula(cell, this.formula);
    this.cells.set(address, cell);
    if (this.cells.size > MOST_CELLS) throw refused(`hold at most ${MOST_CELLS} cells a sheet`, "more");
  }

  private readFormula(cell: FileCell, formula: Map<string, string>): void {
    const kind = formula.get("t") ?? "normal";
    const index = formula.get("si");
    const master = kind === "shared" && index !== undefined ? this.masters.get(index) : undefined;
    if (this.formulaText === "" && master) this.formulaText = sharedFormula(master, this.address);
    else if (index !== undefined) this.masters.set(index, { text: this.formulaText, at: this.address });
    if (this.formulaText.length > LONGEST_FORMULA) throw refused("hold no formula without end", this.address);
    cell.formula = this.formulaText;
    cell.formulaPlace = this.formulaPlace;
    if (kind === "shared" && index !== undefined) cell.shared = index;
    if (kind !== "normal") cell.kind = kind;
    const fills = formula.get("ref");
    if (kind === "array" && fills) cell.fills = fills;
  }
}

/** Stands in for shared texts where none is looked at: any number names one. */
export const EVERY_TEXT = new Proxy([] as string[], { get: () => "" });

/** The rows and cells of a sheet's part. */
export function sheetContent(
  xml: string,
  shared: readonly string[],
  richTexts: ReadonlySet<number> = new Set(),
): SheetContent {
  const reading = new CellReading({ shared, rich: richTexts });
  readXml(xml, reading);
  return { cells: reading.cells, rows: reading.rows, table: reading.table };
}

/** The cells of a sheet that hold something or have a style, by address, in the order of the file. */
export function sheetCells(xml: string, shared: readonly string[]): Map<string, FileCell> {
  return sheetContent(xml, shared).cells;
}
