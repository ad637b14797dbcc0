import { isReference, type Token } from "@borgar/fx/xlsx";
import { areasAt, soundAreas, soundReadings, twin } from "../../workbook/form/twins";
import { argumentsOf, closing, mayCallOurs, ourName, textOfTokens, tokensOf } from "../calls";

/** A formula in native functions only. */
export interface NativeFormula {
  formula: string;
  /** Whether it must be entered as an array formula. */
  array: boolean;
}

const UNSOUND = "readings must be numbers of 0 or more, or x";
const UNSOUND_AREAS = "areas must be more than 0";
const LONGEST_FORMULA = 8192;
/** Those whose first argument is no range of readings. */
const WITHOUT_READINGS: readonly string[] = ["RATE.HEAD", "POT.DEPTH", "ETO.HARGREAVES"];
/** Those that answer for each reading. */
const FOR_EACH_READING: readonly string[] = ["DEPTH.CAUGHT", "RATE.CAUGHT"];
const SINGLE = ["_XLFN.SINGLE", "SINGLE"];
const ANCHOR = ["_XLFN.ANCHORARRAY", "ANCHORARRAY"];

const isSign = (token: Token | undefined, sign: string) => token?.type === "operator" && token.value === sign;
/** Whether a token binds what is beside it. */
const binds = (token: Token | undefined) => token?.type === "operator" && !"(){},;".includes(token.value);
const isName = (token: Token) => token.type === "unknown";
const isPlain = (tokens: readonly Token[]) => tokens.length === 1 && (isReference(tokens[0]!) || isName(tokens[0]!));

/** `r` of the guard `IF(r="","x",r)`, or the argument as it is. */
export function unguarded(argument: readonly Token[]): readonly Token[] {
  if (argument[0]?.value.toUpperCase() !== "IF" || closing(argument, 1) !== argument.length - 1) return argument;
  const [test = [], mark = [], range = []] = argumentsOf(argument.slice(2, -1));
  const blank = test.length > 2 && isSign(test.at(-2), "=") && test.at(-1)?.value === '""';
  const guards = blank && textOfTokens(mark) === '"x"' && textOfTokens(test.slice(0, -2)) === textOfTokens(range);
  return guards ? range : argument;
}

/** Gives the cells that a spill from a reference fills, or null where it is none that gets replaced. */
export type SpillOf = (reference: string) => string | null;

class Rewriting {
  array = false;
  possible = true;
  changed = false;

  constructor(private readonly spillOf: SpillOf) {}

  text(tokens: readonly Token[]): string {
    const out: string[] = [];
    for (let i = 0; i < tokens.length; i += 1) {
      const token = tokens[i]!;
      const called = token.type === "func" ? token.value.toUpperCase() : "";
      const name = ourName(token);
      const end = name !== null || SINGLE.includes(called) || ANCHOR.includes(called) ? closing(tokens, i + 1) : -1;
      const inner = tokens.slice(i + 2, Math.max(end, i + 2));
      if (isSign(token, "@") && ourName(tokens[i + 1])) continue;
      const spill = this.spill(tokens, i, ANCHOR.includes(called) && end > i ? inner : null);
      if (spill) {
        out.push(spill);
        i = end > i ? end : i + 1;
      } else if (name !== null && end > i) {
        const native = this.call(name, argumentsOf(inner));
        const bracketed = (binds(tokens[i - 1]) || binds(tokens[end + 1])) && !native.startsWith("IF(");
        out.push(bracketed ? `(${native})` : native);
        i = end;
      } else if (SINGLE.includes(called) && ourName(inner[0]) && closing(inner, 1) === inner.length - 1) {
        out.push(this.text(inner));
        i = end;
      } else {
        if (name !== null) this.possible = false;
        out.push(token.value);
      }
    }
    return out.join("");
  }

  /** The rectangle in place of `B2#` or `ANCHORARRAY(B2)`. */
  private spill(tokens: readonly Token[], at: number, anchored: readonly Token[] | null): string | null {
    const reference = anchored ?? (isSign(tokens[at + 1], "#") ? [tokens[at]!] : []);
    const cells = reference.length === 1 ? this.spillOf(reference[0]!.value) : null;
    if (cells) this.changed = true;
    return cells;
  }

  private call(name: string, given: Token[][]): string {
    this.changed = true;
    const hasReadings = !WITHOUT_READINGS.includes(name);
    const ranges = hasReadings ? [0, areasAt(name)] : [];
    const plain = given.map((argument, i) => (ranges.includes(i) ? unguarded(argument) : argument));
    const [readings = "", ...rest] = plain.map((argument) => this.text(argument));
    const areas = rest[areasAt(name) - 1] ?? "";
    if (hasReadings && !isPlain(plain[0] ?? [])) this.array = true;
    if (FOR_EACH_READING.includes(name)) this.array = true;
    const native = readings.length > LONGEST_FORMULA ? null : twin(name, [readings, ...rest]);
    if (native === null) this.possible = false;
    if (native === null || !hasReadings || FOR_EACH_READING.includes(name)) return native ?? "";
    const guarded = areas === "" ? native : `IF(${soundAreas(readings, areas)},${native},"${UNSOUND_AREAS}")`;
    return `IF(${soundReadings(readings)},${guarded},"${UNSOUND}")`;
  }
}

/**
 * A formula with every call of the add-in's functions turned into native functions, and every spill of a replaced cell
 * into its rectangle.
 *
 * @param formula As typed or as stored in files, without `=`
 * @returns The formula, unchanged where it calls none of ours; null where a call has no native twin
 */
export function nativeFormula(formula: string, spillOf: SpillOf = () => null): NativeFormula | null {
  const spills = formula.includes("#") || formula.toUpperCase().includes("ANCHORARRAY");
  if (!mayCallOurs(formula) && !spills) return { formula, array: false };
  const rewriting = new Rewriting(spillOf);
  const text = rewriting.text(tokensOf(formula));
  if (!rewriting.possible) return null;
  if (!rewriting.changed) return { formula, array: false };
  return text.length <= LONGEST_FORMULA ? { formula: text, array: rewriting.array } : null;
}

/**
 * The formula of each cell of a spill of DEPTH.CAUGHT or RATE.CAUGHT; null where the formula is not such a call alone.
 *
 * @param cells The readings' cells, row after row, given the reference to the readings
 */
export function nativeCells(formula: string, cells: (readings: string) => readonly string[] | null): string[] | null {
  const tokens = tokensOf(formula);
  const name = ourName(tokens[0]);
  if (name === null || !FOR_EACH_READING.includes(name) || closing(tokens, 1) !== tokens.length - 1) return null;
  const [readings = [], ...rest] = argumentsOf(tokens.slice(2, -1));
  const range = unguarded(readings);
  if (!isPlain(range) || rest.some((argument) => argument.some((token) => ourName(token) !== null))) return null;
  const each = cells(textOfTokens(range))?.map((cell) => twin(name, [cell, ...rest.map(textOfTokens)]));
  return each?.every((native) => native !== null) ? (each as string[]) : null;
}
