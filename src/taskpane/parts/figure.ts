/** A number as the pane shows it: three significant digits, from 1,000 on in whole units as the sheets have it. */
export function figure(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1) return "0";
  const size = Math.abs(value);
  if (size >= 1e7 || size < 1e-4) return value.toExponential(2);
  return size >= 999.5 ? Math.round(value).toLocaleString("en-AU") : value.toPrecision(3);
}

/** A value from a summary table: whole counts stay whole, words stay words. */
export function withItsUnit(value: number | string, unit: string): string {
  if (typeof value === "string") return value;
  return unit === "cans" ? String(value) : figure(value);
}
