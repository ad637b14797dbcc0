import type { Edge } from "../../pattern/edges";
import type { BedHead } from "../bed-heads";
import type { Wind } from "../overlap-columns";
import { type Measured, meanTaken, taken } from "./measured";

/** What a cause says of the heads, of the wind and of the pressure. */
export interface Claim {
  /** Output of each head over that of a sound one. */
  outputs: ArrayLike<number>;
  wind?: Wind;
  /** Pressure at each head over that at the first, and the side of the far end. */
  pressures?: readonly number[];
  towards?: Edge;
  /** Whether all heads are under their pressure. */
  low?: boolean;
}

// Spreads and limits: common practice, no source.
/** A bucket's flow of a sound head: its own scatter of 5 % and 4 % of bucket and watch. */
const FLOW_SD = 0.065;
const MAKER_FLOW_SD = 0.15;
/** Pressure at a head over that of its neighbours, and over the maker's by gauge or by flow. */
const PRESSURE_SD = 0.08;
const GAUGE_SD = 0.1;
const BY_FLOW_SD = 0.2;
/** Pressure over the maker's from which heads are at their pressure, and under which they are not. */
const RIGHT_FROM = 0.8;
const LOW_UNDER = 0.65;
/** From here a gauge says for sure that the pressure is right. */
const SURELY_RIGHT = 0.85;
/** Shift from which a fit is one of strong wind [parts of the throw]. */
const STRONG_SHIFT = 0.17;
/** Mean wind under which it does not carry water far, and from which it does [m/s], and the spread of both. */
const CALM = 1.8;
const WINDY = 2.2;
const WIND_SD = 0.7;
const TURNED = 6;
/** Least mean wind that has a direction [m/s]. */
const DIRECTED = 0.5;
/** Most that one measurement weighs, so that one slip does not decide. */
const MOST = 25;
const MOST_OF_WIND = 9;
/** Sides that a fall is searched towards: what is given back where the supply is known. */
const SEARCHED = 2 * Math.log(4);
const SIDEWAYS = 8;
const OPPOSITE: Record<Edge, Edge> = { top: "bottom", bottom: "top", left: "right", right: "left" };

/** Flow of a head over that of a full circle. */
export function nozzle({ arc, times }: Pick<BedHead, "arc" | "times">): number {
  return (times * arc) / 360;
}

const beyond = (value: number, limit: number, sd: number) => Math.max(0, (value - limit) / sd) ** 2;

/** Squares of values over their common level less what is claimed, at the level that leaves least. */
function misfit(
  values: readonly { at: number; value: number }[],
  claimed: (at: number) => number,
  sd: number,
  more: (level: number) => number = () => 0,
  levels: readonly number[] = [],
): number {
  const whole = values.reduce((sum, { value }) => sum + value, 0);
  const claims = values.reduce((sum, { at }) => sum + claimed(at), 0);
  const single = values.filter(({ at }) => claimed(at) >= 0.2).map(({ at, value }) => value / claimed(at));
  const tried = [...(claims > 0 ? [whole / claims] : []), ...single, ...levels].filter((level) => level > 0);
  const left = tried.map((level) =>
    values.reduce((sum, { at, value }) => sum + Math.min(MOST, ((value / level - claimed(at)) / sd) ** 2), more(level)),
  );
  return left.length === 0 ? 0 : Math.min(...left);
}

/**
 * What is measured at the heads, held against what a cause says of them.
 *
 *     cost = sum of ((measured / common level - claimed) / sd)²        as twice a negative log likelihood, each at most 25
 */
export class Evidence {
  readonly #measured: Measured | undefined;

  /** @param heads The bed's heads: a part circle with a smaller nozzle gives its part of the flow. */
  constructor(heads: readonly BedHead[], measured?: Measured) {
    this.#measured = measured && {
      ...measured,
      flows: measured.flows.map((flow, k) => (flow === null ? null : flow / nozzle(heads[k]!))),
    };
  }

  /** Whether a gauge says that the heads are at their pressure, so that a hollow pattern is their own. */
  get rightPressure(): boolean {
    if (!this.#measured?.maker) return false;
    const mean = meanTaken(this.#measured.pressures);
    return mean !== undefined && mean >= SURELY_RIGHT * this.#measured.maker.pressure;
  }

  /** What a claim costs; the lower the likelier. */
  cost(claim: Claim): number {
    const measured = this.#measured;
    if (!measured) return 0;
    return (
      flowCost(measured, claim) +
      pressureCost(measured, claim) +
      windCost(measured, claim) +
      supplyCost(measured, claim)
    );
  }
}

function flowCost({ flows, pressures, maker }: Measured, { outputs }: Claim): number {
  const all = taken(flows);
  const mean = meanTaken(pressures);
  const made = maker && maker.flow * (mean === undefined ? 1 : Math.sqrt(mean / maker.pressure));
  if (all.length + (made ? 1 : 0) < 2) return 0;
  const more = (level: number) => (made ? ((made / level - 1) / MAKER_FLOW_SD) ** 2 : 0);
  return misfit(all, (at) => outputs[at]!, FLOW_SD, more, made ? [made] : []);
}

function pressureCost({ flows, pressures, maker }: Measured, { pressures: falls, low }: Claim): number {
  const all = taken(pressures);
  const claimed = (at: number) => falls?.[at] ?? 1;
  const relative = all.length > 1 ? misfit(all, claimed, PRESSURE_SD) : 0;
  if (!maker) return relative;
  const flow = meanTaken(flows);
  const [over, sd] =
    all.length > 0
      ? [all.reduce((sum, { at, value }) => sum + value / claimed(at), 0) / all.length / maker.pressure, GAUGE_SD]
      : [flow === undefined ? undefined : (flow / maker.flow) ** 2, BY_FLOW_SD];
  if (over === undefined) return relative;
  return relative + Math.min(MOST, low ? beyond(over, LOW_UNDER, sd) : beyond(-over, -RIGHT_FROM, sd));
}

function windCost({ wind }: Measured, { wind: shift }: Claim): number {
  if (!wind) return 0;
  const far = shift ? Math.hypot(shift.x, shift.y) : 0;
  if (far < STRONG_SHIFT) return Math.min(MOST_OF_WIND, beyond(wind.speed, WINDY, WIND_SD));
  const speed = Math.min(MOST_OF_WIND, beyond(-wind.speed, -CALM, WIND_SD));
  if (!wind.towards || wind.speed < DIRECTED) return speed;
  const same = (shift!.x * wind.towards.x + shift!.y * wind.towards.y) / far;
  return speed + TURNED * (1 - same);
}

function supplyCost({ supply }: Measured, { towards }: Claim): number {
  if (!supply || !towards) return 0;
  if (towards === OPPOSITE[supply]) return -SEARCHED;
  return towards === supply ? MOST : SIDEWAYS;
}
