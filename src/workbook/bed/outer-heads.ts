import type { ReadBed } from "../../core/bed/read-bed";

/** Places that differ by less [m] are on one line. */
const SAME_m = 0.05;

/** `1 to 4, 7`: numbers in order, three or more in a row as a range. */
export function numberList(numbers: readonly number[]): string {
  const runs: number[][] = [];
  for (const number of [...numbers].sort((one, other) => one - other)) {
    const last = runs.at(-1);
    if (last?.at(-1) === number - 1) last.push(number);
    else runs.push([number]);
  }
  return runs.map((run) => (run.length > 2 ? `${run[0]} to ${run.at(-1)}` : run.join(", "))).join(", ");
}

const metres = (distance: number) => String(Number(distance.toFixed(1)));

/** How far inside the edges the outer lines of heads are, and which heads those are. */
export function insideWords({ heads, width, length }: ReadBed): string {
  const sides = [
    heads.map(({ x }) => x),
    heads.map(({ x }) => width - x),
    heads.map(({ y }) => y),
    heads.map(({ y }) => length - y),
  ].map((distances) => ({ distances, least: Math.min(...distances) }));
  const inside = sides.filter(({ least }) => least > SAME_m);
  if (inside.length === 0) return "";
  const outer = heads.filter((_, k) => inside.some(({ distances, least }) => distances[k]! - least < SAME_m));
  const all = inside.map(({ least }) => least);
  const [near, far] = [metres(Math.min(...all)), metres(Math.max(...all))];
  const by = near === far ? near : `${near} to ${far}`;
  return `by ${by} m: heads ${numberList(outer.map(({ number }) => number))}`;
}
