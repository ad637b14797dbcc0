import { typedNames } from "../../cells/stored-name";
import { prefixOf } from "./newer-functions";
import { withParameters } from "./parameters";

const QUOTED_OR_CALL = /"(?:[^"]|"")*"|'(?:[^']|'')*'|(?<![\w.])([A-Z][A-Z0-9.]*)(?=\()/gi;
const QUOTED_OR_PREFIX = /"(?:[^"]|"")*"|'(?:[^']|'')*'|(_xlfn\.(?:_xlws\.)?|_xlpm\.)/g;

/**
 * A formula as files hold it: no `=`, our functions as `_xldudf_CANFALL_SC_CAN`, newer functions and the names that
 * LET and LAMBDA give with their prefixes.
 */
export function storedFormula(formula: string): string {
  return withParameters(formula.replace(/^=/, "")).replace(QUOTED_OR_CALL, (match, called: string | undefined) => {
    if (called === undefined) return match;
    const name = called.toUpperCase();
    if (name.startsWith("CANFALL.")) return `_xldudf_${name.replaceAll(".", "_")}`;
    return prefixOf(name) + called;
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
