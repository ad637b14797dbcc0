import type { Cell } from "../../cells/cell";
import { dayAt } from "../../cells/day-number";

/** What a value of a file shows. */
export function cellValue(value: unknown): Cell {
  if (value === null || value === undefined) return null;
  if (value instanceof Date) return dayAt(value.getTime());
  if (typeof value !== "object") return value as Cell;
  const rich = value as { error?: string; richText?: { text: string }[]; text?: unknown; checkbox?: boolean };
  if (rich.error !== undefined) return { error: rich.error };
  if (rich.checkbox !== undefined) return rich.checkbox;
  if (rich.richText) return rich.richText.map(({ text }) => text).join("");
  return cellValue(rich.text);
}
