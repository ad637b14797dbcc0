import type { Edge } from "../../pattern/edges";
import type { BedHead } from "../bed-heads";
import type { Fitted, Setting } from "./setting";

const SIDES: readonly Edge[] = ["top", "bottom", "left", "right"];
const ENDS = [0.3, 0.36, 0.42, 0.48, 0.54, 0.6, 0.66];
const THROWS_TRIED = 4;
const PENALTY = 3;
/** Output and throw by pressure: the law of an orifice, and common practice (no source) for the throw. */
const OUTPUT_POWER = 0.5;
const THROW_POWER = 0.3;

/** An overlap under a pressure that falls towards a side. */
export interface Falling extends Fitted {
  /** The side of the far end. */
  towards: Edge;
  /** Pressure at each head over that at the first. */
  pressures: readonly number[];
}

/** Part of the way from the first head to the last, towards a side. */
function waysTo(side: Edge, heads: readonly BedHead[]): number[] {
  const across = side === "left" || side === "right";
  const places = heads.map(({ x, y }) => (across ? x : y));
  const [low, high] = [Math.min(...places), Math.max(...places)];
  const reversed = side === "left" || side === "top";
  return places.map((place) => (high > low ? (reversed ? high - place : place - low) / (high - low) : 0));
}

/**
 * The best overlap with a pressure that falls along the line, for each side that it may fall towards.
 *
 *     P = e + (1 - e) (1 - t)²        output P^0.5, throw P^0.3        t: part of the way; e: pressure at the far end
 */
export function fallingPressure(setting: Setting, plainFits: readonly Fitted[]): Falling[] {
  const { heads, radius } = setting.bed;
  const penalty = Math.log(setting.count) + 2 * Math.log(SIDES.length) + PENALTY;
  const likely = [...plainFits].sort((one, other) => one.score - other.score)[0]!;
  const near = plainFits.filter(({ ratio }) => ratio >= likely.ratio * 0.93).slice(0, THROWS_TRIED);
  return SIDES.flatMap((towards) => {
    const ways = waysTo(towards, heads);
    if (!ways.some((way) => way > 0)) return [];
    let best: Falling | undefined;
    for (const end of ENDS) {
      const pressures = ways.map((way) => end + (1 - end) * (1 - way) ** 2);
      for (const { ratio } of near) {
        const outputs = pressures.map((pressure) => pressure ** OUTPUT_POWER);
        const throws = pressures.map((pressure) => radius * ratio * pressure ** THROW_POWER);
        const fitted = setting.fit({ ...setting.alike(ratio), outputs, throws }, setting.shapes, ratio, penalty, {
          pressures,
          towards,
        });
        if (!best || fitted.score < best.score) best = { ...fitted, towards, pressures };
      }
    }
    return [best!];
  });
}
