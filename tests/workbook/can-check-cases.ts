import { type Case, column, grid, withReading } from "./data-check-cases";

const CLEARED = column("", "", "", "", "");

export const CAN_CASES: readonly Case[] = [
  {
    title: "12 cans far from the edges, as far apart as the heads, in a gale, with little water",
    typed: {
      // 12 cans of 1 mL: 1000 / (π · 100² / 4) = 0.127 mm in 15 min, 0.5 mm/h; 4 m to the right edge, 7 m to the bottom
      Cans_Readings: [...grid(3, 4, 1).map((line) => [...line, ""]), ["", "", "", "", ""], ["", "", "", "", ""]],
      Cans_Across_m: [[0, 3, 6, 8, ""]],
      Cans_Along_m: column(2, 5, 8, "", ""),
      Wind_ms: column(3, 4.5, 1, 1),
      Test_Stop: (7 * 60 + 10) / 1440,
      Walk_Through: "",
      Canopy_Over: "yes",
    },
    said: [
      ["Cans", "Readings", "ok"],
      ["Cans", "Positions", "ok"],
      ["Cans", "Pots", "ok"],
      [
        "Cans",
        "Walk-through",
        "Not done before the test: look for blocked, leaning, mixed and leaking heads, mend them or not, and say so on Block.",
      ],
      [
        "Cans",
        "Leaves over the cans",
        "Hanging baskets or a wet canopy were over the cans: the figures are of what dripped and fell into cans, not of the heads.",
      ],
      ["Cans", "Number of cans", "Only 12 cans: under 16 there is no verdict. Set out 24 or more."],
      [
        "Cans",
        "Can spacing",
        "Cans are as far apart as heads and see one part of their pattern: use about 0.6 of the head spacing.",
      ],
      [
        "Cans",
        "Edge cans",
        "No cans within 0.6 m of these edges: right, top, bottom. Add cans there, or say that the result is of the interior only.",
      ],
      ["Cans", "Mean catch", "Mean catch 0.1 mm, under 2.3: run the test longer; 5 mm is better."],
      ["Cans", "Wind", "Wind up to 4.5 m/s, over 4: stop watering, test again in calm air."],
      ["Cans", "Rate", "Mean rate 0.5 mm/h is outside 2 to 60: check mouth, minutes, and that readings are mL."],
      ["Cans", "Clock", "From start to stop are 30 min, but 15 are typed: check both."],
    ],
  },
  {
    title: "20 cans half as far apart as the heads, in some wind, with more water than the heads give",
    typed: {
      // 20 cans of 350 mL: 44.6 mm in 15 min, 178.3 mm/h, over 180 m² 32,086 L/h; heads 2,505.6 L/h: 1281 %
      Cans_Readings: [...grid(4, 5, 350), ["", "", "", "", ""]],
      Cans_Across_m: [[0.5, 2, 3.5, 5, 6.5]],
      Cans_Along_m: column(0.5, 5, 10, 14.5, ""),
      Wind_ms: column(3, 1, 1, 1),
    },
    said: [
      ["Cans", "Number of cans", "Only 20 cans: verdicts are indicative. Set out 24 or more."],
      [
        "Cans",
        "Can spacing",
        "Cans are half as far apart as heads, which misleads: use about 0.6 of the head spacing.",
      ],
      [
        "Cans",
        "Edge cans",
        "No cans within 0.6 m of these edges: right. Add cans there, or say that the result is of the interior only.",
      ],
      ["Cans", "Wind", "Wind up to 3 m/s, over 2.2: it skews the pattern; test at a calmer hour."],
      ["Cans", "Rate", "Mean rate 178.3 mm/h is outside 2 to 60: check mouth, minutes, and that readings are mL."],
      [
        "Cans",
        "Cans against heads",
        "Cans caught 1281 % of what the heads gave: check mouth, minutes, buckets, number of heads.",
      ],
      [
        "Heads",
        "Caught / metered",
        "More caught than metered: check mouth, minutes, both meter readings and the beds on the valve.",
      ],
    ],
  },
  {
    title: "one can that overflows, two places without a word, and little of the heads' water in the cans",
    typed: {
      // 22 · 10 + 90 = 310 mL in 23 cans, 1.716 mm in 15 min, 6.9 mm/h, 1,235 L/h of 2,505.6: 49 %; 309 L of 655: 0.47
      Cans_Readings: [...grid(4, 5, 10), [10, 10, 90, "", ""]],
    },
    said: [
      ["Cans", "Blank places", "2 places within the grid are blank: type the reading, or x where a can was not read."],
      ["Cans", "A very wet can", "Can I10 holds 90 mL, over 3 times the middle one: a leak, or a typing error?"],
      [
        "Cans",
        "Cans against heads",
        "Cans caught only 49 % of what the heads gave: check mouth, minutes; else overspray, leaks.",
      ],
      [
        "Heads",
        "Caught / metered",
        "Under half of the water fell on the bed: overspray, drift or leaks, or a wrong mouth or meter reading.",
      ],
    ],
  },
  {
    title: "one can with next to nothing among full ones",
    // a fifth of the middle one: 20 / 5 = 4 mL
    typed: { Cans_Readings: withReading(0.31) },
    said: [
      ["Cans", "A very wet can", "ok"],
      [
        "Cans",
        "A very dry can",
        "Can J8 holds 0.31 mL, under 1/5 of the middle one, and may set the run time: look at that can, its head and what was typed.",
      ],
    ],
  },
  {
    title: "a dry can and one not read beside one with a little",
    typed: { Cans_Readings: [["x", 0, 3.9, 3.9, 20], ...grid(4, 5, 20)] },
    said: [
      [
        "Cans",
        "A very dry can",
        "Can I6 holds 3.9 mL, under 1/5 of the middle one, and may set the run time: look at that can, its head and what was typed.",
      ],
    ],
  },
  {
    title: "a dry can, and one with just a fifth of the middle one",
    typed: { Cans_Readings: [[0, 4, 20, 20, 20], ...grid(4, 5, 20)] },
    said: [["Cans", "A very dry can", "ok"]],
  },
  {
    title: "cans of which most are dry",
    typed: { Cans_Readings: [[1, 2, 20, 20, 20], ...grid(4, 5, 0)] },
    said: [["Cans", "A very dry can", "ok"]],
  },
  {
    title: "a reading with its unit",
    typed: { Cans_Readings: withReading("12 mL") },
    said: [
      ["Cans", "Readings", "1 reading is neither a number from 0 up nor x, first in J8 (text): type again."],
      ["Cans", "Mean catch", "not checked: needs readings that are numbers or x"],
      ["Cans", "Rate", "not checked: needs readings that are numbers or x"],
    ],
  },
  {
    title: "a number stored as text, and one below 0 after it",
    typed: { Cans_Readings: [["x", " X ", "12", 13, 14], ...grid(3, 5, 20), [20, -3, 20, 20, 20]] },
    said: [
      [
        "Cans",
        "Readings",
        "2 readings are neither a number from 0 up nor x, first in I6 (a number stored as text): type again.",
      ],
    ],
  },
  {
    title: "a reading below 0",
    typed: { Cans_Readings: withReading(-3) },
    said: [["Cans", "Readings", "1 reading is neither a number from 0 up nor x, first in J8 (below 0): type again."]],
  },
  {
    title: "no positions",
    typed: { Cans_Across_m: [["", "", "", "", ""]], Cans_Along_m: CLEARED },
    said: [
      ["Cans", "Positions", "No positions: type the metres from the left and top edges; map and weighting need them."],
      ["Cans", "Edge cans", "not checked: needs positions here and the sides of the bed on Block"],
    ],
  },
  {
    title: "two columns and a row without a position",
    typed: { Cans_Across_m: [[0.5, "", 6, "", 11.5]], Cans_Along_m: column(0.5, 4, 7.5, 11, "") },
    said: [["Cans", "Positions", "No position is typed for 2 columns and 1 row with readings: type metres."]],
  },
  {
    title: "a position in words",
    typed: { Cans_Across_m: [[0.5, "3 m", 6, 8.75, 11.5]] },
    said: [["Cans", "Positions", "The position in H5 is not a number: type metres."]],
  },
  {
    title: "an empty column between two",
    typed: {
      Cans_Across_m: [[0.5, "", 6, 8.75, 11.5]],
      Cans_Readings: grid(5, 5, 20).map((line) => line.map((reading, index) => (index === 1 ? "" : reading))),
    },
    said: [["Cans", "Positions", "A position is missing before I5: start at the first column and row."]],
  },
  {
    title: "two equal positions across",
    typed: { Cans_Across_m: [[0.5, 3.25, 3.25, 8.75, 11.5]] },
    said: [
      [
        "Cans",
        "Positions",
        "The position in I5 must be more than the one before it: they grow from left to right and from top to bottom.",
      ],
    ],
  },
  {
    title: "positions out of order",
    typed: { Cans_Along_m: column(0.5, 4, 3.5, 11, 14.5) },
    said: [
      [
        "Cans",
        "Positions",
        "The position in F8 must be more than the one before it: they grow from left to right and from top to bottom.",
      ],
    ],
  },
  {
    title: "a position below 0",
    typed: { Cans_Across_m: [[-0.5, 3.25, 6, 8.75, 11.5]] },
    said: [["Cans", "Positions", "The position in G5 is below 0: measure from the left and top edges."]],
  },
  {
    title: "a position across that is off the bed",
    typed: { Cans_Across_m: [[0.5, 3.25, 6, 8.75, 12.5]] },
    said: [["Cans", "Positions", "The position in K5 lies beyond the bed, 12 m wide (Block)."]],
  },
  {
    title: "a position along that is off the bed",
    typed: { Cans_Along_m: column(0.5, 4, 7.5, 11, 15.5) },
    said: [["Cans", "Positions", "The position in F10 lies beyond the bed, 15 m long (Block)."]],
  },
  {
    title: "a can opening of 1000 mm",
    typed: { Can_Mouth_mm: 1000 },
    said: [
      [
        "Cans",
        "Can opening",
        "Is the opening of a can 1000 mm across? Most are 40 to 400 mm. Rates change with its square.",
      ],
    ],
  },
];
