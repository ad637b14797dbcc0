import type { Block, Program } from "../../src/core/program/program";
import { randomNumbers } from "../support/random";

/** Block counts of the nurseries: every third one has 5 to 8 blocks, the others 5 to 60. */
function blockCount(index: number, random: () => number): number {
  return index % 3 === 0 ? 5 + Math.floor(random() * 4) : 5 + Math.floor(random() * 56);
}

/**
 * An invented nursery: beds of 150 to 900 m2 at 6 to 22 mm/h, a net depth of 4 to 10 mm, SC 1.1 to 2, pulses of 2 to 5 mm
 * with rests of 20 to 60 min, a pump that gives one to three times the flow of its largest block, one or two windows.
 */
export function nursery(index: number): Program {
  const random = randomNumbers(index + 1);
  for (let i = 0; i < 10; i += 1) random();
  const between = (low: number, high: number) => low + (high - low) * random();
  const tenth = (value: number) => Math.round(value * 10) / 10;
  const blocks = Array.from({ length: blockCount(index, random) }, (_, i): Block => {
    const block: Block = {
      name: `Bed ${i + 1}`,
      area: Math.round(between(150, 900)),
      rate: tenth(between(6, 22)),
      multiplier: tenth(between(1.1, 2)),
      depth: tenth(between(4, 10)),
    };
    const pulsed = { takeUp: tenth(between(3, 7)), rest: 5 * Math.round(between(4, 12)) };
    return random() < 0.6 ? { ...block, ...pulsed } : block;
  });
  const largest = Math.max(...blocks.map(({ area, rate }) => area * rate));
  const apart = Array.from({ length: Math.floor(blocks.length / 6) }, (): [string, string] => {
    const first = Math.floor(random() * blocks.length);
    const second = (first + 1 + Math.floor(random() * (blocks.length - 1))) % blocks.length;
    return [`Bed ${first + 1}`, `Bed ${second + 1}`];
  });
  const twoWindows = random() < 0.4;
  return {
    blocks,
    pump: Math.ceil(largest * between(1, 3)),
    windows: twoWindows
      ? [
          { start: 1200, end: 1380 },
          { start: 120, end: 480 },
        ]
      : [{ start: 1140, end: 420 }],
    apart,
    changeOver: random() < 0.5 ? 0 : 30,
  };
}
