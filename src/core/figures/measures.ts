import type { Figure } from "./figure";

/** The measures of a test, in the order of its results. Their names are words in results, so they stay. */
export const MEASURES = {
  CANS: {
    name: "Cans counted",
    short: "Cans",
    unit: "cans",
    digits: 0,
    least: 0,
    definition: "cans with a reading; a blank place or x is a can that was not read, 0 is a dry can",
    source: "own rule",
    worksheetFunction: "SUMMARY",
  },
  DRY: {
    name: "Dry cans",
    short: "Dry",
    unit: "cans",
    digits: 0,
    least: 0,
    definition: "cans that read 0",
    source: "own rule",
    worksheetFunction: "SUMMARY",
  },
  MAR: {
    name: "Mean application rate",
    short: "MAR",
    unit: "mm/h",
    digits: 1,
    least: 0,
    definition:
      "mean depth of all cans read, each by its area where places are typed, over the length of the test; depth = 1000 mL / (pi mouth² / 4)",
    source: "University of Maryland, nursery irrigation course, 4.7; areas for counts: own reasoning",
    worksheetFunction: "MAR",
  },
  CU: {
    name: "CU (Christiansen)",
    short: "CU",
    unit: "%",
    digits: 1,
    most: 100,
    definition:
      "100 (1 − sum of the deviations from the mean, each without its sign, over the sum of all readings), each can by its area where places are typed",
    source: "Christiansen, Irrigation by sprinkling, 1942",
    worksheetFunction: "CU.CHRISTIANSEN",
  },
  DU: {
    name: "DU (low quarter)",
    short: "DU",
    unit: "%",
    digits: 1,
    least: 0,
    most: 100,
    definition:
      "100 times the mean of the driest quarter of the ground, the can on the boundary in part, over the mean of all; without places of the lowest quarter of the cans (n/4 to the nearest whole, halves up)",
    source: "Merriam and Keller, Farm irrigation system evaluation, 1978",
    worksheetFunction: "DU.QUARTER",
  },
  SC_CAN: {
    name: "SC (driest can)",
    short: "SC can",
    unit: "",
    digits: 2,
    least: 1,
    definition: "mean of all cans over the lowest reading; it rises with the number of cans",
    source: "Sammis, Soils 456, answer 5.10, New Mexico State University: mean over the lowest can",
    worksheetFunction: "SC.CAN",
  },
  SC_QUARTER: {
    name: "SC (low quarter)",
    short: "SC quarter",
    unit: "",
    digits: 2,
    least: 1,
    definition:
      "mean of all cans over the mean of the driest quarter of the ground, without places of the lowest quarter of the cans",
    source: "mean over low-quarter mean, 100 / DU: own reasoning from Merriam and Keller, 1978",
    worksheetFunction: "SC.QUARTER",
  },
  SC_SHARE: {
    name: "SC (share of pots)",
    short: "SC share",
    unit: "",
    digits: 2,
    least: 0,
    definition:
      "mean of all cans over the reading that cans of the wanted share of the area reach, without places the wanted share of the cans",
    source: "own reasoning: what share of the pots must get enough",
    worksheetFunction: "SC.SHARE",
  },
} as const satisfies Record<string, Figure>;

export type MeasureId = keyof typeof MEASURES;
