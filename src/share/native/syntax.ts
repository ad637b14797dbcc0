import { isFunction, isReference, type Token } from "@borgar/fx/xlsx";
import { areaOf, type SheetArea } from "../../cells/sheet-area";
import { argumentsOf, closing, tokensOf } from "../calls";
import { type Matrix, NativeError, type Scalar, Unsure } from "./value";

/** A formula taken apart. */
export type Node =
  | { kind: "value"; value: Scalar | Matrix }
  /** A reference, or a name, which has no area of its own. */
  | { kind: "cells"; text: string; area: SheetArea | null }
  | { kind: "call"; name: string; given: readonly Node[] }
  | { kind: "sign"; sign: string; left: Node; right: Node }
  | { kind: "minus"; of: Node };

/** From loose to tight; a minus in front binds tighter than all but `:`. */
const STRENGTH: Readonly<Record<string, number>> = {
  "=": 1,
  "<>": 1,
  "<": 1,
  ">": 1,
  "<=": 1,
  ">=": 1,
  "&": 2,
  "+": 3,
  "-": 3,
  "*": 4,
  "/": 4,
  "^": 5,
  ":": 7,
};
const IN_FRONT = 6;

/** What a token that is no more than a value is; undefined for any other. */
function constantOf({ type, value }: Token): Scalar | undefined {
  if (type === "number") return Number(value);
  if (type === "string") return value.slice(1, -1).replaceAll('""', '"');
  if (type === "bool") return value.toUpperCase() === "TRUE";
  return type === "error" ? new NativeError(value) : undefined;
}

function unknown(): never {
  throw new Unsure();
}

/** Reads the tokens of one formula from left to right. */
class Reader {
  private at = 0;
  constructor(
    private readonly tokens: readonly Token[],
    private readonly sheet: string,
  ) {}

  whole(): Node {
    const node = this.upTo(0);
    if (this.at < this.tokens.length) throw new Unsure();
    return node;
  }

  private upTo(least: number): Node {
    let left = this.single();
    for (;;) {
      const token = this.tokens[this.at];
      const strength = token?.type === "operator" ? (STRENGTH[token.value] ?? 0) : 0;
      if (!token || strength <= least) return left;
      this.at += 1;
      left = { kind: "sign", sign: token.value, left, right: this.upTo(strength) };
    }
  }

  private single(): Node {
    const token = this.tokens[this.at];
    if (!token) throw new Unsure();
    if (token.value === "(") return this.within((inside) => new Reader(inside, this.sheet).whole());
    if (token.value === "{") return { kind: "value", value: this.listed() };
    this.at += 1;
    const { type, value } = token;
    if (type === "operator" && value === "-") return { kind: "minus", of: this.upTo(IN_FRONT) };
    if (type === "operator" && value === "+") return this.upTo(IN_FRONT);
    const constant = constantOf(token);
    if (constant !== undefined) return { kind: "value", value: constant };
    if (isFunction(token)) {
      const given = this.within(argumentsOf);
      return { kind: "call", name: value.toUpperCase(), given: given.map((tokens) => argument(tokens, this.sheet)) };
    }
    if (isReference(token) || type === "unknown")
      return { kind: "cells", text: value, area: areaOf(value, this.sheet) };
    throw new Unsure();
  }

  /** The values of a list such as `{1,2;3,4}`, which opens here. */
  private listed(): Matrix {
    const end = this.tokens.findIndex(({ value }, index) => index > this.at && value === "}");
    if (end < 0) throw new Unsure();
    const rows: Scalar[][] = [[]];
    this.tokens.slice(this.at + 1, end).forEach((token, index) => {
      if (index % 2 === 1 && token.value === ";") rows.push([]);
      else if (index % 2 === 0) rows.at(-1)!.push(constantOf(token) ?? unknown());
      else if (token.value !== ",") unknown();
    });
    this.at = end + 1;
    return rows;
  }

  /** What is in the brackets that open here. */
  private within<T>(read: (inside: readonly Token[]) => T): T {
    const end = closing(this.tokens, this.at);
    if (end < 0) throw new Unsure();
    const inside = this.tokens.slice(this.at + 1, end);
    this.at = end + 1;
    return read(inside);
  }
}

const argument = (tokens: readonly Token[], sheet: string): Node =>
  tokens.length === 0 ? { kind: "value", value: null } : new Reader(tokens, sheet).whole();

/** A formula on a sheet, without `=`, as a tree; throws Unsure for what the audit's own formulas do not use. */
export const treeOf = (formula: string, sheet: string): Node => new Reader(tokensOf(formula), sheet).whole();
