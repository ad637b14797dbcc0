import { isFunction, isReference, isWhitespace, type Token, tokenize } from "@borgar/fx/xlsx";

const STORED = "_XLDUDF_CANFALL_";
const TYPED = "CANFALL.";

const ends = (token: Token | undefined) => token !== undefined && (isReference(token) || token.value === ")");
const starts = (token: Token | undefined) =>
  token !== undefined && (isReference(token) || isFunction(token) || token.value === "(");

/** The tokens of a formula; of the space between them only that which intersects two references. */
export function tokensOf(formula: string): Token[] {
  const tokens = tokenize(formula, { withLocation: false, negativeNumbers: false });
  return tokens.filter((token, i) => !isWhitespace(token) || (ends(tokens[i - 1]) && starts(tokens[i + 1])));
}

export const textOfTokens = (tokens: readonly Token[]): string => tokens.map(({ value }) => value).join("");

/** The name of a worksheet function of the add-in without its namespace, such as `SC.CAN`; null for other tokens. */
export function ourName(token: Token | undefined): string | null {
  if (!token || !isFunction(token)) return null;
  const called = token.value.toUpperCase();
  if (called.startsWith(TYPED)) return called.slice(TYPED.length);
  return called.startsWith(STORED) ? called.slice(STORED.length).replaceAll("_", ".") : null;
}

/** Whether a formula may call the add-in; a quick look before it is taken apart. */
export function mayCallOurs(formula: string): boolean {
  return /canfall/i.test(formula);
}

/** The names of the add-in's functions that a formula calls. */
export function ourCalls(formula: string): string[] {
  if (!mayCallOurs(formula)) return [];
  return tokensOf(formula).flatMap((token) => ourName(token) ?? []);
}

/** Where the bracket that opens at an index closes; -1 where it does not. */
export function closing(tokens: readonly Token[], open: number): number {
  let depth = 0;
  for (let i = open; i < tokens.length; i += 1) {
    const { type, value } = tokens[i]!;
    if (type !== "operator") continue;
    if (value === "(" || value === "{") depth += 1;
    if (value === ")" || value === "}") depth -= 1;
    if (depth === 0) return i;
  }
  return -1;
}

/** The arguments between the brackets of a call, cut at its own separators. */
export function argumentsOf(tokens: readonly Token[]): Token[][] {
  if (tokens.length === 0) return [];
  const cut: Token[][] = [[]];
  let depth = 0;
  for (const token of tokens) {
    if (token.type === "operator") {
      if (token.value === "(" || token.value === "{") depth += 1;
      if (token.value === ")" || token.value === "}") depth -= 1;
      if (token.value === "," && depth === 0) {
        cut.push([]);
        continue;
      }
    }
    cut.at(-1)!.push(token);
  }
  return cut;
}
