import { canPlan } from "../../../src/core/layout/cans/plan";
import { normalDeviate } from "../../support/random";
import type { HeadTruth, MadeBed, Wish } from "./made-bed";

// First generator: profiles of powers with a core, drift that grows outwards, friction of many outlets.

interface Sprinkler {
  x: number;
  y: number;
  /** Sides that it throws to: 0 both. */
  right: number;
  down: number;
  output: number;
  throw: number;
  /** Half width of the sector that it wets when it does not turn [rad], and its direction. */
  stuck?: { half: number; direction: number };
}

type Random = () => number;
const between = (random: Random, low: number, high: number) => low + (high - low) * random();
const pick = <T>(random: Random, of: readonly T[]) => of[Math.floor(random() * of.length)] as T;

/** Rate against v = distance/throw of a sound head: (1 - v^a)^b and a narrow core. */
function sound(random: Random): (v: number) => number {
  const [a, b, core] = [between(random, 1, 4), between(random, 0.8, 2), between(random, 0, 0.3)];
  return (v) => (v < 1 ? (1 - v ** a) ** b + core * Math.exp(-((v / 0.2) ** 2)) : 0);
}

/** Rate of a head under too little pressure: it rises outwards, then falls. */
function hollow(random: Random): (v: number) => number {
  const [c, d, base] = [between(random, 0.9, 1.8), between(random, 4, 9), between(random, 0.08, 0.2)];
  return (v) => (v < 1 ? (base + v ** c) * (1 - v ** d) : 0);
}

function volumeOf(rate: (v: number) => number): number {
  let sum = 0;
  for (let i = 0; i < 400; i++) sum += (rate((i + 0.5) / 400) * (i + 0.5) * 2 * Math.PI) / 160_000;
  return sum;
}

/** Even lines of cans, about as many as asked for; 0.3 m inside the edges. */
function evenCans(random: Random, width: number, length: number, [low, high]: [number, number]) {
  const target = between(random, low, high);
  const columns = Math.max(3, Math.round(Math.sqrt((target * width) / length)));
  const rows = Math.max(3, Math.round(target / columns));
  const line = (n: number, size: number) => Array.from({ length: n }, (_, i) => 0.3 + (i * (size - 0.6)) / (n - 1));
  return { across: line(columns, width), along: line(rows, length), count: columns * rows };
}

interface Frame {
  width: number;
  length: number;
  spacing: number;
  rowSpacing: number;
  throw: number;
  arrangement: "border" | "inset" | "centre";
  places: [number, number][];
  across: number[];
  along: number[];
}

function frame(random: Random, wish: Wish): Frame {
  for (;;) {
    const far = wish.fault === "heads too far apart";
    const spacing = between(random, 3, 6);
    const rowSpacing = random() < 0.5 ? spacing : Math.min(6, Math.max(3, spacing * between(random, 0.8, 1.2)));
    const wide = Math.max(spacing, rowSpacing);
    const reach = wide / (far ? between(random, 1.3, 1.55) : between(random, 0.75, 1));
    const otherwise = random() < 0.2 && !wish.arcs ? "inset" : "border";
    const arrangement =
      wish.fault === "heads inside the edge"
        ? "inset"
        : wish.fault === "one line of heads"
          ? "centre"
          : ["nothing wrong found", "no heads in the corners", "heads too far apart"].includes(wish.fault)
            ? "border"
            : otherwise;
    const fewest = wish.fault === "no heads in the corners" || arrangement === "inset" ? 2 : 1;
    const across = arrangement === "centre" ? 1 : Math.ceil(between(random, fewest - 1, 4));
    const along = Math.ceil(between(random, arrangement === "centre" ? 2 : fewest - 1, 7));
    const width = arrangement === "centre" ? reach * between(random, 1.3, 1.9) : across * spacing;
    const length = along * rowSpacing;
    const places: [number, number][] = [];
    const edge = arrangement === "border" ? 0 : 0.5;
    const columns = arrangement === "border" ? across + 1 : across;
    const rows = arrangement === "border" ? along + 1 : along;
    for (let j = 0; j < rows; j++) {
      for (let i = 0; i < columns; i++) {
        const corner = edge === 0 && (i === 0 || i === columns - 1) && (j === 0 || j === rows - 1);
        if (corner && wish.fault === "no heads in the corners") continue;
        places.push([arrangement === "centre" ? width / 2 : (i + edge) * spacing, (j + edge) * rowSpacing]);
      }
    }
    const heads = { headSpacing: arrangement === "centre" ? null : spacing, headRowSpacing: rowSpacing };
    const cans = random() < 0.5 ? canPlan({ width, length, ...heads }) : evenCans(random, width, length, wish.cans);
    const fits = cans.count >= wish.cans[0] && cans.count <= wish.cans[1] && cans.count >= 1.5 * places.length;
    if (!fits || places.length < 3 || places.length > 28) continue;
    if (wish.fault === "pressure falls along the line" && Math.max(columns, rows) < 3) continue;
    return {
      ...{ width, length, spacing, rowSpacing, throw: reach, arrangement, places },
      across: [...cans.across],
      along: [...cans.along],
    };
  }
}

