import { expect, it } from "vitest";
import { blockTariffCost, type PriceStep } from "../../../src/core/cost/block-tariff";
import { powerCost, pumpingEnergy } from "../../../src/core/cost/energy";
import { type HourlyPrice, hourlyPowerCost } from "../../../src/core/cost/hourly-tariff";
import fc from "../../support/properties";

const STEPS: PriceStep[] = [{ upTo: 200, price: 2 }, { upTo: 500, price: 3 }, { price: 5 }];
const DAY: HourlyPrice = { name: "peak", start: 420, end: 1320, price: 0.4 };
const NIGHT: HourlyPrice = { name: "off-peak", start: 1320, end: 420, price: 0.2 };
const CURVE = [
  { minute: 1260, flow: 6000 },
  { minute: 1380, flow: 12_000 },
  { minute: 1470, flow: 0 },
];

it("takes each step's price for the water of that step", () => {
  // 200 x 2 = 400; 300 x 3 = 900; 100 x 5 = 500
  expect([0, 100, 200, 350, 500, 600].map((water) => blockTariffCost(water, STEPS))).toEqual([
    0, 200, 400, 850, 1300, 1800,
  ]);
});

it("costs the same by equal steps as by one, and never less for more water", () => {
  const water = fc.double({ min: 0.01, max: 5000, noNaN: true });
  fc.assert(
    fc.property(water, water, (some, more) => {
      expect(blockTariffCost(some, [{ upTo: 90, price: 3 }, { price: 3 }])).toBeCloseTo(3 * some, 8);
      expect(blockTariffCost(some + more, STEPS)).toBeGreaterThanOrEqual(blockTariffCost(some, STEPS));
    }),
  );
});

it("divides a night between the prices of its hours", () => {
  // 21:00 to 22:00 at 6 kL/h is peak: 6 kL; to 23:00 6 kL more and 1.5 h at 12 kL/h = 18 kL are off-peak
  const [peak, off] = hourlyPowerCost(CURVE, 0.25, [DAY, NIGHT]);
  expect(peak?.water).toBeCloseTo(6, 9);
  expect(off?.water).toBeCloseTo(24, 9);
  expect(off?.share).toBeCloseTo(0.8, 9);
  // 6 x 0.25 = 1.5 kWh at 0.4; 24 x 0.25 = 6 kWh at 0.2
  expect([peak?.energy, peak?.cost, off?.energy, off?.cost].map((value) => value?.toFixed(9))).toEqual(
    [1.5, 0.6, 6, 1.2].map((value) => value.toFixed(9)),
  );
});

it("is the plain power cost where there is one price, also from parts of minutes", () => {
  const all = { ...DAY, start: 0, end: 1440 };
  const curve = [
    { minute: 10.25, flow: 600 },
    { minute: 20.75, flow: 0 },
  ];
  // 10.5 min at 10 L/min = 0.105 kL
  const energy = pumpingEnergy(300, 0.5, 1);
  expect(hourlyPowerCost(curve, energy, [all])[0]?.cost).toBeCloseTo(powerCost(0.105, energy, 0.4), 12);
  expect(hourlyPowerCost([], energy, [all])).toEqual([{ name: "peak", water: 0, share: 0, energy: 0, cost: 0 }]);
});

it.each([
  [() => blockTariffCost(-1, STEPS), "water must be 0 kL or more, got -1"],
  [() => blockTariffCost(1, []), "steps must hold at least 1 price, got 0"],
  [() => blockTariffCost(1, [{ upTo: 5, price: 2 }]), "up_to must be left out in the last step, got 5 in step 1"],
  [() => blockTariffCost(1, [{ price: 2 }, { price: 3 }]), "up_to must be more than 0 kL, got a blank cell in step 1"],
  [
    () => blockTariffCost(1, [{ upTo: 9, price: 2 }, { upTo: 9, price: 2 }, { price: 3 }]),
    "up_to must be more than 9 kL, got 9 in step 2",
  ],
  [() => blockTariffCost(1, [{ price: -2 }]), "price must be 0 per kL or more, got -2"],
  [() => pumpingEnergy(0, 0.5, 0.9), "pressure must be more than 0 kPa, got 0"],
  [() => pumpingEnergy(300, 50, 0.9), "pump_efficiency must be more than 0 and at most 1, got 50"],
  [() => pumpingEnergy(300, 0.5, 0), "motor_efficiency must be more than 0 and at most 1, got 0"],
  [() => powerCost(5, 0, 0.3), "energy must be more than 0 kWh/kL, got 0"],
  [() => hourlyPowerCost(CURVE, 0.2, [DAY]), 'prices must make up the whole day, got "nothing at 0:00"'],
  [
    () => hourlyPowerCost(CURVE, 0.2, [DAY, { ...NIGHT, end: 430 }]),
    'prices must have each hour once, got "7:00" in price "off-peak"',
  ],
  [
    () => hourlyPowerCost(CURVE, 0.2, [{ ...DAY, start: 25.5 }]),
    'start must be a whole number of minutes after midnight from 0 to 1439, got 25.5 in price "peak"',
  ],
])("refuses bad input (%#)", (work, message) => {
  expect(work).toThrow(message);
});
