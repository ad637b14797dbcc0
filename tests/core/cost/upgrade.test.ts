import * as excel from "@formulajs/formulajs";
import { expect, it } from "vitest";
import { annuity } from "../../../src/core/cost/annuity";
import {
  netPresentValue,
  payingWaterPrice,
  savedShare,
  simplePayback,
  type Upgrade,
  upgradeCost,
} from "../../../src/core/cost/upgrade";
import fc from "../../support/properties";

const UPGRADE: Upgrade = { parts: 4200, labour: 1800, grant: 1500, life: 12, discountRate: 0.07 };
const money = fc.integer({ min: 0, max: 100_000 });
const life = fc.integer({ min: 1, max: 40 });
const rate = fc.double({ min: 0.001, max: 0.5, noNaN: true });

it("has the net present value of a financial library", () => {
  fc.assert(
    fc.property(money, money, life, rate, (parts, saving, years, discountRate) => {
      const upgrade = { parts, labour: 0, grant: 0, life: years, discountRate };
      const flows = Array.from({ length: years }, () => saving);
      const theirs = (excel.NPV(discountRate, ...flows) as number) - parts;
      expect(netPresentValue(upgrade, saving)).toBeCloseTo(theirs, 4);
    }),
  );
});

it("spreads its capital over the years as a financial library does", () => {
  fc.assert(
    fc.property(money, life, rate, (capital, years, discountRate) => {
      expect(annuity(capital, years, discountRate)).toBeCloseTo(
        -(excel.PMT(discountRate, years, capital) as number),
        4,
      );
    }),
  );
});

it("pays back in capital over saving", () => {
  // 4200 + 1800 - 1500 = 4500; 4500 / 900 = 5
  expect(upgradeCost(UPGRADE)).toBe(4500);
  expect(simplePayback(UPGRADE, 900)).toBe(5);
});

it("has no net present value at the price of water at which it pays", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: -500, max: 500 }), (water, other) => {
      const price = payingWaterPrice(UPGRADE, water, other);
      expect(netPresentValue(UPGRADE, water * price + other)).toBeCloseTo(0, 6);
    }),
  );
});

it("saves half the water where the multiplier is halved, and less than nothing where it grows", () => {
  expect(savedShare(3, 1.5)).toBe(0.5);
  expect(savedShare(1.5, 1.8)).toBeCloseTo(-0.2, 12);
});

it.each([
  [() => upgradeCost({ ...UPGRADE, parts: -1 }), "parts must be 0 or more, got -1"],
  [() => upgradeCost({ ...UPGRADE, grant: 6001 }), "grant must be at most parts and labour, 6000, got 6001"],
  [() => simplePayback(UPGRADE, 0), "saving must be more than 0 a year, got 0"],
  [() => netPresentValue({ ...UPGRADE, life: 0 }, 900), "life must be more than 0 years, got 0"],
  [() => netPresentValue({ ...UPGRADE, discountRate: 7 }, 900), "discount_rate must be from 0 to 1, got 7"],
  [() => netPresentValue(UPGRADE, Number.NaN), "saving must be from -1000000000 to 1000000000 a year, got NaN"],
  [() => payingWaterPrice(UPGRADE, 0, 5), "water_saved must be more than 0 kL a year, got 0"],
  [() => savedShare(0, 1), "before must be more than 0, got 0"],
])("refuses bad input (%#)", (work, message) => {
  expect(work).toThrow(message);
});
