import type { Measured } from "../../core/bed/causes/measured";
import { type CellsOf, listOf, numberOf } from "./cells-of";

const POINTS = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"];

/**
 * The wind log: its mean speed [m/s], and the way that it blows over the bed where the bearing of the length is typed.
 *
 *     from a bearing f, over a bed whose length runs to a bearing b: x = sin(f - b), y = -cos(f - b)
 */
export function windOfTest(cells: CellsOf): Measured["wind"] {
  const speeds = listOf(cells, "Wind_ms");
  const read = speeds.filter((speed) => typeof speed === "number");
  if (read.length === 0) return undefined;
  const speed = read.reduce((sum, one) => sum + one, 0) / read.length;
  const bearing = numberOf(cells, "Bed_Bearing_deg");
  if (bearing === undefined) return { speed };
  let [x, y] = [0, 0];
  listOf(cells, "Wind_From").forEach((from, line) => {
    const point = POINTS.indexOf(String(from));
    const strength = speeds[line];
    if (point < 0 || typeof strength !== "number") return;
    const turned = ((45 * point - bearing) * Math.PI) / 180;
    x += strength * Math.sin(turned);
    y -= strength * Math.cos(turned);
  });
  const length = Math.hypot(x, y);
  return length > 1e-9 * Math.max(1, speed) ? { speed, towards: { x: x / length, y: y / length } } : { speed };
}
