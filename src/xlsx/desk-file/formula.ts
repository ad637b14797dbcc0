import { typedNames } from "../../cells/stored-name";

/** Functions newer than the file format, which files name with a prefix. */
const PREFIXES: Record<string, string[]> = {
  "_xlfn._xlws.": ["FILTER", "SORT"],
  "_xlfn.": [
    "BYCOL",
    "BYROW",
    "CHOOSECOLS",
    "CHOOSEROWS",
    "CONCAT",
    "DROP",
    "EXPAND",
    "HSTACK",
    "IFNA",
    "IFS",
    "LAMBDA",
    "LET",
    "MAKEARRAY",
    "MAP",
    "MAXIFS",
    "MINIFS",
    "PERCENTILE.EXC",
    "PERCENTILE.INC",
    "QUARTILE.EXC",
    "QUARTILE.INC",
    "RANDARRAY",
    "RANK.AVG",
    "RANK.EQ",
    "REDUCE",
    "SCAN",
    "SEQUENCE",
    "SINGLE",
    "SORTBY",
    "STDEV.P",
    "STDEV.S",
    "SWITCH",
    "TAKE",
    "TEXTJOIN",
    "TOCOL",
    "TOROW",
    "UNIQUE",
    "VAR.P",
    "VAR.S",
    "VSTACK",
    "WRAPCOLS",
    "WRAPROWS",
    "XLOOKUP",
    "XMATCH",
  ],
};

const PREFIX_OF = new Map(
  Object.entries(PREFIXES).flatMap(([prefix, names]) => names.map((name) => [name, prefix] as const)),
);

const QUOTED_OR_CALL = /"(?:[^"]|"")*"|'(?:[^']|'')*'|(?<![\w.])([A-Z][A-Z0-9.]*)(?=\()/gi;
const QUOTED_OR_PREFIX = /"(?:[^"]|"")*"|'(?:[^']|'')*'|(_xlfn\.(?:_xlws\.)?)/g;

/** A formula as files hold it: no `=`, our functions as `_xldudf_CANFALL_SC_CAN`, newer functions with their prefix. */
export function storedFormula(formula: string): string {
  return formula.replace(/^=/, "").replace(QUOTED_OR_CALL, (match, called: string | undefined) => {
    if (called === undefined) return match;
    const name = called.toUpperCase();
    if (name.startsWith("CANFALL.")) return `_xldudf_${name.replaceAll(".", "_")}`;
    return `${PREFIX_OF.get(name) ?? ""}${called}`;
  });
}

/** A formula of a file as people type it. */
export function typedFormula(stored: string): string {
  const plain = stored.replace(QUOTED_OR_PREFIX, (match, prefix: string | undefined) => (prefix ? "" : match));
  return `=${typedNames(plain)}`;
}

/** Whether a formula calls one of our functions: files hold such cells as dynamic arrays. */
export function callsOurs(formula: string): boolean {
  return storedFormula(formula).includes("_xldudf_CANFALL_");
}
