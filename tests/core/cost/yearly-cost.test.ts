import { expect, it } from "vitest";
import { drainedFertiliserCost } from "../../../src/core/cost/fertiliser";
import { type Prices, type Year, yearlyCost } from "../../../src/core/cost/yearly-cost";

const YEAR: Year = { water: 1200, energy: 0.25, drained: 0.3, concentration: 150, hours: 40, plantsLost: 90 };
const PRICES: Prices = {
  water: [{ upTo: 1000, price: 2 }, { price: 3 }],
  power: 0.3,
  fertiliser: 4,
  wage: 35,
  plant: 6,
};

it("shows each cost apart and their sum", () => {
  // 1000 x 2 + 200 x 3; 1200 x 0.25 x 0.3; 1200 x 0.3 x 150 g = 54 kg x 4; 40 x 35; 90 x 6
  const { total, ...apart } = yearlyCost(YEAR, PRICES);
  expect(apart).toEqual({ water: 2600, power: 90, fertiliser: 216, labour: 1400, losses: 540 });
  expect(total).toBe(4846);
});

it("halves water and power where the water is halved, at one price", () => {
  const flat = { ...PRICES, water: [{ price: 2 }] };
  const before = yearlyCost(YEAR, flat);
  const after = yearlyCost({ ...YEAR, water: 600 }, flat);
  expect([after.water, after.power]).toEqual([before.water / 2, before.power / 2]);
});

it.each([
  [() => yearlyCost({ ...YEAR, water: -1 }, PRICES), "water must be 0 kL or more, got -1"],
  [() => yearlyCost({ ...YEAR, hours: -1 }, PRICES), "hours must be 0 h or more, got -1"],
  [() => yearlyCost({ ...YEAR, plantsLost: -1 }, PRICES), "plants_lost must be 0 plants or more, got -1"],
  [() => yearlyCost(YEAR, { ...PRICES, wage: Number.NaN }), "wage must be 0 per h or more, got NaN"],
  [() => drainedFertiliserCost(5, 1.1, 100, 3), "share must be from 0 to 1, got 1.1"],
  [() => drainedFertiliserCost(5, 0.5, -100, 3), "concentration must be 0 mg/L or more, got -100"],
  [() => drainedFertiliserCost(5, 0.5, 100, 0), "price must be more than 0 per kg, got 0"],
])("refuses bad input (%#)", (work, message) => {
  expect(work).toThrow(message);
});
