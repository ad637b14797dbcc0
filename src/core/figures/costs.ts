import type { Figure } from "./figure";

const money = { unit: "", digits: 2 } as const;

/** The kinds of cost of a year and their sum, by the word in the names of their cells. */
export const COSTS = {
  Water: {
    ...money,
    name: "Water",
    short: "Water",
    definition: "water needed, at one price or by steps",
    source: "own reasoning",
    worksheetFunction: "COST.ANNUAL",
  },
  Power: {
    ...money,
    name: "Power",
    short: "Power",
    definition: "pumping energy, at one tariff or by the hours of the run",
    source: "own reasoning",
  },
  Fertiliser: {
    ...money,
    name: "Fertiliser lost",
    short: "Fertiliser",
    definition:
      "fertiliser in what drains from the pots, and in the water between them where it is injected · its price",
    source: "own reasoning",
  },
  Labour: {
    ...money,
    name: "Labour",
    short: "Labour",
    definition: "hours on this watering · price of an hour",
    source: "own reasoning",
  },
  Losses: {
    ...money,
    name: "Plants lost",
    short: "Plants",
    definition: "plants lost or marked down · what one is worth",
    source: "own reasoning",
  },
  Total: {
    ...money,
    name: "Together",
    short: "Together",
    definition: "the kinds that have a figure now; after, the same ones",
    source: "own reasoning",
  },
} as const satisfies Record<string, Figure>;

/** When a change pays. */
export const PAYING = {
  Payback: {
    name: "Simple payback",
    short: "Pays back in",
    unit: "years",
    digits: 1,
    definition: "capital / what is saved a year together",
    source: "simple payback of engineering economics, from memory",
  },
  NPV: {
    ...money,
    name: "Net present value",
    short: "Net present value",
    definition: "saved a year · (1 - (1 + rate)^-life) / rate - capital; above 0 it pays",
    source: "present value of an annuity, engineering economics, from memory",
  },
  Paying_Price: {
    ...money,
    name: "Break-even water price",
    short: "Break-even",
    unit: "per kL",
    definition:
      "(capital / worth today of 1 a year - saved but for water) / kL saved; 0 or less: even where water is free",
    source: "own reasoning",
  },
} as const satisfies Record<string, Figure>;
