/** A number as the pane shows it: three significant digits, or `unit`-less counts in full. */
export function figure(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1) return "0";
  const size = Math.abs(value);
  if (size >= 1e7 || size < 1e-4) return value.toExponential(2);
  const text = value.toPrecision(3);
  return text.includes("e") ? String(Number(text)) : text;
}

/** A value from a summary table: whole counts stay whole, words stay words. */
export function withItsUnit(value: number | string, unit: string): string {
  if (typeof value === "string") return value;
  return unit === "cans" ? String(value) : figure(value);
}
