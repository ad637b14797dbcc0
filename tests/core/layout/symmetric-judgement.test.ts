import { expect, it } from "vitest";
import { coverage } from "../../../src/core/layout/coverage";
import { judgement } from "../../../src/core/layout/judgement";
import { symmetricJudgement } from "../../../src/core/layout/symmetric-judgement";
import fc from "../../support/properties";
import { anyPlan } from "./plans";

it("a part of the bed has the figures of the whole, with even and odd numbers of cells", () => {
  const numbers = new Set<string>();
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const whole = coverage(plan);
      fc.pre(whole.rates.values.length >= 4 && whole.inside > 1e-6);
      numbers.add(`${whole.cells.rows % 2} ${whole.cells.columns % 2}`);
      const part = symmetricJudgement(plan);
      return Object.entries(judgement(whole)).every(([name, value]) => {
        const ours = part[name as keyof typeof part];
        // CU of a bed with as much dry ground as wet is 0 but for rounding
        return value === ours || Math.abs(Number(ours) - Number(value)) < 1e-6 * Math.abs(Number(value)) + 1e-9;
      });
    }),
    { numRuns: 300 },
  );
  expect([...numbers].sort()).toEqual(["0 0", "0 1", "1 0", "1 1"]);
});
