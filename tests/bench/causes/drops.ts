import { canPlan } from "../../../src/core/layout/cans/plan";
import type { HeadTruth, MadeBed, Wish } from "./made-bed";

// Second generator: each head throws seven classes of drops that come down in blurred rings; fine drops, which fall near it,
// are carried furthest. Heads turn unevenly, and now and then a reading is far off.

const CLASSES = 7;
type Draw = () => number;
type Point = readonly [number, number];

function uniform(draw: Draw, from: number, to: number): number {
  return from + draw() * (to - from);
}

/** About normal: twelve uniform numbers less six. */
function bell(draw: Draw): number {
  let sum = -6;
  for (let i = 0; i < 12; i++) sum += draw();
  return sum;
}

/** Student's t with 4 degrees of freedom, standard deviation 1. */
function heavyTailed(draw: Draw): number {
  let chi = 0;
  for (let i = 0; i < 4; i++) chi += bell(draw) ** 2;
  return bell(draw) / Math.sqrt(chi / 4) / Math.SQRT2;
}

interface Jet {
  at: Point;
  strength: number;
  reach: number;
  /** The sides of the bed that it must not throw over. */
  shutX: -1 | 0 | 1;
  shutY: -1 | 0 | 1;
  /** Where its turning lingers [rad], and by how much. */
  lingers: number;
  linger: number;
  /** Direction that it got stuck in. */
  stuck?: number;
}

/** Density of each class where it falls thickest, by a straight, bent or level fall outwards with some roughness. */
function thickness(draw: Draw, weakPressure: boolean): number[] {
  const bend = uniform(draw, 0.7, 2.5);
  const rim = uniform(draw, 0.05, 0.6);
  return Array.from({ length: CLASSES }, (_, j) => {
    const out = j / (CLASSES - 1);
    const rough = 1 + 0.06 * bell(draw);
    if (weakPressure) return rough * (0.12 + 0.25 * out + Math.exp(-(((out - 0.72) / 0.2) ** 2)));
    return rough * (1 - (1 - rim) * out ** bend);
  });
}

interface Ground {
  sides: Point;
  gaps: Point;
  reach: number;
  kind: "border" | "inset" | "centre";
  at: Point[];
  lines: { across: number[]; along: number[] };
}

function lay(draw: Draw, { fault, cans, arcs }: Wish): Ground | undefined {
  const gapX = uniform(draw, 3, 6);
  const gapY = draw() < 0.6 ? gapX : uniform(draw, 3, 6);
  const diagonal = Math.hypot(gapX, gapY) / Math.SQRT2;
  const reach = diagonal / (fault === "heads too far apart" ? uniform(draw, 1.3, 1.55) : uniform(draw, 0.7, 0.98));
  let kind: Ground["kind"] = "border";
  if (fault === "heads inside the edge") kind = "inset";
  else if (fault === "one line of heads") kind = "centre";
  else if (["one weak head", "wind", "pressure falls along the line", "pressure too low"].includes(fault)) {
    if (!arcs && draw() < 0.2) kind = "inset";
  }
  const fewest = fault === "no heads in the corners" || kind === "inset" ? 2 : 1;
  const countX = fewest + Math.floor(draw() * 3);
  const countY = fewest + Math.floor(draw() * 6);
  const sides: Point = [kind === "centre" ? reach * uniform(draw, 1.3, 1.9) : countX * gapX, countY * gapY];
  const at: Point[] = [];
  for (let j = 0; j <= countY; j++) {
    for (let i = 0; i <= countX; i++) {
      if (kind === "border") {
        const corner = i % countX === 0 && j % countY === 0;
        if (!(corner && fault === "no heads in the corners")) at.push([i * gapX, j * gapY]);
      } else if (j < countY && (kind === "inset" ? i < countX : i === 0)) {
        at.push([kind === "inset" ? (i + 0.5) * gapX : sides[0] / 2, (j + 0.5) * gapY]);
      }
    }
  }
  const [most, least] = [cans[1], Math.max(cans[0], 1.5 * at.length)];
  if (at.length < 3 || at.length > 28 || least > most) return undefined;
  if (fault === "pressure falls along the line" && new Set(at.map(([, y]) => y)).size < 3) return undefined;
  const planned = canPlan({
    width: sides[0],
    length: sides[1],
    headSpacing: kind === "centre" ? null : gapX,
    headRowSpacing: gapY,
    edge: uniform(draw, 0.3, 0.5),
  });
  if (planned.count >= least && planned.count <= most) {
    return { sides, gaps: [gapX, gapY], reach, kind, at, lines: planned };
  }
  // closer cans than the plan asks for
  const wanted = uniform(draw, least, most);
  const nx = Math.max(3, Math.round(Math.sqrt((wanted * sides[0]) / sides[1])));
  const ny = Math.max(4, Math.floor(wanted / nx));
  if (nx * ny < least || nx * ny > most) return undefined;
  const places = (n: number, size: number) => Array.from({ length: n }, (_, i) => ((i + 0.3) * size) / (n - 0.4));
  const lines = { across: places(nx, sides[0]), along: places(ny, sides[1]) };
  return { sides, gaps: [gapX, gapY], reach, kind, at, lines };
}

