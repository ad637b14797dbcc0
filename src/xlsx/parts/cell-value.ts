import { dayAt } from "../../cells/day-number";
import { InputError } from "../../core/errors";
import type { FileCell } from "./file-cell";

/** Texts that cells name by number, and the numbers of those whose pieces have looks of their own. */
export interface SharedTexts {
  shared: readonly string[];
  rich: ReadonlySet<number>;
}

/** The texts in the tags of a cell. */
interface CellTexts {
  value: string | null;
  inline: string | null;
  rich: boolean;
  address: string;
}

const ESCAPED_SIGN = /_x([0-9A-F]{4})_/gi;
const DECIMAL = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
export const WHOLE = /^\d+$/;
const LOGICAL = ["0", "1", "false", "true"];

/** What a text, a piece of it and a sound may hold; what lies in the looks of a piece is not looked at here. */
const PIECES: Readonly<Record<string, readonly string[]>> = {
  si: ["t", "r", "rPh", "phoneticPr", "extLst"],
  is: ["t", "r", "rPh", "phoneticPr", "extLst"],
  r: ["t", "rPr"],
  rPh: ["t"],
};

/** Whether an element of this name may lie in one of that name, inside a text: elsewhere some programs do not read it. */
export const isPieceOfText = (name: string, parent: string): boolean =>
  parent in PIECES ? PIECES[parent]!.includes(name) : name !== "t";

export const refused = (rule: string, value: unknown, place = "") => new InputError("the file", rule, value, { place });

/** Sees that a text is one text, or pieces of one each: of two side by side programs show one, the other or both. */
export class OneText {
  private whole = false;
  private pieces = false;
  private inPiece = false;

  begin(): void {
    this.whole = false;
    this.pieces = false;
  }

  open(name: string, parent: string): void {
    if (name === "r") {
      if (this.whole) throw refused("hold one text a cell", "two");
      this.pieces = true;
      this.inPiece = false;
    } else if (name === "t" && parent !== "rPh") {
      if (parent === "r" ? this.inPiece : this.whole || this.pieces) throw refused("hold one text a cell", "two");
      if (parent === "r") this.inPiece = true;
      else this.whole = true;
    }
  }
}

/** A text of a file, in which `_x000D_` is a sign that xml cannot hold. */
export function plainText(text: string): string {
  return !text.includes("_x")
    ? text
    : text.replace(ESCAPED_SIGN, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

const ISO_DAY = /^\d{4}-\d\d-\d\d(T\d\d:\d\d(:\d\d(\.\d+)?)?)?(Z|[+-]\d\d:\d\d)?$/;

/** A date of the strict form, such as 2026-01-02T00:00:00, as days; any other text as it is. */
function dayIn(text: string): number | string {
  if (!ISO_DAY.test(text)) return text;
  const time = Date.parse(/Z$|[+-]\d\d:\d\d$/.test(text) ? text : `${text}${text.includes("T") ? "" : "T00:00:00"}Z`);
  return Number.isNaN(time) ? text : dayAt(time);
}

/** Gives the cell the value that its texts hold; `type` is the attribute `t` of its tag. */
export function readValue(cell: FileCell, type: string, texts: CellTexts, { shared, rich }: SharedTexts): void {
  const { value, inline, address } = texts;
  if (inline !== null) {
    if (value !== null || type !== "inlineStr") throw refused("hold one value a cell", "two", address);
    cell.value = plainText(inline);
    if (texts.rich) cell.rich = true;
  }
  if (value === null) return;
  const text = value.trim();
  if (type === "s") {
    const known = WHOLE.test(text) ? shared[Number(text)] : undefined;
    if (known === undefined) throw refused("hold every text that a cell names", text, address);
    cell.value = known;
    if (rich.has(Number(text))) cell.rich = true;
  } else if (type === "b") {
    if (!LOGICAL.includes(text)) throw refused("hold logical values as 0 or 1", text, address);
    cell.value = text === "1" || text === "true";
  } else if (type === "e") cell.error = text;
  else if (type === "d") cell.value = dayIn(text);
  else if (type === "str" || type === "inlineStr") cell.value = plainText(value);
  else if (type !== "n") throw refused("hold cells of a known kind", type, address);
  else if (text !== "") {
    const number = DECIMAL.test(text) ? Number(text) : Number.NaN;
    if (!Number.isFinite(number)) throw refused("hold numbers as numbers", text, address);
    cell.value = number;
  }
}
