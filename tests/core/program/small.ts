import type { Program } from "../../../src/core/program/program";
import { randomNumbers } from "../../support/random";

/** A block at 60 mm/h, so that a depth of 1 mm is a minute: pulses of `minutes` with `rest` between them. */
export function valve(name: string, flow: number, minutes: number, number = 1, rest = 0) {
  return { name, area: flow, rate: 60, multiplier: 1, depth: minutes * number, takeUp: minutes, rest, flow };
}

/** A made-up program of three to five blocks, all in a few minutes, with two windows. */
export function smallProgram(seed: number): Program {
  const random = randomNumbers(seed * 7919);
  for (let i = 0; i < 5; i += 1) random();
  const from = (low: number, high: number) => low + Math.floor((high - low + 1) * random());
  const names = ["A", "B", "C", "D", "E"].slice(0, from(3, 5));
  return {
    blocks: names.map((name) => valve(name, from(1, 5), from(1, 4), from(1, 3), from(0, 4))),
    pump: from(5, 8),
    windows: [
      { start: 0, end: from(6, 12) },
      { start: 14, end: 60 },
    ],
    apart: random() < 0.5 ? [["A", "C"]] : [],
    changeOver: 60 * from(0, 1),
  };
}
