import { describe, expect, it } from "vitest";
import { InputError } from "../../src/core/errors";
import { basis, SAME_BASIS, windClass } from "../../src/core/register/basis";
import { change } from "../../src/core/register/change";
import { earlierAudit } from "../../src/core/register/earlier-audit";
import { pressureDrift } from "../../src/core/register/pressure-drift";
import { plainName, type RegisteredAudit, sameBlock } from "../../src/core/register/registered-audit";
import { retest, retestWords } from "../../src/core/register/retest";

const AUDIT: RegisteredAudit = {
  site: "Nursery",
  block: "block 7",
  day: 46000,
  cans: 25,
  grid: "5 × 5",
  wind: "up to 2.2 m/s",
  pressure: 200,
  mar: 12,
  cu: 80,
  du: 70,
  scCan: 1.8,
  scQuarter: 1.4,
  kind: "low quarter",
  water: 1200,
  area: 360,
};
const audit = (changed: Partial<RegisteredAudit>): RegisteredAudit => ({ ...AUDIT, ...changed });

describe("the class of the wind", () => {
  it.each([
    [0, "up to 2.2 m/s"],
    [2.2, "up to 2.2 m/s"],
    [2.21, "up to 4 m/s"],
    [4, "up to 4 m/s"],
    [4.1, "over 4 m/s"],
  ])("of %s m/s is %s", (wind, words) => {
    expect(windClass(wind)).toBe(words);
  });
});

describe("two audits of a block", () => {
  it.each<[string, Partial<RegisteredAudit>]>([
    ["the grid of one of the tests is not known", { grid: null }],
    ["different grid: 5 × 5 and 4 × 6", { grid: "4 × 6" }],
    ["different grid: 5 × 5 and 5 × 5, by area", { grid: "5 × 5, by area" }],
    ["the cans read in one of the tests are not known", { cans: null }],
    ["different number of cans read: 25 and 24", { cans: 24 }],
    ["the wind of one of the tests is not known", { wind: null }],
    ["different wind class: up to 2.2 m/s and over 4 m/s", { wind: "over 4 m/s" }],
    ["the SC kind of one of the tests is not known", { kind: null }],
    ["different SC kind: low quarter and driest can", { kind: "driest can" }],
  ])("are not compared: %s", (why, changed) => {
    expect(basis(AUDIT, audit(changed))).toBe(why);
    expect(change(AUDIT, audit(changed))).toMatchObject({ basis: why, mar: null, sc: null, water: null });
  });

  it("are not compared by an SC for a share of pots, since the share may be another", () => {
    const share = audit({ kind: "share of pots" });
    expect(basis(share, share)).toBe("an SC for a share of pots is not compared: the share may differ");
  });

  it("are compared on the same basis, whatever the signs of their grids", () => {
    const later = audit({ grid: "5x5", mar: 11.5, cu: 82, du: null, scQuarter: 1.3, scCan: 9, water: 1100 });
    expect(basis(AUDIT, later)).toBe(SAME_BASIS);
    const { mar, cu, du, sc, water } = change(AUDIT, later);
    expect([mar, cu, du, water]).toEqual([-0.5, 2, null, -100]);
    expect(sc).toBeCloseTo(1.3 - 1.4, 12);
    const byCan = { ...later, kind: "driest can" };
    expect(change(audit({ kind: "driest can" }), byCan).sc).toBeCloseTo(9 - 1.8, 12);
  });

  it("have no change of water where their areas differ", () => {
    expect(change(AUDIT, audit({ area: 180 })).water).toBe("other area");
  });

  it("are of one block whatever the capitals and blanks of its name", () => {
    expect(sameBlock(AUDIT, audit({ site: " nursery ", block: "Block  7" }))).toBe(true);
    expect(sameBlock(AUDIT, audit({ site: "" }))).toBe(false);
    expect(plainName("  Block   7 ")).toBe(plainName("block 7"));
    expect(plainName("block 7")).not.toBe(plainName("block7"));
  });
});

describe("a register", () => {
  const first = audit({ day: 45000, pressure: 200 });
  const second = audit({ day: 45400, pressure: 180 });
  const third = audit({ day: 45800, pressure: null });
  const other = audit({ block: "block 8", day: 45900, pressure: 100 });
  const all = [second, other, third, first];

  it("gives the last audit of the same block before one", () => {
    expect(earlierAudit(all, third)).toBe(second);
    expect(earlierAudit(all, second)).toBe(first);
    expect(earlierAudit(all, first)).toBeNull();
  });

  it("sees how far the last two pressures differ, passing over audits that measured none", () => {
    // 100 (180 / 200 - 1) = -10
    expect(pressureDrift(all, second)).toBe(-10);
    expect(pressureDrift(all, third)).toBe(-10);
    expect(pressureDrift(all, first)).toBeNull();
  });

  it("is due by date, or since the pressure drifted by more than is allowed", () => {
    const rule = { months: 12, drift: 10 };
    expect(retest(all, second, rule, 45765, 46000)).toMatchObject({ latest: false });
    expect(retest(all, third, rule, 46165, 46125)).toEqual({ latest: true, overdue: -40, drifted: null });
    expect(retest(all, third, { ...rule, drift: 9.9 }, 46165, 46125).drifted).toBe(-10);
    expect(() => retest(all, third, { months: 0, drift: 10 }, 0, 0)).toThrow(InputError);
    expect(() => retest(all, third, { months: 12, drift: 0 }, 0, 0)).toThrow(
      "pressure may drift by must be from 1 to 100 %, got 0",
    );
  });

  it.each([
    [{ latest: false, overdue: 40, drifted: -12 }, "tested again"],
    [{ latest: true, overdue: -1, drifted: null }, "not due"],
    [{ latest: true, overdue: 0, drifted: null }, "due today"],
    [{ latest: true, overdue: 1, drifted: null }, "overdue by 1 day"],
    [{ latest: true, overdue: -1, drifted: 12.4 }, "due: pressure drifted by 12 %"],
    [{ latest: true, overdue: 0, drifted: 12.6 }, "due today; pressure drifted by 13 %"],
  ])("says what is due (%#)", (found, words) => {
    expect(retestWords(found)).toBe(words);
  });
});
