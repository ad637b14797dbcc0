import type { Figure } from "./figure";

/** Water a year. */
export const WATER = {
  NOW: {
    name: "Needed now",
    short: "Water",
    unit: "kL a year",
    digits: 1,
    least: 0,
    definition: "area · net depth · watering days · multiplier; over the share landing on the bed where that is known",
    source: "own reasoning",
    worksheetFunction: "WATER.ANNUAL",
  },
  SAVED: {
    name: "Water saved",
    short: "Saved",
    unit: "kL a year",
    digits: 1,
    definition: "needed now less needed after",
    source: "own reasoning",
  },
} as const satisfies Record<string, Figure>;
