import { DRIFTS } from "../overlap-columns";
import type { Fitted, Setting } from "./setting";

/** Shifts that are tried, in parts of the throw. */
const SHIFTS = [0.18, 0.3, 0.42, 0.56];
/** Less is the light wind of any test. */
const LEAST_SHIFT = 0.17;
const DIRECTIONS = 12;
const PENALTY = 11;

/** The best overlap under wind. */
export function strongWind(setting: Setting, plainFits: readonly Fitted[]): Fitted {
  const penalty = 2 * Math.log(setting.count) + PENALTY;
  const { ratio: likely } = plainFits.reduce((best, fit) => (fit.score < best.score ? fit : best));
  const under = (shift: number, turn: number, drift: number, ratio: number) => {
    const wind = { x: shift * Math.cos(turn), y: shift * Math.sin(turn), drift };
    const fitted = setting.fit(setting.alike(ratio, wind), setting.shapes, ratio, penalty);
    return { shift, turn, drift, fitted };
  };
  const step = (2 * Math.PI) / DIRECTIONS;
  let best = under(SHIFTS[0]!, 0, 0, likely);
  const around = (drifts: readonly number[], ratios: readonly number[], fine: number) => {
    const centre = best;
    for (const drift of drifts) {
      for (const shift of [-0.2, 0, 0.2]) {
        for (const turn of [-0.5, 0, 0.5]) {
          for (const ratio of ratios) {
            keep(
              under(
                Math.max(LEAST_SHIFT, centre.shift * (1 + fine * shift)),
                centre.turn + fine * turn * step,
                drift,
                centre.fitted.ratio * ratio,
              ),
            );
          }
        }
      }
    }
  };
  const keep = (next: typeof best) => {
    if (next.fitted.score < best.fitted.score) best = next;
  };
  for (const shift of SHIFTS) for (let d = 0; d < DIRECTIONS; d += 1) keep(under(shift, d * step, 0, likely));
  around([...DRIFTS.keys()], [0.95, 1.05], 1);
  around([best.drift], [0.97, 1, 1.03], 0.4);
  return best.fitted;
}
