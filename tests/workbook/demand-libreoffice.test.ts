import { beforeAll, describe, expect, it } from "vitest";
import { generatedNurseries } from "../support/nurseries";
import { calculatedPlans, DEMAND_SHEETS, type PlanBook } from "../support/plan-book";

const NURSERIES = generatedNurseries();
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
let books: PlanBook[];
beforeAll(async () => {
  books = await calculatedPlans(
    NURSERIES.map(({ entries }) => entries),
    DEMAND_SHEETS,
  );
}, 300_000);

function expectSame(theirs: unknown, ours: number | "words", about: string): void {
  if (ours === "words") {
    expect(typeof theirs, `${about}: ${theirs}`).toBe("string");
    expect(theirs, about).not.toBe("");
    return;
  }
  const allowed = 1e-9 * Math.abs(ours) + 1e-12;
  expect(Math.abs((theirs as number) - ours), `${about}: LibreOffice ${theirs}, core ${ours}`).toBeLessThanOrEqual(
    allowed,
  );
}

describe("LibreOffice, recalculating nursery plans with every cached value planted wrong, agrees with core", () => {
  it.each(NURSERIES.map((nursery, index) => ({ ...nursery, index })))("on $title", (nursery) => {
    const book = books[nursery.index]!;
    const [et0, rain, uses] = ["Weather_ET0", "Weather_Rain", "Weighings_Use"].map(book.cells);
    for (const [month, days] of DAYS.entries()) {
      expectSame(et0![month], nursery.et0[month]!, `ET0 of month ${month + 1}`);
      const ours = nursery.rain[month]!;
      expectSame(rain![month], ours === "words" ? ours : ours / days, `rain of month ${month + 1}`);
    }
    for (const [line, use] of nursery.uses.entries()) expectSame(uses![line], use, `weighing ${line + 1}`);
    const names = ["Weighed_Pots", "Weighed_Mean_mL", "Weighed_Error_mL", "Demand_Use_mL", "Demand_Depths"];
    const [pots, mean, error, volume, depth] = names.map(book.cells);
    for (const [group, months] of nursery.demand.entries()) {
      for (const [month, ours] of months.entries()) {
        const cell = 6 * month + group;
        const about = `group ${group + 1}, month ${month + 1}`;
        const weighed = nursery.weighed[group]![month];
        if (typeof weighed === "object") {
          expect(pots![cell], about).toBe(weighed.pots);
          expectSame(mean![cell], weighed.volume, `mean of ${about}`);
          expectSame(error![cell], weighed.error, `error of ${about}`);
        } else expect(pots![cell], about).toBe(weighed === undefined ? 0 : 1);
        if (ours.volume !== undefined) expectSame(volume![cell], ours.volume, `use of ${about}`);
        expectSame(depth![cell], ours.depth ?? "words", `depth of ${about}`);
        if (ours.depth === undefined) expect(depth![cell], about).toMatch(/^needs /);
      }
    }
  });

  it("and shows no error value", () => {
    expect(books.flatMap(({ errors }) => errors)).toEqual([]);
  });
});
