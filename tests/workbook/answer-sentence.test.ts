import { describe, expect, it } from "vitest";
import { type AnswerFacts, answerSentence } from "../../src/workbook/answer/answer-sentence";
import { lackOf, lackWords } from "../../src/workbook/answer/lack-words";

const SETTING = { pulses: 2, each: 34, total: 68 };
const EVEN: AnswerFacts = {
  block: "Block 7",
  cans: 30,
  notValid: false,
  setting: SETTING,
  lack: "",
  uneven: false,
  parts: "",
};
const CAUSE = { cause: "heads inside the edge", where: "", weight: 82, certain: true };
const UNEVEN: AnswerFacts = { ...EVEN, uneven: true, parts: "The edges get 64 % of the middle. ", cause: CAUSE };

/** The figures are made up. */
const CASES: [what: string, facts: AnswerFacts, says: string][] = [
  ["nothing is to be mended", EVEN, "Block 7: set 68 min (2 × 34)."],
  ["there is one pulse", { ...EVEN, setting: { pulses: 1, each: 68, total: 68 } }, "Block 7: set 68 min."],
  ["the block has no name", { ...EVEN, block: "" }, "Set 68 min (2 × 34)."],
  ["there are no readings", { ...EVEN, cans: 0 }, "Block 7: no readings yet."],
  [
    "the cause is known and a change is planned",
    { ...UNEVEN, saved: 159.3, water: { used: 500, needed: 520, after: 360.7 } },
    "Block 7: move the outer heads to the edge first, then test again; until then set 68 min (2 × 34). The edges get 64 % of the middle; cause: heads inside the edge (82 %). The planned change saves about 159 kL a year.",
  ],
  [
    "less is used today than is needed, so that a change saves nothing on the bill",
    { ...UNEVEN, parts: "", cause: CAUSE, saved: 439, water: { used: 1500, needed: 2779, after: 2340 } },
    "Block 7: move the outer heads to the edge first, then test again; until then set 68 min (2 × 34). Cause: heads inside the edge (82 %). The planned change saves nothing on today's bill: 1500 kL a year are used, 2780 needed, 2340 after it.",
  ],
  [
    "today's use is not known",
    { ...UNEVEN, parts: "", cause: CAUSE, saved: 439 },
    "Block 7: move the outer heads to the edge first, then test again; until then set 68 min (2 × 34). Cause: heads inside the edge (82 %). The planned change needs about 439 kL a year less; what is used today is not known, so that is no saving yet.",
  ],
  [
    "a place of a can is wrong",
    { ...EVEN, places: "The position in K5 lies beyond the bed, 10 m wide (Block)." },
    "Block 7: set 68 min (2 × 34). The position in K5 lies beyond the bed, 10 m wide (Block). Until that is mended every can has equal weight.",
  ],
  [
    "the cause has a place",
    { ...UNEVEN, parts: "", cause: { ...CAUSE, cause: "one weak head", where: "head 10 at 3.0, 6.0 m" } },
    "Block 7: mend head 10 first, then test again; until then set 68 min (2 × 34). Cause: one weak head, head 10 at 3.0, 6.0 m (82 %).",
  ],
  [
    "the cause is wind, which nobody mends",
    { ...UNEVEN, parts: "", cause: { ...CAUSE, cause: "wind", where: "towards the right" } },
    "Block 7: test again when it is calm; until then set 68 min (2 × 34). Cause: wind, towards the right (82 %).",
  ],
  [
    "the cause is still being looked for",
    { ...UNEVEN, cause: undefined, looking: true },
    "Block 7: find the cause at the heads and mend it, then test again; until then set 68 min (2 × 34). The edges get 64 % of the middle; the cause is being looked for.",
  ],
  [
    "the cause is not certain",
    { ...UNEVEN, cause: { ...CAUSE, weight: 55, certain: false } },
    "Block 7: find the cause at the heads and mend it, then test again; until then set 68 min (2 × 34). The edges get 64 % of the middle; the cause is not certain; leading: heads inside the edge (55 %).",
  ],
  [
    "there are no heads to find a cause from",
    { ...UNEVEN, cause: undefined },
    "Block 7: find the cause at the heads and mend it, then test again; until then set 68 min (2 × 34). The edges get 64 % of the middle; the cause is not known yet.",
  ],
  ["no limit is broken, whatever the cause", { ...EVEN, cause: CAUSE, saved: 159 }, "Block 7: set 68 min (2 × 34)."],
  [
    "a change that saves nothing is not praised",
    { ...UNEVEN, parts: "", cause: undefined, saved: 0 },
    "Block 7: find the cause at the heads and mend it, then test again; until then set 68 min (2 × 34).",
  ],
  [
    "there is no run time",
    { ...EVEN, setting: undefined, lack: "the run time needs water use and pot top" },
    "Block 7: no setting yet: the run time needs water use and pot top.",
  ],
  [
    "every can is dry",
    { ...UNEVEN, parts: "", cause: undefined, setting: undefined, lack: lackWords("every can is dry") },
    "Block 7: no setting yet: every can is dry. Were the heads on? Type x for a can that was not read.",
  ],
  [
    "several cans are dry and the driest sets the run time",
    { ...UNEVEN, parts: "", cause: undefined, setting: undefined, lack: lackWords("a can is dry") },
    "Block 7: no setting yet: a can is dry, and no run time is long enough for it. Mend its head and test again, or base the run time on the low quarter.",
  ],
  [
    "what is to be put right is named as the sheet does",
    { ...EVEN, setting: undefined, lack: lackWords("fix the readings: see Cans") },
    "Block 7: no setting yet: fix the readings first (see Cans).",
  ],
  [
    "too few cans were read for a verdict",
    { ...EVEN, cans: 15 },
    "Block 7: set 68 min (2 × 34). 15 cans are too few to judge the uniformity: set out 24 and test again.",
  ],
  [
    "the rate is over its limit and the run is one",
    { ...EVEN, setting: { pulses: 1, each: 46, total: 46 }, rate: { value: 26.73, limit: 12 } },
    "Block 7: set 46 min. The rate, 26.7 mm/h, is over the limit of 12: water may run off, so split the run into pulses.",
  ],
  [
    "the rate is over its limit and there are pulses",
    { ...EVEN, rate: { value: 26.73, limit: 12 } },
    "Block 7: set 68 min (2 × 34). The rate, 26.7 mm/h, is over the limit of 12: keep to the pulses, or water runs off.",
  ],
  [
    "the rate is under its limit",
    { ...EVEN, rate: { value: 3.2, limit: 5 } },
    "Block 7: set 68 min (2 × 34). The rate, 3.2 mm/h, is under the limit of 5: runs are long, so check pressure and nozzles.",
  ],
  [
    "a can reads ten times those beside it",
    {
      ...UNEVEN,
      setting: undefined,
      high: { cell: "I9", value: 630, around: 61.6 },
      rate: { value: 37.7, limit: 12 },
      saved: 100,
    },
    "Block 7: no setting yet: I9 reads 630, the cans beside it about 61.6. Type it again, or x where a leak filled it.",
  ],
  [
    "nobody chose what sets the run time",
    { ...EVEN, setting: undefined, lack: lackWords("choose what the run time is based on") },
    "Block 7: no setting yet: choose what the run time is based on: the driest can, the low quarter or a share of the pots.",
  ],
  [
    "the rate cannot be",
    { ...EVEN, rate: { value: 106.8, limit: 12 } },
    "Block 7: set 68 min (2 × 34). The rate, 107 mm/h, is hard to believe: check can opening, minutes and that readings are mL before you set anything.",
  ],
  [
    "the rate is over its limit and there is no setting",
    { ...EVEN, setting: undefined, lack: "the run time needs the net depth", rate: { value: 26.7, limit: 12 } },
    "Block 7: no setting yet: the run time needs the net depth.",
  ],
  [
    "another bed on the valve needs more",
    { ...EVEN, setting: { pulses: 1, each: 75, total: 75 }, ofThisBed: 45.4 },
    "Block 7: set 75 min, for another bed on the valve (this one needs 45.4).",
  ],
  [
    "the driest can would need more than a day",
    { ...EVEN, setting: undefined, lack: lackOf(1771.1, "") },
    "Block 7: no setting yet: the run time would be 1771 min, over a day. Look at the driest can and its head, or base the run time on the low quarter.",
  ],
  ["just enough cans were read for a verdict", { ...EVEN, cans: 16 }, "Block 7: set 68 min (2 × 34)."],
  [
    "one can reads 0 and the driest can sets the run time",
    { ...UNEVEN, setting: undefined, lack: "a can is dry", cause: undefined, zero: { cell: "K9", between: [71, 58] } },
    "Block 7: no setting yet: K9 reads 0 between 71 and 58: unread, blocked head or typing error? The edges get 64 % of the middle; the cause can be told once K9 is checked.",
  ],
  [
    "one can reads 0, the low quarter sets the run time and the bed is uneven: the cause read with it is not told",
    { ...UNEVEN, zero: { cell: "K9", between: [71, 58] } },
    "Block 7: check K9 first, which reads 0 between 71 and 58; until then set 68 min (2 × 34). The edges get 64 % of the middle; the cause can be told once K9 is checked.",
  ],
  [
    "one can reads 0 and the low quarter sets the run time",
    { ...EVEN, zero: { cell: "K9", between: [71, 58] } },
    "Block 7: set 68 min (2 × 34). K9 reads 0 between 71 and 58: check it.",
  ],
  [
    "the wind was over 2.2 m/s",
    { ...UNEVEN, wind: 3.1 },
    "Block 7: no setting, because the mean wind was 3.1 m/s (limit 2.2). Test again in less wind.",
  ],
  ["the wind was at the limit", { ...EVEN, wind: 2.2 }, "Block 7: set 68 min (2 × 34)."],
  [
    "the pressure fell by more than 10 %",
    { ...UNEVEN, drift: -0.124 },
    "Block 7: no setting, because the pressure fell by 12 % during the test (limit 10 %). Test again at steady pressure.",
  ],
  ["the pressure moved by 10 %", { ...EVEN, drift: 0.1 }, "Block 7: set 68 min (2 × 34)."],
  [
    "the test was marked as not valid",
    { ...UNEVEN, notValid: true },
    "Block 7: no setting, because the test is marked as not valid. Test again.",
  ],
  [
    "two things spoil the test",
    { ...UNEVEN, wind: 4, drift: 0.2 },
    "Block 7: no setting, because the mean wind was 4 m/s (limit 2.2) and the pressure rose by 20 % during the test (limit 10 %). Test again in less wind and at steady pressure.",
  ],
];

describe("the answer in one line", () => {
  it.each(CASES)("where %s", (_, facts, says) => expect(answerSentence(facts)).toBe(says));
});
