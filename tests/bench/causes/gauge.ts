import type { Measured } from "../../../src/core/bed/causes/measured";
import { normalDeviate } from "../../support/random";
import type { MadeBed } from "./made-bed";

const MAKER = { flow: 200, pressure: 250 };
const BUCKETS = 6;
const GAUGES = 4;
/** Wind [m/s] that shifts water by a throw, and its scatter: an assumption. */
const SPEED_OF_A_THROW = 10;

/** Some of the heads, the first and the last among them. */
function some(count: number, of: number, random: () => number): Set<number> {
  const picked = new Set([0, of - 1]);
  while (picked.size < Math.min(count, of)) picked.add(Math.floor(random() * of));
  return picked;
}

/** What an auditor measures at a made bed: a bucket at six heads, a gauge at four, a wind log, and the supply side where it shows. */
export function measuredAt({ truth }: MadeBed, random: () => number): Measured {
  const { flows, pressures, wind, falls } = truth;
  const scattered = (value: number, sd: number) => value * Math.exp(sd * normalDeviate(random));
  const [bucketed, gauged] = [some(BUCKETS, flows.length, random), some(GAUGES, flows.length, random)];
  const side = () => (["top", "bottom", "left", "right"] as const)[Math.floor(random() * 4)]!;
  const from = falls && (falls[1] > 0 ? "top" : falls[1] < 0 ? "bottom" : falls[0] > 0 ? "left" : "right");
  const way = wind.way + 0.3 * normalDeviate(random);
  return {
    flows: flows.map((flow, k) => (bucketed.has(k) ? MAKER.flow * scattered(flow, 0.04) : null)),
    pressures: pressures.map((pressure, k) => (gauged.has(k) ? MAKER.pressure * scattered(pressure, 0.04) : null)),
    maker: MAKER,
    wind: {
      speed: SPEED_OF_A_THROW * scattered(wind.shift, 0.3),
      towards: { x: Math.cos(way), y: Math.sin(way) },
    },
    supply: from ?? side(),
  };
}
