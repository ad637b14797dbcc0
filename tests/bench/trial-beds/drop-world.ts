import { normalDeviate } from "../../support/random";
import type { World } from "./trial-bed";

const CLASSES = 5;
const FREEDOM = 5;
const READING_SD = 0.06;
/** Drift of the finest drops in light wind, over the throw. */
const FINEST_DRIFT = 0.22;
const THROW_SD = 0.03;

/** Student's t with few degrees of freedom, scaled to a standard deviation of 1. */
function heavyTailed(random: () => number): number {
  let squares = 0;
  for (let i = 0; i < FREEDOM; i += 1) squares += normalDeviate(random) ** 2;
  return (normalDeviate(random) / Math.sqrt(squares / FREEDOM)) * Math.sqrt((FREEDOM - 2) / FREEDOM);
}

/**
 * Water in classes of drops: each lands in a ring about its head, coarse drops far out, fine ones near and driven furthest.
 *
 *     ring: exp(-((r - R_c) / s_c)^2 / 2); each head turns unevenly, 1 + e cos(angle - f) + e/2 cos(2 angle - g)
 */
export const DROP_WORLD: World = {
  rates(heads, reach, { wind }, random) {
    const lean = 0.3 + 1.4 * random();
    const classes = Array.from({ length: CLASSES }, (_, c) => {
      const far = (c + 0.5) / CLASSES;
      const ring = 0.12 + 0.76 * far;
      const wide = 0.1 + 0.06 * random();
      return { ring, wide, water: (0.4 + random()) * ring ** lean, drift: FINEST_DRIFT * (1 - 0.75 * far) };
    });
    const strength = wind[0] + (wind[1] - wind[0]) * random();
    const from = 2 * Math.PI * random();
    const [windX, windY] = [strength * Math.cos(from), strength * Math.sin(from)];
    const turning = heads.map((head) => ({
      ...head,
      reach: reach * (1 + THROW_SD * normalDeviate(random)),
      uneven: 0.12 * random(),
      once: 2 * Math.PI * random(),
      twice: 2 * Math.PI * random(),
    }));
    return (x, y) => {
      let sum = 0;
      for (const head of turning) {
        for (const { ring, wide, water, drift } of classes) {
          const across = (x - head.x) / head.reach - drift * windX;
          const along = (y - head.y) / head.reach - drift * windY;
          const off = (Math.hypot(across, along) - ring) / wide;
          if (off > 4) continue;
          const angle = Math.atan2(along, across);
          const turn = 1 + head.uneven * (Math.cos(angle - head.once) + Math.cos(2 * angle - head.twice) / 2);
          sum += (head.output * water * turn * Math.exp((-off * off) / 2)) / (ring * wide * head.reach ** 2);
        }
      }
      return sum;
    };
  },
  read: (rate, random) => rate + READING_SD * Math.max(rate, 0.2) * heavyTailed(random),
};