/** A bed of the second generator. */
export function bedOfDrops(draw: Draw, wish: Wish): MadeBed {
  let ground = lay(draw, wish);
  while (!ground) ground = lay(draw, wish);
  const { at, kind, sides, gaps, lines } = ground;
  const scale = wish.harder ?? 1;
  const has = (fault: string) => wish.fault === fault || wish.also === fault;
  const arcs = kind === "border" ? (wish.arcs ?? (draw() < 0.5 ? "full" : "matched")) : "full";
  const weakPressure = has("pressure too low");
  const thick = thickness(draw, weakPressure);
  const reach = ground.reach * (weakPressure ? uniform(draw, 0.76, 0.92) : 1);
  const shut = (place: number, size: number) => (place === 0 ? 1 : Math.abs(place - size) < 1e-6 ? -1 : 0);
  const jets: Jet[] = at.map(([x, y]) => {
    const shutX = arcs === "full" ? 0 : shut(x, sides[0]);
    const shutY = arcs === "full" ? 0 : shut(y, sides[1]);
    const part = arcs === "unmatched" ? (shutX === 0 ? 1 : 2) * (shutY === 0 ? 1 : 2) : 1;
    const off = wish.headsOff ?? 0;
    return {
      at: [x + off * bell(draw), y + off * bell(draw)],
      strength: part * Math.exp(0.05 * scale * bell(draw)),
      reach: reach * Math.exp(0.03 * scale * bell(draw)),
      ...{ shutX, shutY, lingers: uniform(draw, 0, 2 * Math.PI), linger: uniform(draw, 0, 0.12) },
    };
  });
  const culprit = Math.floor(draw() * jets.length);
  const culprits: number[] = [];
  let output = 1;
  if (has("one weak head")) {
    output = draw() < 0.5 ? 0 : uniform(draw, 0.3, 0.7);
    jets[culprit]!.strength *= output;
    culprits.push(culprit);
  } else if (wish.fault === "two weak heads") {
    const second = (culprit + 1 + Math.floor(draw() * (jets.length - 1))) % jets.length;
    culprits.push(culprit, second);
    for (const k of culprits) jets[k]!.strength *= uniform(draw, 0, 0.5);
  } else if (wish.fault === "one strong head") {
    jets[culprit]!.strength *= uniform(draw, 1.6, 2.5);
    culprits.push(culprit);
  } else if (wish.fault === "a head that does not turn") {
    const jet = jets[culprit]!;
    jet.stuck = Math.atan2(sides[1] / 2 - jet.at[1], sides[0] / 2 - jet.at[0]) + uniform(draw, -0.6, 0.6);
    const part = (jet.shutX === 0 ? 1 : 0.5) * (jet.shutY === 0 ? 1 : 0.5);
    jet.strength *= 6 * part;
    culprits.push(culprit);
  }
  const truth: HeadTruth = {
    flows: jets.map(({ strength, stuck, shutX, shutY }) => {
      const part = (shutX === 0 ? 1 : 0.5) * (shutY === 0 ? 1 : 0.5);
      return stuck === undefined ? strength * part : part;
    }),
    pressures: jets.map(() => (weakPressure ? 0.55 : 1)),
    wind: { shift: 0, way: 0 },
  };
  let towards: Point | undefined;
  if (has("pressure falls along the line")) {
    const down = draw() < 0.5 ? 1 : -1;
    towards = [0, down];
    truth.falls = [0, down];
    const end = uniform(draw, 0.3, 0.6);
    const shape = uniform(draw, 1.5, 2.5);
    jets.forEach((jet, k) => {
      const way = down > 0 ? at[k]![1] / sides[1] : 1 - at[k]![1] / sides[1];
      const from = kind === "border" ? way : (way * sides[1] - gaps[1] / 2) / (sides[1] - gaps[1]);
      const pressure = 1 - (1 - end) * (1 - Math.max(0, 1 - from) ** shape);
      jet.strength *= Math.sqrt(pressure);
      truth.flows[k]! *= Math.sqrt(pressure);
      truth.pressures[k]! *= pressure;
      jet.reach *= pressure ** 0.35;
    });
  }
  const heading = uniform(draw, 0, 2 * Math.PI);
  const carried = has("wind") ? uniform(draw, 0.28, 0.55) : scale * Math.min(0.1, 0.05 * Math.abs(bell(draw)));
  truth.wind = { shift: carried, way: heading };
  if (has("wind")) towards = [Math.cos(heading), Math.sin(heading)];
  const blur = 0.1;
  const catchAt = ([x, y]: Point): number => {
    let sum = 0;
    for (const jet of jets) {
      for (let j = 0; j < CLASSES; j++) {
        const ring = ((j + 0.35) / CLASSES) * 0.95;
        const shift = carried * (1.45 - 0.8 * ring);
        const dx = (x - jet.at[0]) / jet.reach - shift * Math.cos(heading);
        const dy = (y - jet.at[1]) / jet.reach - shift * Math.sin(heading);
        if (dx * jet.shutX < -1e-9 || dy * jet.shutY < -1e-9) continue;
        const way = (Math.hypot(dx, dy) - ring) / blur;
        if (Math.abs(way) > 4) continue;
        const angle = Math.atan2(dy, dx);
        if (jet.stuck !== undefined && Math.cos(angle - jet.stuck) < Math.cos(Math.PI / 6)) continue;
        const turning = 1 + jet.linger * Math.cos(angle - jet.lingers);
        sum += (jet.strength * turning * thick[j]! * Math.exp((-way * way) / 2)) / jet.reach ** 2;
      }
    }
    return sum;
  };
  const moved = (place: number) => place + (wish.cansOff ?? 0) * bell(draw);
  const grid = lines.along.map((y) =>
    lines.across.map((x) => {
      const caught = catchAt([moved(x), moved(y)]) * (1 + 0.07 * scale * heavyTailed(draw));
      return draw() < (wish.missing ?? 0) ? null : Math.max(0, Math.round(caught * 4000) / 10);
    }),
  );
  const listed = wish.fault === "no heads in the corners" || draw() < 0.5;
  return {
    input: {
      grid,
      across: [...lines.across],
      along: [...lines.along],
      width: sides[0],
      length: sides[1],
      spacing: gaps[0],
      rowSpacing: gaps[1],
      radius: ground.reach * Math.exp(0.06 * bell(draw)),
      arrangement: kind,
      arcs,
      ...(listed && { heads: at.map(([x, y]) => ({ x, y })) }),
    },
    fault: wish.fault,
    heads: culprits,
    output,
    truth,
    ...(towards && { towards: [towards[0], towards[1]] }),
  };
}
