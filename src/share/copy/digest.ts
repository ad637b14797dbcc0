import type { Stated } from "../../cells/stated";
import type { TypedInput } from "./input-list";

const DIGITS = 15;
const LEAST_EXPONENT = -4;

/** A number as `%.15g` of C and Python writes it: so many digits survive any spreadsheet program's saving. */
export function fifteenDigits(value: number): string {
  if (value === 0) return "0";
  const [digits = "", power = "0"] = value.toExponential(DIGITS - 1).split("e");
  const exponent = Number(power);
  if (exponent >= LEAST_EXPONENT && exponent < DIGITS) return trimmed(value.toFixed(DIGITS - 1 - exponent));
  return `${trimmed(digits)}e${exponent < 0 ? "-" : "+"}${String(Math.abs(exponent)).padStart(2, "0")}`;
}

function trimmed(digits: string): string {
  return digits.includes(".") ? digits.replace(/\.?0+$/, "") : digits;
}

/** A value in the written form of the digest. */
export function writtenForm(value: Stated): string {
  if (typeof value === "number") return fifteenDigits(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return `"${(value ?? "").replace(/[\t\r\n]+/g, " ")}"`;
}

/**
 * The written form of what was typed: a line for each value that is not blank, in the order of the Evidence sheet,
 *
 *     name TAB row TAB column TAB value LF
 *
 * in UTF-8. Row and column count from 1 within the named cells. Numbers (dates and times too, as day numbers) are as
 * `%.15g` writes them, texts in double quotes with each run of tabs and line ends as one space, otherwise as typed
 * (`x` is `"x"`), logical values as TRUE or FALSE. Python, given the rows of the Evidence sheet:
 *
 *     def form(v):
 *         if isinstance(v, bool): return "TRUE" if v else "FALSE"
 *         return '"%s"' % re.sub("[\t\r\n]+", " ", v) if isinstance(v, str) else "%.15g" % v
 *     lines = ["%s\t%d\t%d\t%s\n" % (name, row, column, form(value)) for name, row, column, value in rows]
 *     hashlib.sha256("".join(lines).encode("utf-8")).hexdigest()
 */
export function inputForm(inputs: readonly Pick<TypedInput, "name" | "row" | "column" | "value">[]): string {
  return inputs.map(({ name, row, column, value }) => `${name}\t${row}\t${column}\t${writtenForm(value)}\n`).join("");
}

/** SHA-256 over the written form of what was typed, in hexadecimal. */
export async function inputDigest(
  inputs: readonly Pick<TypedInput, "name" | "row" | "column" | "value">[],
): Promise<string> {
  const hash = await globalThis.crypto.subtle.digest("SHA-256", new TextEncoder().encode(inputForm(inputs)));
  return Array.from(new Uint8Array(hash), (byte) => byte.toString(16).padStart(2, "0")).join("");
}

const CODE_DIGITS = 16;

/** The short form of a digest for paper: `4f2a 09bc 77d1 e650`. */
export const shortCode = (digest: string): string =>
  digest
    .slice(0, CODE_DIGITS)
    .match(/.{1,4}/g)
    ?.join(" ") ?? "";
