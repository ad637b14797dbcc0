import { positive, within, zeroOrMore } from "../checks";
import { InputError } from "../errors";
import { annuity } from "./annuity";

/** What is bought once. */
export interface Upgrade {
  /** [currency], each 0 or more; the grant at most parts and labour together */
  parts: number;
  labour: number;
  grant: number;
  /** Years of life, more than 0 */
  life: number;
  /** Discount rate a year, from 0 to 1 */
  discountRate: number;
}

/**
 * Capital of an upgrade.
 *
 *     C = parts + labour - grant
 *
 * @param upgrade Parts, labour and grant [currency]
 * @returns C [currency], 0 or more
 * @throws InputError if a value is below 0 or the grant is more than parts and labour
 * @source arithmetic
 * @example upgradeCost({ parts: 900, labour: 300, grant: 200, life: 10, discountRate: 0.07 }) // 1000
 */
export function upgradeCost({ parts, labour, grant }: Upgrade): number {
  const spent = zeroOrMore("parts", parts, "") + zeroOrMore("labour", labour, "");
  if (!(zeroOrMore("grant", grant, "") <= spent)) {
    throw new InputError("grant", `be at most parts and labour, ${spent}`, grant);
  }
  return spent - grant;
}

/**
 * Simple payback.
 *
 *     n = C / S        C: capital; S: saving a year
 *
 * @param upgrade What is bought
 * @param saving Saving [currency a year], more than 0
 * @returns Years; 0 where the grant pays everything
 * @throws InputError if a value is out of its range; without a saving there is no payback
 * @source simple payback, from memory
 * @example simplePayback({ parts: 900, labour: 300, grant: 200, life: 10, discountRate: 0.07 }, 250) // 4
 */
export function simplePayback(upgrade: Upgrade, saving: number): number {
  if (!(saving > 0)) throw new InputError("saving", "be more than 0 a year", saving, { missing: true });
  return upgradeCost(upgrade) / positive("saving", saving, "a year");
}

/**
 * Net present value of an upgrade over its life.
 *
 *     NPV = S (1 - (1 + i)^-n) / i - C        S: saving at the end of each year; i: discount rate; n: years of life
 *
 * @param upgrade What is bought
 * @param saving Saving [currency a year], under 0 where it costs more
 * @returns NPV [currency]; above 0 where it pays
 * @throws InputError if a value is out of its range
 * @source present value of an annuity, from memory
 * @example netPresentValue({ parts: 1000, labour: 0, grant: 0, life: 5, discountRate: 0 }, 250) // 250
 */
export function netPresentValue(upgrade: Upgrade, saving: number): number {
  const { life, discountRate } = upgrade;
  const yearly = within("saving", saving, -1e9, 1e9, "a year");
  return yearly / annuity(1, life, discountRate) - upgradeCost(upgrade);
}

/**
 * Price of water at which an upgrade pays.
 *
 *     p = (A - S) / V        A: yearly capital; S: what else it saves a year; V: water saved a year
 *
 * @param upgrade What is bought
 * @param waterSaved Water that it saves [kL a year], more than 0
 * @param otherSaving Power, fertiliser and labour that it saves [currency a year], under 0 where it costs more
 * @returns Price [currency per kL] at which the net present value is 0; 0 or below where it pays with free water
 * @throws InputError if a value is out of its range
 * @source own reasoning: the price at which the net present value is 0
 * @example payingWaterPrice({ parts: 1000, labour: 0, grant: 0, life: 10, discountRate: 0 }, 40, 20) // 2
 */
export function payingWaterPrice(upgrade: Upgrade, waterSaved: number, otherSaving: number): number {
  const yearly = annuity(upgradeCost(upgrade), upgrade.life, upgrade.discountRate);
  const other = within("other_saving", otherSaving, -1e9, 1e9, "a year");
  return (yearly - other) / positive("water_saved", waterSaved, "kL a year");
}

/**
 * Share of the water that a more uniform block saves, where the grower waters to the driest pot before and after.
 *
 *     s = 1 - M2 / M1        M1, M2: multiplier before and after
 *
 * @param before Multiplier before, more than 0
 * @param after Multiplier after, more than 0
 * @returns Share; 0.5 where the multiplier is halved, under 0 where it grew
 * @throws InputError if a value is not more than 0
 * @source own reasoning, from depth times SC
 * @example savedShare(3, 1.5) // 0.5
 */
export function savedShare(before: number, after: number): number {
  return 1 - positive("after", after, "") / positive("before", before, "");
}
