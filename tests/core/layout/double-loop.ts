import type { Plan } from "../../../src/core/layout/coverage";

/** Steps of the sum that finds what a profile of relative rates throws in all. */
const RINGS = 20_000;

interface Place {
  left: number;
  up: number;
  /** Quadrants about the head that get water, as pairs of signs. */
  quadrants: [number, number][];
  /** Share of the full flow. */
  share: number;
}

const QUADRANTS: [number, number][] = [
  [-1, -1],
  [-1, 1],
  [1, -1],
  [1, 1],
];

function places(size: number, spacing: number, arrangement: string): number[] {
  let gaps = 1;
  while (size / gaps > spacing * 1.05 * (1 + 1e-9)) gaps += 1;
  const gap = size / gaps;
  if (arrangement === "inset" || arrangement === "centre") {
    return Array.from({ length: gaps }, (_, i) => gap / 2 + i * gap);
  }
  return Array.from({ length: gaps + 1 }, (_, i) => i * gap);
}

function placed({ width, length, spacing, rowSpacing, arrangement, arcs }: Plan): Place[] {
  const across = arrangement === "centre" ? [width / 2] : places(width, spacing, arrangement);
  const along = places(length, rowSpacing, arrangement);
  const between = across.slice(1).map((x, i) => (x + across[i]!) / 2);
  return along.flatMap((y, j) =>
    (arrangement === "staggered" && j % 2 ? between : across).map((x) => {
      let quadrants = QUADRANTS;
      if (arcs !== "full") {
        if (x === 0) quadrants = quadrants.filter(([side]) => side > 0);
        if (x === across.at(-1)) quadrants = quadrants.filter(([side]) => side < 0);
        if (j === 0) quadrants = quadrants.filter(([, side]) => side > 0);
        if (j === along.length - 1) quadrants = quadrants.filter(([, side]) => side < 0);
      }
      return { left: 100 * x, up: 100 * y, quadrants, share: arcs === "matched" ? quadrants.length / 4 : 1 };
    }),
  );
}

/**
 * The rates of a plan by a plain loop of every cell over every head, in centimetres, millilitres and minutes; the
 * profile is read as relative rates and scaled by summing thin rings.
 */
export function doubleLoop(plan: Plan): { rates: number[][]; millilitresAMinute: number } {
  const { distances, rates, flow } = plan.profile;
  const relative = (centimetres: number): number => {
    for (let i = 1; i < distances.length; i += 1) {
      const [near, far] = [100 * distances[i - 1]!, 100 * distances[i]!];
      if (centimetres <= far)
        return rates[i - 1]! + ((rates[i]! - rates[i - 1]!) * (centimetres - near)) / (far - near);
    }
    return 0;
  };
  const reach = 100 * distances[distances.length - 1]!;
  let whole = 0;
  for (let ring = 0; ring < RINGS; ring += 1) {
    const r = ((ring + 0.5) * reach) / RINGS;
    whole += 2 * Math.PI * r * relative(r) * (reach / RINGS);
  }
  const columns = Math.max(1, Math.round(plan.width / plan.cell));
  const rows = Math.max(1, Math.round(plan.length / plan.cell));
  const heads = placed(plan);
  const perMinute = (flow * 1000) / 60;
  const table = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => {
      const x = (100 * plan.width * (column + 0.5)) / columns;
      const y = (100 * plan.length * (row + 0.5)) / rows;
      let sum = 0;
      for (const head of heads) {
        const [right, above] = [Math.sign(x - head.left), Math.sign(y - head.up)];
        const wet = head.quadrants.filter(([a, b]) => (right === 0 || a === right) && (above === 0 || b === above));
        if (wet.length === 0) continue;
        const concentrated = (head.share * 4) / head.quadrants.length;
        sum += ((perMinute * concentrated) / whole) * relative(Math.hypot(x - head.left, y - head.up));
      }
      return sum * 10 * 60;
    }),
  );
  return { rates: table, millilitresAMinute: heads.reduce((sum, head) => sum + head.share * perMinute, 0) };
}
