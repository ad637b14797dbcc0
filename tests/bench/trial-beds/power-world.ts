import { normalDeviate } from "../../support/random";
import type { World } from "./trial-bed";

const THROW_SD = 0.03;
const READING_SD = 0.07;
const LEAST_ERROR_AT = 0.3;
/** Drift at the throw in light wind, over the throw. */
const DRIFT = 0.15;

/**
 * Water by powers of the distance, carried further downwind the further it is thrown.
 *
 *     p = (1 - v^a)^b (1 + c v^d)        a drop thrown to r lands at r + W v^2; the water is kept
 */
export const POWER_WORLD: World = {
  rates(heads, reach, { wind }, random) {
    const a = 1.2 + 2.5 * random();
    const b = 0.7 + 1.3 * random();
    const c = random() < 0.5 ? 0 : 2.2 * random();
    const d = 1 + 2 * random();
    const profile = (v: number) => (v < 1 ? (1 - v ** a) ** b * (1 + c * v ** d) : 0);
    const speed = DRIFT * (wind[0] + (wind[1] - wind[0]) * random());
    const direction = 2 * Math.PI * random();
    const [windX, windY] = [speed * Math.cos(direction), speed * Math.sin(direction)];
    const thrown = heads.map((head) => ({ ...head, reach: reach * (1 + THROW_SD * normalDeviate(random)) }));
    return (x, y) =>
      thrown.reduce((sum, head) => {
        const [toX, toY] = [(x - head.x) / head.reach, (y - head.y) / head.reach];
        let [fromX, fromY] = [toX, toY];
        for (let i = 0; i < 12; i += 1) {
          const square = fromX * fromX + fromY * fromY;
          [fromX, fromY] = [toX - windX * square, toY - windY * square];
        }
        const spread = 1 + 2 * (windX * fromX + windY * fromY);
        const v = Math.hypot(fromX, fromY);
        return sum + (spread > 0 ? (head.output * profile(v)) / (head.reach ** 2 * spread) : 0);
      }, 0);
  },
  read: (rate, random) => rate + READING_SD * Math.max(rate, LEAST_ERROR_AT) * normalDeviate(random),
};
