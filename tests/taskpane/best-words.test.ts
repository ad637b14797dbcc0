import { describe, expect, it } from "vitest";
import { DRY_SPOTS, type Judgement } from "../../src/core/layout/judgement";
import { bestWords } from "../../src/taskpane/plan/best-words";

const layout = (quarterWater: Judgement["quarterWater"], heads: number, flow = 1000) => ({
  judgement: { quarterWater, heads, flow } as Judgement,
});

describe("which layout is best", () => {
  it.each([
    [
      "another one",
      [layout(2, 15), layout(1.5, 20), layout(1.7, 9)],
      {},
      "2 needs least water: its heads throw 1.50 times what the driest quarter of the bed gets, yours 2.00, so 25 % less water for the same depth. It has 20 heads, yours 15.",
    ],
    [
      "the person's own",
      [layout(1.4, 15), layout(1.5, 20)],
      {},
      "Your layout needs least water: its heads throw 1.40 times what the driest quarter of the bed gets.",
    ],
    [
      "the person's own where another needs hardly less",
      [layout(1.4, 15), layout(1.39, 20)],
      {},
      "Your layout needs least water: its heads throw 1.40 times what the driest quarter of the bed gets.",
    ],
    [
      "one that the pump can feed",
      [layout(2, 15), layout(1.5, 20, 3000), layout(1.7, 1)],
      { pump: 2000 },
      "3 needs least water: its heads throw 1.70 times what the driest quarter of the bed gets, yours 2.00, so 15 % less water for the same depth. It has 1 head, yours 15.",
    ],
    [
      "one where the own has dry spots",
      [layout(DRY_SPOTS, 15), layout(1.5, 20)],
      {},
      "2 needs least water: its heads throw 1.50 times what the driest quarter of the bed gets; yours has dry spots. It has 20 heads, yours 15.",
    ],
    [
      "none",
      [layout(DRY_SPOTS, 15), layout(1.5, 20, 3000)],
      { pump: 2000 },
      "None is best: each has dry spots or needs more than the pump gives.",
    ],
  ] as const)("is %s", (_, all, needs, words) => expect(bestWords(all, needs)).toBe(words));
});
