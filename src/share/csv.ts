import type { Stated } from "../cells/stated";

const LINE_END = "\r\n";
const BYTE_ORDER_MARK = "\ufeff";
/** What programs take for the start of a formula. */
const FORMULA_STARTS = ["=", "+", "-", "@", "\t", "\r"];
const LONGEST_TEXT = 32_000;

/** A text that no program takes for a formula. */
export function harmless(value: Stated): Stated {
  if (typeof value !== "string") return value;
  const text = value.slice(0, LONGEST_TEXT);
  return FORMULA_STARTS.some((start) => text.startsWith(start)) ? `'${text}` : text;
}

function csvField(value: Stated): string {
  const text = String(harmless(value) ?? "");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Lines as a .csv file (RFC 4180, UTF-8). */
export function csvOf(rows: readonly (readonly Stated[])[]): Uint8Array {
  const lines = rows.map((row) => row.map(csvField).join(",") + LINE_END);
  return new TextEncoder().encode(BYTE_ORDER_MARK + lines.join(""));
}