/** A bed of the first generator. */
export function bedOfPowers(random: Random, wish: Wish): MadeBed {
  const made = frame(random, wish);
  const harder = wish.harder ?? 1;
  const { width, length, arrangement } = made;
  const arcs = arrangement === "border" ? (wish.arcs ?? pick(random, ["full", "matched"] as const)) : "full";
  const faults = [wish.fault, wish.also];
  const low = faults.includes("pressure too low");
  const shape = low ? hollow(random) : sound(random);
  const reach = made.throw * (low ? between(random, 0.78, 0.92) : 1);
  const volume = volumeOf(shape);
  const side = (place: number, size: number) => (place < 1e-6 ? 1 : place > size - 1e-6 ? -1 : 0);
  const heads: Sprinkler[] = made.places.map(([x, y]) => ({
    x: x + (wish.headsOff ?? 0) * normalDeviate(random),
    y: y + (wish.headsOff ?? 0) * normalDeviate(random),
    right: arcs === "full" ? 0 : side(x, width),
    down: arcs === "full" ? 0 : side(y, length),
    output: 1 + 0.05 * harder * normalDeviate(random),
    throw: reach * (1 + 0.03 * harder * normalDeviate(random)),
  }));
  if (arcs === "unmatched") {
    for (const head of heads) head.output *= (head.right === 0 ? 1 : 2) * (head.down === 0 ? 1 : 2);
  }
  const at = Math.floor(random() * heads.length);
  const atFault: number[] = [];
  let output = 1;
  if (faults.includes("one weak head")) {
    output = random() < 0.5 ? 0 : between(random, 0.3, 0.7);
    heads[at]!.output *= output;
    atFault.push(at);
  }
  if (wish.fault === "two weak heads") {
    const other = (at + 1 + Math.floor(random() * (heads.length - 1))) % heads.length;
    for (const k of [at, other]) heads[k]!.output *= between(random, 0, 0.5);
    atFault.push(at, other);
  }
  if (wish.fault === "one strong head") {
    heads[at]!.output *= between(random, 1.6, 2.5);
    atFault.push(at);
  }
  if (wish.fault === "a head that does not turn") {
    const half = Math.PI / 6;
    const into = Math.atan2(length / 2 - heads[at]!.y, width / 2 - heads[at]!.x) + between(random, -0.7, 0.7);
    heads[at]!.stuck = { half, direction: into };
    heads[at]!.output *= Math.PI / half / (heads[at]!.right === 0 ? 1 : 2) / (heads[at]!.down === 0 ? 1 : 2);
    atFault.push(at);
  }
  const part = ({ right, down }: Sprinkler) => (right === 0 ? 1 : 0.5) * (down === 0 ? 1 : 0.5);
  const truth: HeadTruth = {
    flows: heads.map((head) => (head.stuck ? part(head) : head.output * part(head))),
    pressures: heads.map(() => (low ? 0.55 : 1)),
    wind: { shift: 0, way: 0 },
  };
  let towards: [number, number] | undefined;
  if (faults.includes("pressure falls along the line")) {
    const [xs, ys] = [new Set(heads.map(({ x }) => x)).size, new Set(heads.map(({ y }) => y)).size];
    const alongIt = ys >= 3 && (xs < 3 || random() < 0.5);
    const sign = random() < 0.5 ? 1 : -1;
    towards = alongIt ? [0, sign] : [sign, 0];
    truth.falls = towards;
    const end = between(random, 0.3, 0.6);
    const lengths = made.places.map(([x, y]) => sign * (alongIt ? y : x));
    const [first, last] = [Math.min(...lengths), Math.max(...lengths)];
    const [flowPower, throwPower] = [0.5, between(random, 0.2, 0.4)];
    heads.forEach((head, k) => {
      const rest = 1 - (lengths[k]! - first) / (last - first);
      const pressure = end + (1 - end) * rest ** 2.75;
      head.output *= pressure ** flowPower;
      truth.flows[k]! *= pressure ** flowPower;
      truth.pressures[k]! *= pressure;
      head.throw *= pressure ** throwPower;
    });
  }
  const windy = faults.includes("wind");
  const direction = between(random, 0, 2 * Math.PI);
  const drift = windy ? between(random, 0.28, 0.55) : Math.min(0.1, Math.abs(normalDeviate(random)) * 0.05) * harder;
  truth.wind = { shift: drift, way: direction };
  if (windy) towards = [Math.cos(direction), Math.sin(direction)];
  const rateAt = (x: number, y: number) => {
    let rate = 0;
    for (const head of heads) {
      const [px, py] = [(x - head.x) / head.throw, (y - head.y) / head.throw];
      let [dx, dy] = [px, py];
      let carried = 0;
      for (let turn = 0; turn < 8; turn++) {
        carried = drift * (0.2 + Math.min(1, Math.hypot(dx, dy)) ** 1.5);
        dx = px - carried * Math.cos(direction);
        dy = py - carried * Math.sin(direction);
      }
      const v = Math.hypot(dx, dy);
      if (v >= 1 || dx * head.right < -1e-9 || dy * head.down < -1e-9) continue;
      if (head.stuck) {
        const turned = Math.abs(Math.atan2(dy, dx) - head.stuck.direction) % (2 * Math.PI);
        if (Math.min(turned, 2 * Math.PI - turned) > head.stuck.half) continue;
      }
      const lean = (dx * Math.cos(direction) + dy * Math.sin(direction)) / Math.max(v, 1e-9);
      const stretch = Math.max(0.25, 1 + drift * 1.5 * Math.sqrt(v) * lean);
      rate += (head.output * shape(v)) / (volume * head.throw ** 2 * stretch);
    }
    return rate;
  };
  const off = () => (wish.cansOff ?? 0) * normalDeviate(random);
  const grid = made.along.map((y) =>
    made.across.map((x) => {
      const caught = rateAt(x + off(), y + off()) * (1 + 0.07 * harder * normalDeviate(random));
      return random() < (wish.missing ?? 0) ? null : Math.max(0, caught) * 500;
    }),
  );
  const typed = made.throw * Math.exp(0.06 * normalDeviate(random));
  const listed = wish.fault === "no heads in the corners" || random() < 0.5;
  return {
    input: {
      ...{ grid, across: made.across, along: made.along, width, length, arcs, arrangement },
      ...{ spacing: made.spacing, rowSpacing: made.rowSpacing, radius: typed },
      ...(listed && { heads: made.places.map(([x, y]) => ({ x, y })) }),
    },
    ...{ fault: wish.fault, heads: atFault, output, truth },
    ...(towards && { towards }),
  };
}
